import { CancellationCause } from "@evenhand/shared/booking";
import { ConflictBody, type AppointmentSeen } from "@evenhand/shared/http/booking";
import { problemCodeOf } from "@evenhand/shared/http/problem-codes";
import type { ReactNode } from "react";
import { useIntl } from "react-intl";
import { z } from "zod";
import { Refusal } from "../../service/refusal";
import { useText } from "../../strings/text";
import { LinkButton } from "../../ui/LinkButton";
import { Notice } from "../../ui/Notice";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { useTimes } from "../../entities/time/use-times";
import { useItemWords } from "../../entities/sheet/item-words";
import { useConflictWords } from "./use-conflict-words";

const When = z.union([z.string(), z.number()]).transform((at) => new Date(at).toISOString());

/** What is wanting, as the service names it; a code that is not here is said by the service's own sentence. */
const Shortfall = z.discriminatedUnion("code", [
  z.looseObject({
    code: z.enum(["hold-running", "answer-in-time", "before-start", "before-end"]),
    until: When,
  }),
  z.looseObject({ code: z.enum(["deadline-passed", "near-start", "past-grace"]), from: When }),
  z.looseObject({
    code: z.enum([
      "brief-complete",
      "payment-authorized",
      "new-hour",
      "declared",
      "access-agreed",
      "report-sealed",
      "hour-free",
    ]),
  }),
  z.looseObject({ code: z.literal("terms-acknowledged"), version: z.string() }),
  z.looseObject({ code: z.literal("independent"), conflicts: z.array(ConflictBody) }),
  z.looseObject({ code: z.literal("cause"), allowed: z.array(CancellationCause) }),
  z.looseObject({
    code: z.literal("road-cleared"),
    shortfalls: z.array(
      z.looseObject({
        code: z.enum([
          "consent-missing",
          "insurance-missing",
          "insurance-ended",
          "plates-missing",
          "plates-ended",
          "damage-unsettled",
          "gate-not-seen",
          "safety-item-open",
          "own-doubt",
        ]),
        /** Of a doubt: the inspector's own. */
        words: z.array(z.string()).default([]),
        items: z.array(z.string()).default([]),
        places: z.array(z.object({ item: z.string(), position: z.string() })).default([]),
      }),
    ),
  }),
]);
type Shortfall = z.infer<typeof Shortfall>;
const WithShortfalls = z.looseObject({ shortfalls: z.array(Shortfall).min(1) });

type RoadShortfall = Extract<Shortfall, { readonly code: "road-cleared" }>["shortfalls"][number];

/** What is wanting before the road, line by line: an inspector reads it on a phone beside the car. */
const RoadShortfalls = ({ shortfalls }: { readonly shortfalls: readonly RoadShortfall[] }) => {
  const t = useText();
  const intl = useIntl();
  const item = useItemWords();
  const names = ({ items, places }: Pick<RoadShortfall, "items" | "places">): string =>
    intl.formatList(
      [...new Set([...items.map((id) => item({ item: id, position: "" })), ...places.map(item)])],
      { type: "conjunction" },
    );
  return (
    <>
      {t("wanting.road-cleared")}
      <ul>
        {shortfalls.map(({ code, items, places, words }) => (
          <li key={code}>
            {code === "gate-not-seen" && items.length === 0
              ? t("wanting.gate-empty")
              : t(`wanting.${code}`, {
                  items: names({ items, places }),
                  words: intl.formatList(words.filter(Boolean), { type: "conjunction" }) || "none",
                })}
          </li>
        ))}
      </ul>
    </>
  );
};

const useShortfall = (zone: string): ((shortfall: Shortfall) => ReactNode) => {
  const t = useText();
  const intl = useIntl();
  const times = useTimes();
  const conflicts = useConflictWords();
  const list = (words: readonly string[]): string => intl.formatList(words, { type: "conjunction" });
  return (shortfall) => {
    switch (shortfall.code) {
      case "hold-running":
      case "answer-in-time":
      case "before-start":
      case "before-end":
        return t(`wanting.${shortfall.code}`, { when: times.full(shortfall.until, zone) });
      case "deadline-passed":
      case "near-start":
      case "past-grace":
        return t(`wanting.${shortfall.code}`, { when: times.full(shortfall.from, zone) });
      case "terms-acknowledged":
        return t("wanting.terms-acknowledged", { version: shortfall.version });
      case "independent":
        return t("wanting.independent", { conflicts: conflicts(shortfall.conflicts) });
      case "cause":
        return t("wanting.cause", { causes: list(shortfall.allowed.map((cause) => t(`cause.${cause}`))) });
      case "road-cleared":
        return <RoadShortfalls shortfalls={shortfall.shortfalls} />;
      default:
        return t(`wanting.${shortfall.code}`);
    }
  };
};

interface Props {
  readonly error: unknown;
  readonly appointment: AppointmentSeen;
}

/** A move that was refused: what is wanting, and what would work. */
export const MoveProblem = ({ error, appointment }: Props) => {
  const t = useText();
  const say = useShortfall(appointment.zone);
  if (!(error instanceof Refusal)) return <ProblemNotice error={error} />;
  const code = problemCodeOf(error.problem.type);
  const wanting = WithShortfalls.safeParse(error.problem).data?.shortfalls;
  if (code === "appointment-conditions" && wanting !== undefined) {
    return (
      <Notice kind="refusal" title={t("wanting.title")}>
        <ul>
          {wanting.map((one) => (
            <li key={one.code}>{say(one)}</li>
          ))}
        </ul>
      </Notice>
    );
  }
  if (code === "revision-moved") {
    return (
      <Notice kind="refusal" title={t("moved.title")}>
        <p>{t("moved.what")}</p>
      </Notice>
    );
  }
  const [car] = appointment.cars;
  const lost = code === "hour-taken" || code === "appointment-ended";
  return (
    <>
      <ProblemNotice error={error} />
      {lost && appointment.as === "buyer" && car !== undefined && (
        <div>
          <LinkButton variant="default" to="/cars/$vehicle/hours" params={{ vehicle: car.id }}>
            {t("appointment.again")}
          </LinkButton>
        </div>
      )}
    </>
  );
};
