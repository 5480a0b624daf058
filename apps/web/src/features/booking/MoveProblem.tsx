import type { AppointmentSeen } from "@evenhand/shared/http/booking";
import { problemCodeOf } from "@evenhand/shared/http/problem-codes";
import { Refusal } from "../../service/refusal";
import { useText } from "../../strings/text";
import { LinkButton } from "../../ui/LinkButton";
import { Notice } from "../../ui/Notice";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { WithShortfalls, type Shortfall } from "./shortfall";
import { useShortfall } from "./use-shortfall";

interface Props {
  readonly error: unknown;
  readonly appointment: AppointmentSeen;
}

interface WantingProps {
  readonly wanting: readonly Shortfall[];
  readonly zone: string;
}

const Wanting = ({ wanting, zone }: WantingProps) => {
  const t = useText();
  const say = useShortfall(zone);
  return (
    <Notice kind="refusal" title={t("wanting.title")}>
      <ul>
        {wanting.map((one) => (
          <li key={one.code}>{say(one)}</li>
        ))}
      </ul>
    </Notice>
  );
};

/** Somebody else changed the visit meanwhile. */
const Moved = () => {
  const t = useText();
  return (
    <Notice kind="refusal" title={t("moved.title")}>
      <p>{t("moved.what")}</p>
    </Notice>
  );
};

/** A buyer whose hour is gone looks for another. */
const AnotherHour = ({ appointment: { as, cars } }: Pick<Props, "appointment">) => {
  const t = useText();
  const [car] = cars;
  if (as !== "buyer" || car === undefined) return null;
  return (
    <div>
      <LinkButton variant="default" to="/cars/$vehicle/hours" params={{ vehicle: car.id }}>
        {t("appointment.again")}
      </LinkButton>
    </div>
  );
};

/** A move that was refused: what is wanting, and what would work. */
export const MoveProblem = ({ error, appointment }: Props) => {
  if (!(error instanceof Refusal)) return <ProblemNotice error={error} />;
  const code = problemCodeOf(error.problem.type);
  const wanting = WithShortfalls.safeParse(error.problem).data?.shortfalls;
  if (code === "appointment-conditions" && wanting !== undefined)
    return <Wanting wanting={wanting} zone={appointment.zone} />;
  if (code === "revision-moved") return <Moved />;
  const lost = code === "hour-taken" || code === "appointment-ended";
  return (
    <>
      <ProblemNotice error={error} />
      {lost && <AnotherHour appointment={appointment} />}
    </>
  );
};
