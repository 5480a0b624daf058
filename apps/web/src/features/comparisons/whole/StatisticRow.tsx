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

/** One figure with its interval drawn on its axis; never a figure without its interval, never one from too few items. */
export const StatisticRow = ({ name, hint, statistic, range, unit }: Props) => {
  const t = useText();
  const intl = useIntl();
  const text = (value: number): string =>
    unit === "share"
      ? intl.formatNumber(value, { style: "percent", maximumFractionDigits: 0 })
      : intl.formatNumber(value, { maximumFractionDigits: 2, minimumFractionDigits: 2 });
  const at = (value: number): string => `${clamp((value - range[0]) / (range[1] - range[0])) * 100}%`;
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
          <td className={styles.figure}>
            <strong>{text(statistic.estimate)}</strong>
            <span>
              {t("whole.interval", { low: text(statistic.low), high: text(statistic.high), n: statistic.n })}
            </span>
          </td>
          <td className={styles.plot} aria-hidden="true">
            <span className={styles.axis}>
              {range[0] < 0 && range[1] > 0 && <span className={styles.zero} style={{ left: at(0) }} />}
              <span
                className={styles.interval}
                style={{
                  left: at(statistic.low),
                  width: `calc(${at(statistic.high)} - ${at(statistic.low)})`,
                }}
              />
              <span className={styles.point} style={{ left: at(statistic.estimate) }} />
            </span>
          </td>
        </>
      )}
    </tr>
  );
};
