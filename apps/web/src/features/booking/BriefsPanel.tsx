import { Button } from "@mantine/core";
import type { AppointmentSeen } from "@evenhand/shared/http/booking";
import type { BriefItem } from "@evenhand/shared/booking";
import { useState } from "react";
import { useQuery } from "@tanstack/react-query";
import { useIntl } from "react-intl";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { Notice } from "../../ui/Notice";
import { Panel } from "../../ui/Page";
import { useDuration } from "../../entities/time/use-duration";
import { useTimes } from "../../entities/time/use-times";
import { useItemWords } from "../../entities/sheet/item-words";
import { useCarName } from "../../entities/car/CarName";
import styles from "./Booking.module.css";
import { ItemPicker } from "./ItemPicker";
import { MoveProblem } from "./MoveProblem";
import { useMove } from "./use-move";
import { briefQuery } from "../../entities/appointment/queries";

type Visit = AppointmentSeen["visits"][number];
type Brief = NonNullable<Visit["brief"]>;
interface Props {
  readonly appointment: AppointmentSeen;
  readonly vehicle: string;
  readonly brief: Brief;
}

const idsOf = (items: readonly BriefItem[]): ReadonlySet<string> => new Set(items.map(({ item }) => item));

/** A change that waits: what it would add and leave out, and who may answer. */
const Proposed = ({ appointment, vehicle, brief }: Props) => {
  const t = useText();
  const intl = useIntl();
  const words = useItemWords();
  const answer = useMove(appointment, (value: "agree" | "refuse" | "withdraw") =>
    call("appointments.answerBrief", {
      params: { id: appointment.id },
      ifMatch: appointment.revision,
      body: { vehicle, answer: value },
    }),
  );
  if (brief.proposed === null) return null;
  const [now, next] = [idsOf(brief.items), idsOf(brief.proposed.items)];
  const list = (items: readonly BriefItem[]): string =>
    intl.formatList(
      items.map(({ item }) => words({ item, position: "" })),
      { type: "conjunction" },
    );
  const added = brief.proposed.items.filter(({ item }) => !now.has(item));
  const removed = brief.items.filter(({ item }) => !next.has(item));
  const own = appointment.as === "buyer";
  return (
    <Notice kind="note" title={t(own ? "appointment.brief.proposed.own" : "appointment.brief.proposed")}>
      {answer.error !== null && <MoveProblem error={answer.error} appointment={appointment} />}
      {added.length > 0 && <p>{t("appointment.brief.added", { items: list(added) })}</p>}
      {removed.length > 0 && <p>{t("appointment.brief.removed", { items: list(removed) })}</p>}
      <div className={styles.buttons}>
        {(own ? (["withdraw"] as const) : (["agree", "refuse"] as const)).map((value) => (
          <Button
            key={value}
            variant={value === "agree" ? "filled" : "default"}
            loading={answer.isPending}
            onClick={() => answer.mutate(value)}
          >
            {t(`appointment.brief.${value}`)}
          </Button>
        ))}
      </div>
    </Notice>
  );
};

const Propose = ({ appointment, vehicle, brief }: Props) => {
  const t = useText();
  const whole = useQuery(briefQuery(vehicle)).data;
  const [chosen, setChosen] = useState<ReadonlySet<string>>(
    () => new Set(brief.items.filter(({ core }) => !core).map(({ item }) => item)),
  );
  const propose = useMove(appointment, () =>
    call("appointments.proposeBrief", {
      params: { id: appointment.id },
      ifMatch: appointment.revision,
      body: { vehicle, items: [...chosen] },
    }),
  );
  const known = new Map(
    [...(whole?.items ?? []), ...(whole?.further ?? []), ...brief.items].map((one) => [one.item, one]),
  );
  return (
    <details>
      <summary>{t("appointment.brief.change")}</summary>
      <div className={styles.form}>
        <ItemPicker
          items={[...known.values()].filter(({ core }) => !core)}
          chosen={chosen}
          onChange={setChosen}
        />
        {propose.error !== null && <MoveProblem error={propose.error} appointment={appointment} />}
        <div>
          <Button loading={propose.isPending} onClick={() => propose.mutate(undefined)}>
            {t("appointment.brief.propose")}
          </Button>
        </div>
      </div>
    </details>
  );
};

const open = ["requested", "accepted", "confirmed"];

/** The brief of each car: what is looked at, and changes to it that buyer and inspector agree on. */
export const BriefsPanel = ({ appointment }: { readonly appointment: AppointmentSeen }) => {
  const t = useText();
  const name = useCarName();
  const duration = useDuration();
  const times = useTimes();
  const [now] = useState(() => Date.now());
  return appointment.visits.map(({ vehicle, brief }) => {
    if (brief === null) return null;
    const car = appointment.cars.find(({ id }) => id === vehicle);
    const inTime = Date.parse(brief.until) > now;
    const held = appointment.state === "held" && inTime;
    const changeable = open.includes(appointment.state) && inTime;
    return (
      <Panel
        key={vehicle}
        title={
          appointment.cars.length > 1 && car !== undefined
            ? `${t("appointment.brief")}: ${name(car)}`
            : t("appointment.brief")
        }
        hint={
          changeable || held
            ? t(held ? "appointment.brief.held" : "appointment.brief.until", {
                when: times.full(brief.until, appointment.zone),
              })
            : t("appointment.brief.closed")
        }
      >
        <p>
          {t("appointment.brief.line", {
            count: brief.items.length,
            time: duration(brief.totals.minutes),
          })}
        </p>
        <details>
          <summary>{t("appointment.brief.show")}</summary>
          <ItemPicker items={brief.items} />
        </details>
        <Proposed appointment={appointment} vehicle={vehicle} brief={brief} />
        {appointment.as === "buyer" && changeable && brief.proposed === null && (
          <Propose appointment={appointment} vehicle={vehicle} brief={brief} />
        )}
      </Panel>
    );
  });
};
