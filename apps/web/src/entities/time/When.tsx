import { useText } from "../../strings/text";
import styles from "./When.module.css";
import { useTimes } from "./use-times";
import { dateAt, ownZone, sameClock } from "./zone-time";

interface Props {
  readonly start: string;
  readonly end: string;
  /** The site's. */
  readonly zone: string;
}

/** A stretch on the site's clock, its zone by name, and beside it on the reader's own clock where that reads otherwise. */
export const When = ({ start, end, zone }: Props) => {
  const t = useText();
  const times = useTimes();
  const own = ownZone();
  const differs = !sameClock(start, zone, own);
  return (
    <span className={styles.when}>
      <span className={styles.day}>{times.day(start, zone)}</span>
      <span className={`${styles.hours} figures`}>
        <time dateTime={start}>{times.range(start, end, zone)}</time>
      </span>
      <span className={styles.zone}>
        {t("when.site", { name: times.zoneName(start, zone), zone: zone.replaceAll("_", " ") })}
      </span>
      {differs && (
        <span className={styles.own}>
          {dateAt(start, own) === dateAt(start, zone)
            ? t("when.own", { range: times.range(start, end, own) })
            : t("when.own.day", { range: times.range(start, end, own), day: times.day(start, own) })}
        </span>
      )}
    </span>
  );
};
