import type { Interval } from "@evenhand/shared/comparison";
import type { SectionRecord } from "@evenhand/shared/http/records";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import styles from "./DealerRecord.module.css";
import { intervalBar } from "./interval-bar";

type Known = Extract<SectionRecord, { state: "known" }>;

/** The interval as a band, the share as a mark across it, on 0 to 100 %. */
const Bar = ({ interval, of }: { readonly interval: Interval; readonly of: "heldUp" | "confirmed" }) => {
  const { from, width, at } = intervalBar(interval);
  return (
    <svg className={styles.bar} data-of={of} aria-hidden="true">
      <rect className={styles.track} x="0" y="6" width="100%" height="4" />
      {["0%", "50%", "100%"].map((x) => (
        <line key={x} className={styles.tick} x1={x} x2={x} y1="3" y2="13" />
      ))}
      <rect className={styles.band} x={from} y="3" width={width} height="10" />
      <line className={styles.mark} x1={at} x2={at} y1="0" y2="16" />
    </svg>
  );
};

const Share = ({ row, of }: { readonly row: Known; readonly of: "heldUp" | "confirmed" }) => {
  const t = useText();
  const intl = useIntl();
  const percent = (value: number): string =>
    intl.formatNumber(value, { style: "percent", maximumFractionDigits: 0 });
  const { estimate, low, high } = row[of];
  return (
    <div className={styles.share}>
      <span>{t(`record.${of}`)}</span>
      <Bar interval={row[of]} of={of} />
      <span className={styles.figures}>
        {t("record.share", { share: percent(estimate), low: percent(low), high: percent(high) })}
      </span>
    </div>
  );
};

interface Props {
  readonly row: SectionRecord;
  readonly name: string;
}

/** One section: its shares with their intervals, and the cars behind them; or that there are too few. */
export const SectionRow = ({ row, name }: Props) => {
  const t = useText();
  if (row.state === "too-few") {
    return (
      <li className={styles.section}>
        <h3>{name}</h3>
        <p className={styles.cars}>{t("record.too-few", { n: row.n, needed: row.needed })}</p>
      </li>
    );
  }
  const { n, confirmedCars, notContradicted, fell } = row;
  return (
    <li className={styles.section}>
      <h3>{name}</h3>
      <div className={styles.shares}>
        <Share row={row} of="heldUp" />
        <Share row={row} of="confirmed" />
        <p className={styles.cars}>{t("record.cars", { n, confirmedCars, notContradicted, fell })}</p>
      </div>
    </li>
  );
};
