import { Button } from "@mantine/core";
import { Link } from "@tanstack/react-router";
import type { CSSProperties } from "react";
import { useText } from "../../strings/text";
import { isState } from "../../entities/appointment/appointment-state";
import { onDate, type Band, type Placed } from "./bands";
import { useTimes } from "../../entities/time/use-times";
import styles from "./WeekView.module.css";
import { addDays, instantOf, weekOf } from "../../entities/time/zone-time";

const hours = [0, 6, 12, 18] as const;

const useSaid = (zone: string): ((band: Placed) => string) => {
  const t = useText();
  const times = useTimes();
  return (band) => {
    const range = times.range(band.start, band.end, zone);
    if (band.kind !== "visit") return t(`week.${band.kind}`, { range });
    const state = isState(band.state) ? t(`appointment.state.${band.state}`) : "";
    return band.bay === undefined
      ? t("week.visit", { range, site: band.site ?? "", state })
      : t("week.bay", { range, bay: band.bay, state });
  };
};

/** The drawn bar of a day; all it shows is said beside it. */
export const DayBar = ({ bands }: { readonly bands: readonly Placed[] }) => (
  <div className={styles.bar} aria-hidden="true">
    {hours.map((hour) => (
      <span key={hour} className={styles.hour} style={{ left: `${(hour / 24) * 100}%` }} />
    ))}
    {bands.map((band) => {
      const place: CSSProperties = {
        left: `${band.from * 100}%`,
        width: `${Math.max(0.6, (band.to - band.from) * 100)}%`,
      };
      return (
        <span
          key={`${band.kind}${band.start}${band.bay ?? ""}`}
          className={styles.band}
          data-kind={band.kind === "closed" ? "away" : band.kind}
          style={place}
        />
      );
    })}
  </div>
);

export const HourScale = ({
  date,
  zone,
  flush = false,
}: {
  readonly date: string;
  readonly zone: string;
  /** No names of days stand to the left. */
  readonly flush?: boolean;
}) => {
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

interface Props {
  readonly monday: string;
  readonly zone: string;
  readonly bands: readonly Band[];
  readonly onWeek: (monday: string) => void;
}

/** Seven days under each other, each drawn to scale and said in words. */
export const WeekView = ({ monday, zone, bands, onWeek }: Props) => {
  const t = useText();
  const times = useTimes();
  const said = useSaid(zone);
  return (
    <div className={styles.week}>
      <div className={styles.steps}>
        <Button variant="default" onClick={() => onWeek(addDays(monday, -7))}>
          {t("week.before")}
        </Button>
        <p aria-live="polite" className={styles.of}>
          {t("week.of", { date: times.date(monday) })}
        </p>
        <Button variant="default" onClick={() => onWeek(addDays(monday, 7))}>
          {t("week.after")}
        </Button>
      </div>
      <BandKey />
      <HourScale date={monday} zone={zone} />
      <ol className={styles.days}>
        {weekOf(monday).map((date) => {
          const here = onDate(bands, date, zone);
          const open = here.filter(({ kind }) => kind !== "daylight");
          return (
            <li key={date}>
              <h3>{times.date(date, "short")}</h3>
              <div className={styles.body}>
                <DayBar bands={here} />
                <p className={styles.said}>
                  {open.length === 0 ? t("week.none") : null}
                  {open.map((band, index) => (
                    <span key={`${band.kind}${band.start}${band.bay ?? ""}`}>
                      {index > 0 && "; "}
                      {band.appointment === undefined ? (
                        said(band)
                      ) : (
                        <Link to="/appointments/$appointment" params={{ appointment: band.appointment }}>
                          {said(band)}
                        </Link>
                      )}
                    </span>
                  ))}
                </p>
              </div>
            </li>
          );
        })}
      </ol>
    </div>
  );
};
