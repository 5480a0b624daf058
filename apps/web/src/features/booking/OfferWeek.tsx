import { Button } from "@mantine/core";
import type { CSSProperties } from "react";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { moneyText } from "../../ui/money";
import { useTimes } from "../../entities/time/use-times";
import { weekOf } from "../../entities/time/zone-time";
import { startsOn, type Start } from "./grouping";
import type { OffersProps } from "./OfferList";
import styles from "./Offers.module.css";

interface Props extends OffersProps {
  /** Its Monday. */
  readonly week: string;
  readonly onWhy: (date: string) => void;
}

const rowOf = (minute: number, first: number): number => Math.floor((minute - first) / 15) + 1;

const StartChip = ({
  start,
  first,
  zone,
  open,
  onOpen,
  inspectors,
}: Omit<Props, "week" | "onWhy" | "offers"> & {
  readonly start: Start;
  readonly first: number;
}) => {
  const t = useText();
  const intl = useIntl();
  const times = useTimes();
  const [cheapest] = start.offers;
  if (!cheapest) return null;
  const total = moneyText(intl, cheapest.cost.total);
  const count = start.offers.length;
  const name = inspectors.find(({ id }) => id === cheapest.inspector)?.name ?? "";
  const at = `${times.day(start.start, zone)}, ${times.timeWithZone(start.start, zone)}`;
  const place: CSSProperties = { gridRow: rowOf(start.minute, first) };
  return (
    <li style={place}>
      <button
        type="button"
        className={styles.weekChip}
        aria-pressed={start.offers.some(({ id }) => id === open)}
        aria-label={
          count === 1
            ? t("hours.offer", { time: at, inspector: name, total })
            : t("hours.offer.from", { time: at, count, total })
        }
        onClick={() => onOpen(cheapest)}
      >
        <span className={styles.chipTime}>{times.time(start.start, zone)}</span>
        {count > 1 && <span className={styles.chipCount}>×{intl.formatNumber(count)}</span>}
      </button>
    </li>
  );
};

/** Seven days beside each other, a start at its height; on a narrow screen one day under the other. */
export const OfferWeek = ({ week, offers, zone, onWhy, ...rest }: Props) => {
  const t = useText();
  const times = useTimes();
  const days = weekOf(week).map((date) => ({ date, starts: startsOn(offers, date, zone) }));
  const intl = useIntl();
  const least = (starts: readonly Start[]): string => {
    const totals = starts.flatMap(({ offers: those }) => those.map(({ cost }) => cost.total));
    const [cheapest] = totals.toSorted((one, other) => one.minor - other.minor);
    return cheapest === undefined ? "" : t("hours.week.least", { total: moneyText(intl, cheapest) });
  };
  const minutes = days.flatMap(({ starts }) => starts.map(({ minute }) => minute));
  const first = Math.floor(Math.min(...minutes, 24 * 60) / 60) * 60;
  return (
    <div className={styles.week}>
      {days.map(({ date, starts }) => (
        <section key={date} className={styles.day}>
          <h3>
            {times.date(date, "short")}
            {starts.length > 0 && <span className={styles.least}>{least(starts)}</span>}
          </h3>
          {starts.length === 0 ? (
            <p className={styles.empty}>{t("hours.week.none")}</p>
          ) : (
            <ol className={styles.starts}>
              {starts.map((start) => (
                <StartChip key={start.start} start={start} first={first} zone={zone} {...rest} />
              ))}
            </ol>
          )}
          <Button
            variant="subtle"
            size="compact-sm"
            className={styles.why}
            aria-label={t("hours.week.why.day", { day: times.date(date) })}
            onClick={() => onWhy(date)}
          >
            {t("hours.week.why")}
          </Button>
        </section>
      ))}
    </div>
  );
};
