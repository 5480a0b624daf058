import type { EngagementSeen } from "@evenhand/shared/http/calendars";
import { Link } from "@tanstack/react-router";
import { useText } from "../../strings/text";
import { Tag } from "../../ui/Page";
import { isState } from "../../entities/appointment/appointment-state";
import { useDuration } from "../../entities/time/use-duration";
import { useTimes } from "../../entities/time/use-times";
import styles from "./DayRoute.module.css";

interface Props {
  readonly engagements: readonly EngagementSeen[];
  readonly zone: string;
}

const MINUTE = 60_000;
const moved = (instant: string, minutes: number): string =>
  new Date(Date.parse(instant) + minutes * MINUTE).toISOString();

/** From the base to each visit and back, in order, with when to leave. */
export const DayRoute = ({ engagements, zone }: Props) => {
  const t = useText();
  const times = useTimes();
  const duration = useDuration();
  const last = engagements.at(-1);
  return (
    <ol className={styles.route}>
      {engagements.map((one, index) => {
        const from = engagements[index - 1]?.site.name ?? t("day.base");
        return (
          <li key={one.appointment}>
            {one.travelBefore !== null && (
              <p className={styles.way}>
                {t("day.leave", {
                  from,
                  time: times.time(moved(one.start, -one.travelBefore), zone),
                })}
                {", "}
                {t("day.drive", { time: duration(one.travelBefore) })}
              </p>
            )}
            <div className={styles.stop}>
              <h3>
                <Link to="/appointments/$appointment" params={{ appointment: one.appointment }}>
                  {t("day.stop", { number: index + 1, site: one.site.name })}
                </Link>
              </h3>
              <p className="figures">{times.range(one.start, one.end, zone)}</p>
              {isState(one.state) && <Tag>{t(`appointment.state.${one.state}`)}</Tag>}
            </div>
          </li>
        );
      })}
      {last !== undefined && last.travelAfter !== null && (
        <li>
          <p className={styles.way}>{t("day.drive", { time: duration(last.travelAfter) })}</p>
          <div className={styles.stop}>
            <h3>{t("day.arrive", { time: times.time(moved(last.end, last.travelAfter), zone) })}</h3>
          </div>
        </li>
      )}
    </ol>
  );
};
