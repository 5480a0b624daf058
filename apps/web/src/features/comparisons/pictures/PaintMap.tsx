import { useIntl } from "react-intl";
import { useText } from "../../../strings/text";
import type { Row } from "../../../entities/comparison/model";
import { paintPanels, type PaintPanel } from "./paint-panels";
import { panelShapes } from "./panel-shapes";
import styles from "./PaintMap.module.css";

/** Bands of the handbook's paint map, in micrometers; the tint only helps the eye, the figure stands in every panel. */
const bands = [200, 400, 700, 1000] as const;
const band = (thickness: number): number => bands.filter((from) => thickness > from).length;

/** Panels drawn, dashed, also where nobody read them. */
const everyCar = new Set(
  Object.keys(panelShapes).filter((position) => !/rear-door|tailgate|trunk/.test(position)),
);

interface MapProps {
  readonly label: string;
  readonly side: "a" | "b";
  readonly rows: readonly Row[];
}

interface PanelProps {
  readonly panel: PaintPanel;
  readonly text: (thickness: number) => string;
}

const DrawnPanel = ({ panel: { position, mean, highest }, text }: PanelProps) => {
  const shape = panelShapes[position];
  if (!shape) return null;
  const [x, y, width, height] = shape;
  const [across, down] = [x + width / 2, y + height / 2];
  return (
    <g data-band={highest === null ? "none" : band(highest)} data-panel={position} className={styles.panel}>
      <rect x={x} y={y} width={width} height={height} rx={5} />
      {width < 24 ? (
        <text x={across} y={down} transform={`rotate(-90 ${across} ${down})`}>
          {[mean === null ? "" : text(mean), highest === null ? "" : `↑${text(highest)}`].join(" ").trim()}
        </text>
      ) : (
        <>
          {mean !== null && (
            <text x={across} y={highest === null ? down : down - 6}>
              {text(mean)}
            </text>
          )}
          {highest !== null && (
            <text className={styles.highest} x={across} y={mean === null ? down : down + 7}>
              ↑{text(highest)}
            </text>
          )}
        </>
      )}
    </g>
  );
};

/** The thickness of a panel, in words for who does not see the map. */
const usePanelWords = (text: (thickness: number) => string): ((panel: PaintPanel) => string) => {
  const t = useText();
  return ({ place, mean, highest }) =>
    t("paint.panel", {
      panel: place,
      thickness: mean === null ? t("paint.not-read") : t("paint.mean", { thickness: text(mean) }),
      highest: highest === null ? t("paint.not-read") : t("paint.highest", { thickness: text(highest) }),
    });
};

/** Panels of every car that nobody read. */
const Unread = ({ read }: { readonly read: readonly PaintPanel[] }) =>
  Object.entries(panelShapes)
    .filter(([position]) => everyCar.has(position) && !read.some((panel) => panel.position === position))
    .map(([position, [x, y, width, height]]) => (
      <g key={position} data-band="none" className={styles.panel}>
        <rect x={x} y={y} width={width} height={height} rx={5} />
      </g>
    ));

const OneMap = ({ label, side, rows }: MapProps) => {
  const intl = useIntl();
  const text = (thickness: number): string => intl.formatNumber(thickness, { maximumFractionDigits: 0 });
  const panelWords = usePanelWords(text);
  const read = paintPanels(rows, side);
  return (
    <figure className={styles.map}>
      <svg viewBox="0 0 190 300" role="img" aria-label={`${label}: ${read.map(panelWords).join("; ")}`}>
        <Unread read={read} />
        {read.map((panel) => (
          <DrawnPanel key={panel.position} panel={panel} text={text} />
        ))}
      </svg>
      <figcaption data-side={side}>{label}</figcaption>
    </figure>
  );
};

/** The paint as a map: mean and highest thickness of every panel, as stated and as found. */
export const PaintMap = ({ rows }: { readonly rows: readonly Row[] }) => {
  const t = useText();
  return (
    <div className={styles.holder}>
      <h3>{t("paint.title")}</h3>
      <div className={styles.maps}>
        <OneMap label={t("side.stated")} side="a" rows={rows} />
        <OneMap label={t("side.found")} side="b" rows={rows} />
      </div>
      <p className={styles.note}>{t("paint.note")}</p>
    </div>
  );
};
