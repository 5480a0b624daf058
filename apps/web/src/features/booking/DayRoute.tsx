import type { EngagementSeen } from "@evenhand/shared/http/booking/calendar-views";
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

interface StopProps {
  readonly visit: EngagementSeen;
  readonly number: number;
  /** Where the inspector comes from. */
  readonly from: string;
  readonly zone: string;
}

/** When to leave for a visit, and how long the drive is. */
const WayThere = ({ visit: { start, travelBefore }, from, zone }: Omit<StopProps, "number">) => {
  const t = useText();
  const times = useTimes();
  const duration = useDuration();
  if (travelBefore === null) return null;
  return (
    <p className={styles.way}>
      {t("day.leave", { from, time: times.time(moved(start, -travelBefore), zone) })}
      {", "}
      {t("day.drive", { time: duration(travelBefore) })}
    </p>
  );
};

const Stop = ({ visit, number, from, zone }: StopProps) => {
  const t = useText();
  const times = useTimes();
  return (
    <li>
      <WayThere visit={visit} from={from} zone={zone} />
      <div className={styles.stop}>
        <h3>
          <Link to="/appointments/$appointment" params={{ appointment: visit.appointment }}>
            {t("day.stop", { number, site: visit.site.name })}
          </Link>
        </h3>
        <p className="figures">{times.range(visit.start, visit.end, zone)}</p>
        {isState(visit.state) && <Tag>{t(`appointment.state.${visit.state}`)}</Tag>}
      </div>
    </li>
  );
};

const WayBack = ({ visit: { end, travelAfter }, zone }: Pick<StopProps, "visit" | "zone">) => {
  const t = useText();
  const times = useTimes();
  const duration = useDuration();
  if (travelAfter === null) return null;
  return (
    <li>
      <p className={styles.way}>{t("day.drive", { time: duration(travelAfter) })}</p>
      <div className={styles.stop}>
        <h3>{t("day.arrive", { time: times.time(moved(end, travelAfter), zone) })}</h3>
      </div>
    </li>
  );
};

/** From the base to each visit and back, in order, with when to leave. */
export const DayRoute = ({ engagements, zone }: Props) => {
  const t = useText();
  const last = engagements.at(-1);
  return (
    <ol className={styles.route}>
      {engagements.map((visit, index) => (
        <Stop
          key={visit.appointment}
          visit={visit}
          number={index + 1}
          from={engagements[index - 1]?.site.name ?? t("day.base")}
          zone={zone}
        />
      ))}
      {last !== undefined && <WayBack visit={last} zone={zone} />}
    </ol>
  );
};
