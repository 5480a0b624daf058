import type { AppointmentSeen } from "@evenhand/shared/http/booking";
import { useText } from "../../strings/text";
import { Line } from "../../ui/List";
import { Panel, Tag } from "../../ui/Page";
import { useTimes } from "../../entities/time/use-times";
import styles from "./Booking.module.css";

type Entry = AppointmentSeen["history"][number];

interface LineProps {
  readonly entry: Entry;
  /** The move before it. */
  readonly before: Entry | undefined;
  readonly zone: string;
}

const HistoryLine = ({ entry, before, zone }: LineProps) => {
  const t = useText();
  const times = useTimes();
  const hourOf = ({ start, end }: Entry): string =>
    `${times.day(start, zone)}, ${times.range(start, end, zone)}`;
  const { move, actor, to, cause, note } = entry;
  const said = [
    times.full(entry.at, zone),
    cause === null ? null : t(`cause.${cause}`),
    note,
    move === "reschedule" && before !== undefined ? t("history.given-up", { hour: hourOf(before) }) : null,
  ];
  return (
    <Line
      main={t(`history.${move}`, { actor: t(`actor.${actor}`), hour: hourOf(entry) })}
      sub={said.filter((part) => part !== null && part !== "").join(" · ")}
      end={<Tag>{t(`appointment.state.${to}`)}</Tag>}
    />
  );
};

/** Every move with its hour; an hour that was given up stays in sight. */
export const History = ({ appointment }: { readonly appointment: AppointmentSeen }) => {
  const t = useText();
  const { zone, history } = appointment;
  return (
    <Panel title={t("appointment.history")} hint={t("appointment.history.hint")}>
      <ol className={styles.plain}>
        {history.map((entry, index) => (
          <li key={`${entry.at}${entry.move}`}>
            <HistoryLine entry={entry} before={history[index - 1]} zone={zone} />
          </li>
        ))}
      </ol>
    </Panel>
  );
};
