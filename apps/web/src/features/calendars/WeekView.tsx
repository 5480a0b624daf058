import { Button } from "@mantine/core";
import { Link } from "@tanstack/react-router";
import { useText } from "../../strings/text";
import { isState } from "../../entities/appointment/appointment-state";
import { onDate, type Band, type Placed } from "./bands";
import { useTimes } from "../../entities/time/use-times";
import { BandKey, DayBar, HourScale } from "./DayBar";
import styles from "./WeekView.module.css";
import { addDays, weekOf } from "../../entities/time/zone-time";

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

interface StepsProps {
  readonly monday: string;
  readonly onWeek: (monday: string) => void;
}

/** To the week before and the week after. */
const WeekSteps = ({ monday, onWeek }: StepsProps) => {
  const t = useText();
  const times = useTimes();
  return (
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
  );
};

const Said = ({ band, zone }: { readonly band: Placed; readonly zone: string }) => {
  const said = useSaid(zone)(band);
  if (band.appointment === undefined) return said;
  return (
    <Link to="/appointments/$appointment" params={{ appointment: band.appointment }}>
      {said}
    </Link>
  );
};

interface DayProps {
  readonly date: string;
  readonly zone: string;
  readonly bands: readonly Band[];
}

/** A day drawn to scale and said in words. */
const WeekDay = ({ date, zone, bands }: DayProps) => {
  const t = useText();
  const times = useTimes();
  const here = onDate(bands, date, zone);
  const open = here.filter(({ kind }) => kind !== "daylight");
  return (
    <li>
      <h3>{times.date(date, "short")}</h3>
      <div className={styles.body}>
        <DayBar bands={here} />
        <p className={styles.said}>
          {open.length === 0 ? t("week.none") : null}
          {open.map((band, index) => (
            <span key={`${band.kind}${band.start}${band.bay ?? ""}`}>
              {index > 0 && "; "}
              <Said band={band} zone={zone} />
            </span>
          ))}
        </p>
      </div>
    </li>
  );
};

interface Props extends StepsProps {
  readonly zone: string;
  readonly bands: readonly Band[];
}

/** Seven days under each other, each drawn to scale and said in words. */
export const WeekView = ({ monday, zone, bands, onWeek }: Props) => (
  <div className={styles.week}>
    <WeekSteps monday={monday} onWeek={onWeek} />
    <BandKey />
    <HourScale date={monday} zone={zone} />
    <ol className={styles.days}>
      {weekOf(monday).map((date) => (
        <WeekDay key={date} date={date} zone={zone} bands={bands} />
      ))}
    </ol>
  </div>
);
