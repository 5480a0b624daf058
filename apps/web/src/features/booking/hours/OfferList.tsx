import type { OfferBody } from "@evenhand/shared/booking";
import { useIntl } from "react-intl";
import { useText } from "../../../strings/text";
import { moneyText } from "../../../ui/money";
import { useTimes } from "../../../entities/time/use-times";
import { rowsOf, type OfferRow } from "./grouping";
import styles from "./Offers.module.css";
import type { Found } from "./use-hours";
import { useInspectorLine } from "../use-inspector-line";

export interface OffersProps {
  readonly found: Found;
  /** Id of the one that is open. */
  readonly open: string | undefined;
  readonly onOpen: (offer: OfferBody) => void;
}

interface RowProps extends OffersProps {
  readonly row: OfferRow;
  readonly total: string;
}

const StartChips = ({ row, total, found, open, onOpen }: RowProps) => {
  const t = useText();
  const times = useTimes();
  const { zone, inspectors } = found;
  return (
    <div className={styles.chips}>
      {row.offers.map((offer) => (
        <button
          key={offer.id}
          type="button"
          className={styles.chip}
          aria-pressed={offer.id === open}
          aria-label={t("hours.offer", {
            time: `${times.date(row.date)}, ${times.timeWithZone(offer.start, zone)}`,
            inspector: inspectors.get(row.inspector)?.name ?? "",
            total,
          })}
          onClick={() => onOpen(offer)}
        >
          {times.time(offer.start, zone)}
        </button>
      ))}
    </div>
  );
};

/** One inspector on one day at one price, with the starts. */
const ListRow = ({ row, ...offers }: Omit<RowProps, "total">) => {
  const intl = useIntl();
  const times = useTimes();
  const inspectorLine = useInspectorLine();
  const total = row.offers[0] === undefined ? "" : moneyText(intl, row.offers[0].cost.total);
  return (
    <li>
      <div className={styles.rowHead}>
        <h3>{times.date(row.date)}</h3>
        <span className={`${styles.price} figures`}>{total}</span>
      </div>
      <p className={styles.who}>{inspectorLine(offers.found.inspectors.get(row.inspector))}</p>
      <StartChips row={row} total={total} {...offers} />
    </li>
  );
};

/** By cost, then time; the starts of one inspector on one day stand together. */
export const OfferList = (offers: OffersProps) => (
  <ol className={styles.list}>
    {rowsOf(offers.found.offers, offers.found.zone).map((row) => (
      <ListRow key={row.key} row={row} {...offers} />
    ))}
  </ol>
);
