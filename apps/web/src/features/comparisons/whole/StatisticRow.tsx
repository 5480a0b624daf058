import type { Statistic } from "@evenhand/shared/comparison";
import { useIntl } from "react-intl";
import { useText } from "../../../strings/text";
import styles from "./Whole.module.css";

interface Props {
  readonly name: string;
  readonly hint: string;
  readonly statistic: Statistic;
  /** Ends of the axis. */
  readonly range: readonly [number, number];
  readonly unit?: "share" | "steps";
}

const clamp = (share: number): number => Math.min(1, Math.max(0, share));

type Known = Extract<Statistic, { state: "known" }>;

type PlotProps = Pick<Props, "range"> & { readonly statistic: Known };

/** The interval on its axis, with the estimate on it and zero where the axis goes through it. */
const Plot = ({ statistic: { estimate, low, high }, range: [from, to] }: PlotProps) => {
  const at = (value: number): string => `${clamp((value - from) / (to - from)) * 100}%`;
  return (
    <td className={styles.plot} aria-hidden="true">
      <span className={styles.axis}>
        {from < 0 && to > 0 && <span className={styles.zero} style={{ left: at(0) }} />}
        <span
          className={styles.interval}
          style={{ left: at(low), width: `calc(${at(high)} - ${at(low)})` }}
        />
        <span className={styles.point} style={{ left: at(estimate) }} />
      </span>
    </td>
  );
};

const Figure = ({ statistic, unit }: Pick<Props, "unit"> & { readonly statistic: Known }) => {
  const t = useText();
  const intl = useIntl();
  const { estimate, low, high, n } = statistic;
  const text = (value: number): string =>
    unit === "share"
      ? intl.formatNumber(value, { style: "percent", maximumFractionDigits: 0 })
      : intl.formatNumber(value, { maximumFractionDigits: 2, minimumFractionDigits: 2 });
  return (
    <td className={styles.figure}>
      <strong>{text(estimate)}</strong>
      <span>{t("whole.interval", { low: text(low), high: text(high), n })}</span>
    </td>
  );
};

/** One figure with its interval drawn on its axis; never a figure without its interval, never one from too few items. */
export const StatisticRow = ({ name, hint, statistic, range, unit }: Props) => {
  const t = useText();
  return (
    <tr>
      <th scope="row">
        {name}
        <span className={styles.hint}>{hint}</span>
      </th>
      {statistic.state === "too-few" ? (
        <td colSpan={2} className={styles.few}>
          {t("whole.too-few", { n: statistic.n, needed: statistic.needed })}
        </td>
      ) : (
        <>
          <Figure statistic={statistic} unit={unit} />
          <Plot statistic={statistic} range={range} />
        </>
      )}
    </tr>
  );
};
