import type { OfferBody } from "@evenhand/shared/booking";
import type { Offers } from "@evenhand/shared/http/booking";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { moneyText } from "../../ui/money";
import { useTimes } from "../../entities/time/use-times";
import { rowsOf } from "./grouping";
import styles from "./Offers.module.css";

export interface OffersProps {
  readonly offers: readonly OfferBody[];
  readonly inspectors: Offers["inspectors"];
  readonly zone: string;
  /** Id of the one that is open. */
  readonly open: string | undefined;
  readonly onOpen: (offer: OfferBody) => void;
}

/** By cost, then time; the starts of one inspector on one day stand together. */
export const OfferList = ({ offers, inspectors, zone, open, onOpen }: OffersProps) => {
  const t = useText();
  const intl = useIntl();
  const times = useTimes();
  const who = new Map(inspectors.map((one) => [one.id, one]));
  return (
    <ol className={styles.list}>
      {rowsOf(offers, zone).map(({ key, date, inspector, offers: row }) => {
        const person = who.get(inspector);
        const total = row[0] === undefined ? "" : moneyText(intl, row[0].cost.total);
        return (
          <li key={key}>
            <div className={styles.rowHead}>
              <h3>{times.date(date)}</h3>
              <span className={`${styles.price} figures`}>{total}</span>
            </div>
            <p className={styles.who}>
              {t("offer.who.line", { name: person?.name ?? "", firm: person?.firm.name ?? "" })}
            </p>
            <div className={styles.chips}>
              {row.map((offer) => (
                <button
                  key={offer.id}
                  type="button"
                  className={styles.chip}
                  aria-pressed={offer.id === open}
                  aria-label={t("hours.offer", {
                    time: `${times.date(date)}, ${times.timeWithZone(offer.start, zone)}`,
                    inspector: person?.name ?? "",
                    total,
                  })}
                  onClick={() => onOpen(offer)}
                >
                  {times.time(offer.start, zone)}
                </button>
              ))}
            </div>
          </li>
        );
      })}
    </ol>
  );
};
