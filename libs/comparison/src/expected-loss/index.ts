import { type Entry, isUnjudged } from "@evenhand/shared/comparison";
import type { CostRow, CostTable } from "@evenhand/shared/cost-table";
import type { Report } from "@evenhand/shared/report";
import { dimensionOf, convert } from "@evenhand/measurement/unit";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { findingOf } from "../finding-of/index.ts";

/** `minor`: P × middle cost in whole minor units, not rounded. Unset where the table has no row or no probability. */
export type ExpectedLoss =
  | { readonly state: "set"; readonly probability: number; readonly middle: number; readonly minor: number }
  | { readonly state: "unset" };

const UNSET: ExpectedLoss = { state: "unset" };

/** A cost table by row, made once for many entries. */
export type Costs = ReadonlyMap<string, CostRow>;

export const costsOf = (table: CostTable | undefined): Costs =>
  new Map(table?.rows.map((row) => [row.row, row]));

/**
 * P that the cost falls due: for readings that they are worse by more than what matters (what is bad by itself, and comparisons made
 * before that chance was worked out: by anything), else the owner's own for the outcome; `undefined` where unset.
 */
const probabilityOf = (entry: Entry, row: CostRow): number | undefined => {
  const { figures, outcome, atom, marks } = entry;
  // What both say is bad is there to be put right.
  if (marks.includes("both-bad")) return 1;
  if (figures?.of === "reading" && atom.of === "answer") return figures.chanceOff ?? figures.probabilityWorse;
  if (isUnjudged(entry)) return row.occurs.unseen;
  return outcome === "agree" || outcome === "incomparable" ? undefined : row.occurs[outcome];
};

type ExtentUnit = NonNullable<CostRow["perExtent"]>["unit"];

/** The extent the inspection gave of the entry's fault, in the table's unit; 0 where there is none to go by. */
const extentOf = ({ atom, finding }: Entry, b: Pick<Report, "findings">, unit: ExtentUnit): number => {
  const answer = findingOf(b.findings, finding.b)?.answer;
  if (atom.of !== "fault" || answer?.kind !== "faults") return 0;
  const extent = answer.found[atom.b ?? -1]?.extent;
  if (extent === undefined || dimensionOf(extent.unit) !== dimensionOf(unit)) return 0;
  return convert(extent.value, extent.unit, unit);
};

/** Most likely cost: a trifle's where the row has one, else with what the extent adds. */
const middleOf = (
  entry: Entry,
  { likely, small, perExtent }: CostRow,
  b: Pick<Report, "findings">,
): number => {
  if (entry.severity === "small" && small !== undefined) return small.likely;
  return likely + (perExtent === undefined ? 0 : perExtent.likely * extentOf(entry, b, perExtent.unit));
};

/**
 * What an entry is expected to cost to put right: the probability that it falls due, times the middle
 * cost of the item's row in a table that its owner made, scaled by the extent the inspection found. Arithmetic on the
 * owner's own figures; what the table leaves open stays open.
 *
 * @example expectedLoss(entry, costs, sheet, inspection) // { state: "set", probability: 0.98, middle: 42000, minor: 41160 }
 */
export const expectedLoss = (
  entry: Entry,
  costs: Costs,
  sheet: CompiledSheet,
  b: Pick<Report, "findings">,
): ExpectedLoss => {
  if (costs.size === 0) return UNSET;
  const row = costs.get(sheet.items.get(entry.item)?.item.costRow ?? "");
  if (row === undefined) return UNSET;
  const probability = probabilityOf(entry, row);
  if (probability === undefined) return UNSET;
  const middle = middleOf(entry, row, b);
  return { state: "set", probability, middle, minor: probability * middle };
};
