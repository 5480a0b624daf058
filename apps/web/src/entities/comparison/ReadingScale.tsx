import { takenMean } from "@evenhand/comparison/use-allowed";
import type { LimitFigures, ReadingFigures } from "@evenhand/shared/comparison";
import { useElementSize } from "@mantine/hooks";
import { useText } from "../../strings/text";
import { withUnit } from "../sheet/answer-text";
import styles from "./ReadingScale.module.css";
import { noteAt, readingScale, type Band, type ReadingScaleView } from "./reading-scale";
import { axisMarks } from "./scale";
import { useScaleWords, type ScaleWords } from "./use-scale-words";

interface Props {
  readonly figures: ReadingFigures;
  readonly limits: readonly LimitFigures[];
}

interface Drawn extends Props {
  readonly view: ReadingScaleView;
  readonly words: ScaleWords;
  readonly width: number;
}

const height = 138;
const row = { delta: 20, a: 48, b: 78, axis: 104 } as const;

/** The difference that matters, round the stated reading. */
const Matters = ({ figures, view: { matters, x }, words, width }: Drawn) => {
  const t = useText();
  const [low, high] = [x(matters.low), x(matters.high)];
  return (
    <>
      <rect
        className={styles.matters}
        x={low}
        width={Math.max(0, high - low)}
        y={row.delta}
        height={row.axis - row.delta}
      />
      <path className={styles.bracket} d={`M${low} ${row.delta + 5}v-5H${high}v5`} />
      <text
        className={styles.note}
        x={noteAt(x(takenMean(figures.a)), width)}
        y={row.delta - 7}
        textAnchor="middle"
      >
        {t("scale.delta", { delta: words.delta })}
      </text>
    </>
  );
};

const Axis = ({ view: { shown, x }, words, width }: Drawn) => {
  const marks = axisMarks(shown.low, shown.high, Math.max(2, Math.floor(width / 80)));
  return (
    <>
      <line className={styles.axis} x1={4} x2={width - 4} y1={row.axis} y2={row.axis} />
      {marks.map((mark) => (
        <g key={mark}>
          <line className={styles.axis} x1={x(mark)} x2={x(mark)} y1={row.axis} y2={row.axis + 5} />
          <text className={styles.mark} x={x(mark)} y={row.axis + 19} textAnchor="middle">
            {words.plain(mark)}
          </text>
        </g>
      ))}
    </>
  );
};

const Limits = ({ limits, view: { x } }: Drawn) =>
  limits.map((one) => (
    <line
      key={`${one.side}${one.value}`}
      className={styles.limit}
      x1={x(one.value)}
      x2={x(one.value)}
      y1={row.delta - 2}
      y2={row.axis}
    />
  ));

/** An interval with its two ends, at a height. */
const whisker = (band: Band, y: number, x: (value: number) => number): string =>
  `M${x(band.low)} ${y - 7}v14M${x(band.high)} ${y - 7}v14M${x(band.low)} ${y}H${x(band.high)}`;

const Sides = ({ figures: { a, b }, view: { stated, found, x } }: Drawn) => (
  <>
    <g className={styles.stated}>
      <path d={whisker(stated, row.a, x)} />
      <rect x={x(takenMean(a)) - 6} y={row.a - 6} width={12} height={12} />
    </g>
    <g className={styles.found}>
      <path d={whisker(found, row.b, x)} />
      <circle cx={x(takenMean(b))} cy={row.b} r={6.5} />
    </g>
  </>
);

const Drawing = (drawn: Drawn) => {
  const t = useText();
  const { width, limits, words } = drawn;
  const label = t("scale.label", {
    stated: words.stated,
    found: words.found,
    delta: words.delta,
    limits: limits.map(words.limit).join(", "),
  });
  return (
    <svg width={width} height={height} role="img" aria-label={label} className={styles.scale}>
      <Matters {...drawn} />
      <Axis {...drawn} />
      <Limits {...drawn} />
      <Sides {...drawn} />
    </svg>
  );
};

const Legend = ({ figures: { useAllowed, unit }, limits, words }: Drawn) => {
  const t = useText();
  return (
    <ul className={styles.legend}>
      <li data-side="stated">{t("scale.stated", { figure: words.stated })}</li>
      <li data-side="found">{t("scale.found", { figure: words.found })}</li>
      {useAllowed !== undefined && (
        <li data-side="use">
          {t("scale.use", { allowed: withUnit(words.plain(Math.abs(useAllowed)), unit) })}
        </li>
      )}
      {limits.map((one) => (
        <li key={`${one.side}${one.value}`} data-side="limit">
          {t("scale.limit.source", { limit: words.limit(one), source: one.source })}
        </li>
      ))}
    </ul>
  );
};

/** Both readings as intervals on one scale, with the difference that matters round the stated one, and the limits. */
export const ReadingScale = ({ figures, limits }: Props) => {
  const { ref, width } = useElementSize();
  const view = readingScale(figures, limits, width);
  const words = useScaleWords(figures, view);
  const drawn = { figures, limits, view, words, width };
  return (
    <div className={styles.holder} ref={ref}>
      {width > 0 && <Drawing {...drawn} />}
      <Legend {...drawn} />
    </div>
  );
};
