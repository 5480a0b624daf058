import { Button, VisuallyHidden } from "@mantine/core";
import { useIntl } from "react-intl";
import { useText } from "../../../strings/text";
import { moneyText } from "../../../ui/money";
import { useTimes } from "../../../entities/time/use-times";
import { weekOf } from "../../../entities/time/zone-time";
import { startsOn, type Start } from "./grouping";
import type { OffersProps } from "./OfferList";
import styles from "./Offers.module.css";

const rowOf = (minute: number, first: number): number => Math.floor((minute - first) / 15) + 1;

interface ChipProps extends OffersProps {
  readonly start: Start;
  /** The minute of the day that stands at the top. */
  readonly first: number;
}

/** A start in words: by whom where one offers it, else by how many and from which price. */
const useStartWords = ({ zone, inspectors }: OffersProps["found"]): ((start: Start) => string) => {
  const t = useText();
  const intl = useIntl();
  const times = useTimes();
  return ({ start, offers }) => {
    const [cheapest] = offers;
    const said = {
      time: `${times.day(start, zone)}, ${times.timeWithZone(start, zone)}`,
      total: cheapest === undefined ? "" : moneyText(intl, cheapest.cost.total),
    };
    const inspector = inspectors.get(cheapest?.inspector ?? "")?.name ?? "";
    return offers.length === 1
      ? t("hours.offer", { ...said, inspector })
      : t("hours.offer.from", { ...said, count: offers.length });
  };
};

const StartChip = ({ start, first, found, open, onOpen }: ChipProps) => {
  const intl = useIntl();
  const times = useTimes();
  const words = useStartWords(found);
  const [cheapest] = start.offers;
  const count = start.offers.length;
  if (!cheapest) return null;
  return (
    <li style={{ gridRow: rowOf(start.minute, first) }}>
      <button
        type="button"
        className={styles.weekChip}
        aria-pressed={start.offers.some(({ id }) => id === open)}
        onClick={() => onOpen(cheapest)}
      >
        <span className={styles.chipTime}>{times.time(start.start, found.zone)}</span>
        {count > 1 && <span className={styles.chipCount}>×{intl.formatNumber(count)}</span>}
        <VisuallyHidden> {words(start)}</VisuallyHidden>
      </button>
    </li>
  );
};

/** The least one of the starts costs. */
const Least = ({ starts }: { readonly starts: readonly Start[] }) => {
  const t = useText();
  const intl = useIntl();
  const totals = starts.flatMap(({ offers }) => offers.map(({ cost }) => cost.total));
  const [cheapest] = totals.toSorted((one, other) => one.minor - other.minor);
  if (cheapest === undefined) return null;
  return <span className={styles.least}>{t("hours.week.least", { total: moneyText(intl, cheapest) })}</span>;
};

interface DayProps extends OffersProps {
  readonly date: string;
  readonly starts: readonly Start[];
  readonly first: number;
  readonly onWhy: (date: string) => void;
}

const WeekDay = ({ date, starts, onWhy, ...rest }: DayProps) => {
  const t = useText();
  const times = useTimes();
  return (
    <section className={styles.day}>
      <h3>
        {times.date(date, "short")}
        <Least starts={starts} />
      </h3>
      {starts.length === 0 && <p className={styles.empty}>{t("hours.week.none")}</p>}
      {starts.length > 0 && (
        <ol className={styles.starts}>
          {starts.map((start) => (
            <StartChip key={start.start} start={start} {...rest} />
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
  );
};

interface Props extends OffersProps {
  readonly monday: string;
  readonly onWhy: (date: string) => void;
}

/** Seven days beside each other, a start at its height; on a narrow screen one day under the other. */
export const OfferWeek = ({ monday, ...rest }: Props) => {
  const { offers, zone } = rest.found;
  const days = weekOf(monday).map((date) => ({ date, starts: startsOn(offers, date, zone) }));
  const minutes = days.flatMap(({ starts }) => starts.map(({ minute }) => minute));
  const first = Math.floor(Math.min(...minutes, 24 * 60) / 60) * 60;
  return (
    <div className={styles.week}>
      {days.map(({ date, starts }) => (
        <WeekDay key={date} date={date} starts={starts} first={first} {...rest} />
      ))}
    </div>
  );
};
