import { allowedBand } from "@evenhand/comparison/use-allowed";
import type { LimitFigures, ReadingFigures } from "@evenhand/shared/comparison";
import { useElementSize } from "@mantine/hooks";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { withUnit } from "../sheet/answer-text";
import styles from "./ReadingScale.module.css";
import { axisMarks, digitsFor } from "./scale";

interface Props {
  readonly figures: ReadingFigures;
  readonly limits: readonly LimitFigures[];
}

interface Band {
  readonly low: number;
  readonly high: number;
}

const height = 138;
const row = { delta: 20, a: 48, b: 78, axis: 104 } as const;

const spread = (mean: number, uncertainty: number): Band => ({
  low: mean - uncertainty,
  high: mean + uncertainty,
});

/** Both readings as intervals on one scale, with the difference that matters round the stated one, and the limits. */
export const ReadingScale = ({ figures, limits }: Props) => {
  const t = useText();
  const intl = useIntl();
  const { ref, width } = useElementSize();
  const { a, b, delta, coverageFactor: k, unit } = figures;
  const stated = spread(a.mean, k * a.standardUncertainty);
  const found = spread(b.mean, k * b.standardUncertainty);
  const matters = allowedBand(figures);
  const ends = [
    stated.low,
    stated.high,
    found.low,
    found.high,
    matters.low,
    matters.high,
    ...limits.map((one) => one.value),
  ];
  const least = Math.min(...ends);
  const most = Math.max(...ends);
  const margin = (most - least || 1) * 0.06;
  const x = (value: number): number =>
    10 + ((value - least + margin) / (most - least + 2 * margin)) * (width - 20);
  const marks = axisMarks(least - margin, most + margin, Math.max(2, Math.floor(width / 80)));
  const plain = (value: number): string => intl.formatNumber(value, { maximumSignificantDigits: 6 });
  const exact = (value: number, u: number): string => {
    const digits = digitsFor(u);
    return intl.formatNumber(value, { minimumFractionDigits: digits, maximumFractionDigits: digits });
  };
  const side = (band: Band, mean: number): string =>
    t("scale.side", {
      mean: exact(mean, band.high - mean),
      u: withUnit(exact(band.high - mean, band.high - mean), unit),
    });
  const label = t("scale.label", {
    stated: side(stated, a.mean),
    found: side(found, b.mean),
    delta: withUnit(plain(delta), unit),
    limits: limits
      .map((one) => t(`scale.limit.${one.side}`, { value: withUnit(plain(one.value), one.unit) }))
      .join(", "),
  });
  return (
    <div className={styles.holder} ref={ref}>
      {width > 0 && (
        <svg width={width} height={height} role="img" aria-label={label} className={styles.scale}>
          <rect
            className={styles.matters}
            x={x(matters.low)}
            width={Math.max(0, x(matters.high) - x(matters.low))}
            y={row.delta}
            height={row.axis - row.delta}
          />
          <path
            className={styles.bracket}
            d={`M${x(matters.low)} ${row.delta + 5}v-5H${x(matters.high)}v5`}
          />
          <text className={styles.note} x={x(a.mean)} y={row.delta - 7} textAnchor="middle">
            {t("scale.delta", { delta: withUnit(plain(delta), unit) })}
          </text>
          <line className={styles.axis} x1={4} x2={width - 4} y1={row.axis} y2={row.axis} />
          {marks.map((mark) => (
            <g key={mark}>
              <line className={styles.axis} x1={x(mark)} x2={x(mark)} y1={row.axis} y2={row.axis + 5} />
              <text className={styles.mark} x={x(mark)} y={row.axis + 19} textAnchor="middle">
                {plain(mark)}
              </text>
            </g>
          ))}
          {limits.map((one) => (
            <line
              key={`${one.side}${one.value}`}
              className={styles.limit}
              x1={x(one.value)}
              x2={x(one.value)}
              y1={row.delta - 2}
              y2={row.axis}
            />
          ))}
          <g className={styles.stated}>
            <path
              d={`M${x(stated.low)} ${row.a - 7}v14M${x(stated.high)} ${row.a - 7}v14M${x(stated.low)} ${row.a}H${x(stated.high)}`}
            />
            <rect x={x(a.mean) - 6} y={row.a - 6} width={12} height={12} />
          </g>
          <g className={styles.found}>
            <path
              d={`M${x(found.low)} ${row.b - 7}v14M${x(found.high)} ${row.b - 7}v14M${x(found.low)} ${row.b}H${x(found.high)}`}
            />
            <circle cx={x(b.mean)} cy={row.b} r={6.5} />
          </g>
        </svg>
      )}
      <ul className={styles.legend}>
        <li data-side="stated">{t("scale.stated", { figure: side(stated, a.mean) })}</li>
        <li data-side="found">{t("scale.found", { figure: side(found, b.mean) })}</li>
        {figures.useAllowed !== undefined && (
          <li data-side="use">
            {t("scale.use", { allowed: withUnit(plain(Math.abs(figures.useAllowed)), unit) })}
          </li>
        )}
        {limits.map((one) => (
          <li key={`${one.side}${one.value}`} data-side="limit">
            {t("scale.limit.source", {
              limit: t(`scale.limit.${one.side}`, { value: withUnit(plain(one.value), one.unit) }),
              source: one.source,
            })}
          </li>
        ))}
      </ul>
    </div>
  );
};
