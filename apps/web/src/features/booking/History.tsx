import type { AppointmentSeen } from "@evenhand/shared/http/booking";
import { useText } from "../../strings/text";
import { Line } from "../../ui/List";
import { Panel, Tag } from "../../ui/Page";
import { useTimes } from "../../entities/time/use-times";
import styles from "./Booking.module.css";

/** Every move with its hour; an hour that was given up stays in sight. */
export const History = ({ appointment }: { readonly appointment: AppointmentSeen }) => {
  const t = useText();
  const times = useTimes();
  const { zone, history } = appointment;
  const hourOf = ({ start, end }: { readonly start: string; readonly end: string }): string =>
    `${times.day(start, zone)}, ${times.range(start, end, zone)}`;
  return (
    <Panel title={t("appointment.history")} hint={t("appointment.history.hint")}>
      <ol className={styles.plain}>
        {history.map((one, index) => {
          const before = history[index - 1];
          const said = [
            times.full(one.at, zone),
            one.cause === null ? null : t(`cause.${one.cause}`),
            one.note,
            one.move === "reschedule" && before !== undefined
              ? t("history.given-up", { hour: hourOf(before) })
              : null,
          ];
          return (
            <li key={`${one.at}${one.move}`}>
              <Line
                main={t(`history.${one.move}`, { actor: t(`actor.${one.actor}`), hour: hourOf(one) })}
                sub={said.filter((part) => part !== null && part !== "").join(" · ")}
                end={<Tag>{t(`appointment.state.${one.to}`)}</Tag>}
              />
            </li>
          );
        })}
      </ol>
    </Panel>
  );
};
