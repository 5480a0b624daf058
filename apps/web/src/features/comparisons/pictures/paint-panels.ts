import { convert } from "@evenhand/measurement/unit";
import type { Finding } from "@evenhand/shared/finding";
import type { Row } from "../../../entities/comparison/model";
import { meanInBase } from "./mean-in-base";

/** One panel as one side read it, in micrometers; `null` where that side read none. */
export interface PaintPanel {
  readonly position: string;
  readonly place: string;
  /** Of the spots spread over the panel. */
  readonly mean: number | null;
  /** The thickest place that was looked for, or the thickest spot. */
  readonly highest: number | null;
}

const isThickness = ({ item }: Row): boolean => item?.reading?.unit === "um" && item.positions === "panels";
/** Spots spread over the panel make its mean; repeats at the thickest place do not. */
const isSpread = ({ item }: Row): boolean => item?.reading?.repeatability.over === "spots";

/** Paint is read in thickness, panel by panel. */
export const paintRows = (rows: readonly Row[]): readonly Row[] => rows.filter(isThickness);

const highestOf = (finding: Finding | null): number | null => {
  if (finding?.answer.kind !== "reading") return null;
  const { values, unit } = finding.answer;
  return convert(Math.max(...values.map(({ value }) => value)), unit, "um");
};

/** What one side read, a panel once: the mean from the spread spots alone, the highest from all readings of the panel. */
export const paintPanels = (rows: readonly Row[], side: "a" | "b"): readonly PaintPanel[] => {
  const places = new Map(rows.map((row) => [row.entry.position, row.place]));
  return [...places].map(([position, place]) => {
    const here = rows.filter((row) => row.entry.position === position);
    const spread = here.find((row) => isSpread(row) && row[side] !== null);
    const highest = here.map((row) => highestOf(row[side])).filter((value) => value !== null);
    return {
      position,
      place,
      mean: spread ? meanInBase(spread[side], spread.item) : null,
      highest: highest.length === 0 ? null : Math.max(...highest),
    };
  });
};
