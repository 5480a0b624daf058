import { useText } from "../../strings/text";
import { useTimes } from "../../entities/time/use-times";
import { instantOf } from "../../entities/time/zone-time";
import type { Placed } from "./bands";
import styles from "./WeekView.module.css";

const hours = [0, 6, 12, 18] as const;

const Stretch = ({ band: { kind, from, to } }: { readonly band: Placed }) => (
  <span
    className={styles.band}
    data-kind={kind === "closed" ? "away" : kind}
    style={{ left: `${from * 100}%`, width: `${Math.max(0.6, (to - from) * 100)}%` }}
  />
);

/** The drawn bar of a day; all it shows is said beside it. */
export const DayBar = ({ bands }: { readonly bands: readonly Placed[] }) => (
  <div className={styles.bar} aria-hidden="true">
    {hours.map((hour) => (
      <span key={hour} className={styles.hour} style={{ left: `${(hour / 24) * 100}%` }} />
    ))}
    {bands.map((band) => (
      <Stretch key={`${band.kind}${band.start}${band.bay ?? ""}`} band={band} />
    ))}
  </div>
);

interface ScaleProps {
  readonly date: string;
  readonly zone: string;
  /** No names of days stand to the left. */
  readonly flush?: boolean;
}

/** The hours over the bars. */
export const HourScale = ({ date, zone, flush = false }: ScaleProps) => {
  const times = useTimes();
  return (
    <div className={styles.scale} data-flush={flush} aria-hidden="true">
      {hours.map((hour) => (
        <span key={hour} style={{ left: `${(hour / 24) * 100}%` }}>
          {times.time(instantOf(`${date}T${String(hour).padStart(2, "0")}:00`, zone), zone)}
        </span>
      ))}
    </div>
  );
};

/** Which color stands for what. */
export const BandKey = () => {
  const t = useText();
  return (
    <ul className={styles.key} aria-label={t("week.key")}>
      {(["open", "away", "daylight", "visit"] as const).map((kind) => (
        <li key={kind}>
          <span className={styles.sample} aria-hidden="true">
            <span className={styles.band} data-kind={kind} style={{ left: 0, width: "100%" }} />
          </span>
          {t(`week.key.${kind}`)}
        </li>
      ))}
    </ul>
  );
};
