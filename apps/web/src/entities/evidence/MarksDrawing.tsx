import type { PictureMark } from "@evenhand/shared/evidence";
import styles from "./Marks.module.css";

interface Props {
  readonly marks: readonly PictureMark[];
  /** The picture's width by its height. */
  readonly ratio: number;
}

/** The drawing's own width; its height follows the picture's. */
const WIDE = 1000;

type Arrow = Extract<PictureMark, { kind: "arrow" }>;

/** Two short strokes at the point. */
const headOf = ({ x, y, toX, toY }: Arrow, tall: number): string => {
  const [px, py] = [toX * WIDE, toY * tall];
  const along = Math.atan2(py - y * tall, px - x * WIDE);
  const stroke = (turn: number): string =>
    `${px - 34 * Math.cos(along + turn)} ${py - 34 * Math.sin(along + turn)}`;
  return `M${stroke(0.5)} L${px} ${py} L${stroke(-0.5)}`;
};

const One = ({ mark, tall }: { readonly mark: PictureMark; readonly tall: number }) => {
  const [x, y] = [mark.x * WIDE, mark.y * tall];
  if (mark.kind === "circle") return <circle cx={x} cy={y} r={mark.radius * WIDE} />;
  if (mark.kind === "text")
    return (
      <text x={x} y={y}>
        {mark.words}
      </text>
    );
  return <path d={`M${x} ${y} L${mark.toX * WIDE} ${mark.toY * tall} ${headOf(mark, tall)}`} />;
};

/** What its author drew over a picture; twice, so that it is seen on light and on dark. */
export const MarksDrawing = ({ marks, ratio }: Props) => {
  if (marks.length === 0) return null;
  const tall = WIDE / ratio;
  return (
    <svg
      className={styles.marks}
      viewBox={`0 0 ${WIDE} ${tall}`}
      aria-hidden="true"
      data-marks={marks.length}
    >
      {(["under", "over"] as const).map((layer) => (
        <g key={layer} data-layer={layer}>
          {marks.map((mark, at) => (
            <One key={at} mark={mark} tall={tall} />
          ))}
        </g>
      ))}
    </svg>
  );
};
