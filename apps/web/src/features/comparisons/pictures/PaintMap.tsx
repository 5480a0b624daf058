import { convert } from "@evenhand/measurement/unit";
import type { Finding } from "@evenhand/shared/finding";
import { useIntl } from "react-intl";
import { useText } from "../../../strings/text";
import type { Row } from "../model";
import { meanInBase } from "./mean-in-base";
import { panelShapes } from "./panel-shapes";
import styles from "./PaintMap.module.css";

/** Paint is read in thickness, panel by panel. */
export const paintRows = (rows: readonly Row[]): readonly Row[] =>
  rows.filter(({ item }) => item?.reading?.unit === "um" && item.positions === "panels");

/** Bands of the handbook's paint map, in micrometers; the tint only helps the eye, the figure stands in every panel. */
const bands = [200, 400, 700, 1000] as const;
const band = (thickness: number): number => bands.filter((from) => thickness > from).length;

const inMicrometers = (finding: Finding | null, row: Row): number | null => {
  const mean = meanInBase(finding, row.item);
  return mean === null || !row.item?.reading ? null : convert(mean, row.item.reading.unit, "um");
};

/** Panels drawn, dashed, also where nobody read them. */
const everyCar = new Set(
  Object.keys(panelShapes).filter((position) => !/rear-door|tailgate|trunk/.test(position)),
);

interface MapProps {
  readonly label: string;
  readonly side: "a" | "b";
  readonly rows: readonly Row[];
}

const OneMap = ({ label, side, rows }: MapProps) => {
  const t = useText();
  const intl = useIntl();
  const read = rows.map((row) => ({ row, thickness: inMicrometers(row[side], row) }));
  const unread = Object.entries(panelShapes).filter(
    ([position]) => everyCar.has(position) && !rows.some(({ entry }) => entry.position === position),
  );
  const text = (thickness: number): string => intl.formatNumber(thickness, { maximumFractionDigits: 0 });
  const described = read.map(({ row, thickness }) =>
    t("paint.panel", {
      panel: row.place,
      thickness: thickness === null ? t("paint.not-read") : `${text(thickness)} µm`,
    }),
  );
  return (
    <figure className={styles.map}>
      <svg viewBox="0 0 190 300" role="img" aria-label={`${label}: ${described.join("; ")}`}>
        {unread.map(([position, [x, y, width, height]]) => (
          <g key={position} data-band="none" className={styles.panel}>
            <rect x={x} y={y} width={width} height={height} rx={5} />
          </g>
        ))}
        {read.map(({ row, thickness }) => {
          const shape = panelShapes[row.entry.position];
          if (!shape) return null;
          const [x, y, width, height] = shape;
          const narrow = width < 24;
          return (
            <g
              key={row.entry.position}
              data-band={thickness === null ? "none" : band(thickness)}
              className={styles.panel}
            >
              <rect x={x} y={y} width={width} height={height} rx={5} />
              {thickness !== null && (
                <text
                  x={x + width / 2}
                  y={y + height / 2}
                  transform={narrow ? `rotate(-90 ${x + width / 2} ${y + height / 2})` : undefined}
                >
                  {text(thickness)}
                </text>
              )}
            </g>
          );
        })}
      </svg>
      <figcaption data-side={side}>{label}</figcaption>
    </figure>
  );
};

/** The paint as a map: mean thickness of every panel, as stated and as found. */
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
