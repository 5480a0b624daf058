import { convertDifference } from "@evenhand/measurement/unit";
import { type Comparison, type Entry, isUnjudged } from "@evenhand/shared/comparison";
import type { CostRow, CostTable } from "@evenhand/shared/cost-table";
import type { Report } from "@evenhand/shared/report";
import type { Item, Sheet } from "@evenhand/shared/sheet";
import { betaPertMean } from "../beta-pert/index.ts";
import type { ThreePoints } from "../beta-pert/index.ts";
import type { UncertainCost } from "../cost-sum/index.ts";

/** A row of the table that something in the comparison asks for, with the entries that ask for it at that price. */
export type CostAtStake = UncertainCost & { readonly row: string; readonly entries: readonly number[] };

/** What could not be priced: the table has no such row, or no probability is set for this outcome. */
export type UnsetCost = {
  readonly row: string;
  readonly because: "no-row" | "no-probability";
  readonly entries: readonly number[];
};

export type CostsAtStake = {
  readonly currency: string;
  readonly correlation: number;
  /** Minor units of the currency. */
  readonly costs: readonly CostAtStake[];
  readonly unset: readonly UnsetCost[];
};

export type CostsAtStakeInput = {
  readonly comparison: Pick<Comparison, "entries">;
  /** The second report of the comparison, for the extents of what was found. */
  readonly found: Report;
  readonly sheet: Sheet;
  readonly table: CostTable;
};

type Asking = { readonly index: number; readonly entry: Entry; readonly item: Item; readonly row: string };

/** Places that are settled, or never cost: confirmed, found better, or nothing to put right. */
const isAtStake = ({ standing, direction, coverageOnly }: Entry): boolean =>
  standing !== "confirmed" && direction !== "found-better" && coverageOnly !== true;

/**
 * Probability that the cost falls due: certain where both say it is bad; for readings that they are worse than stated by more than what
 * matters (what is bad by itself, and comparisons made before that chance was worked out: by anything); else the owner's own for this
 * outcome, for what has no yardstick that of the unseen. `undefined` where none is set.
 */
const probabilityOf = (entry: Entry, row: CostRow): number | undefined => {
  const { standing, outcome, figures } = entry;
  if (standing === "agreed-fault") return 1;
  if (figures?.of === "reading" && (outcome === "differ" || outcome === "doubtful"))
    return figures.chanceOff ?? figures.probabilityWorse;
  if (isUnjudged(entry)) return row.occurs.unseen;
  return outcome === "agree" || outcome === "incomparable" ? undefined : row.occurs[outcome];
};

const extentIn = (row: CostRow, { entry }: Asking, found: Report): number => {
  if (row.perExtent === undefined || entry.atom.of !== "fault" || entry.atom.b === undefined) return 0;
  const { answer } = found.findings[entry.finding.b ?? -1] ?? {};
  const extent = answer?.kind === "faults" ? answer.found[entry.atom.b]?.extent : undefined;
  return extent === undefined ? 0 : convertDifference(extent.value, extent.unit, row.perExtent.unit);
};

/** Entries that ask for one cost together: those of one place, or of the whole car. */
const groupKey = (row: CostRow, { entry }: Asking): string => (row.per === "car" ? "" : entry.position);

/** What of a group asks for one price, and how likely that falls due. */
type Reason = ThreePoints & { readonly probability: number; readonly asking: readonly Asking[] };

const reasonOf = (asking: readonly Asking[], row: CostRow, points: ThreePoints): Reason | undefined => {
  const known = asking.flatMap(({ entry }) => probabilityOf(entry, row) ?? []);
  return known.length === 0 ? undefined : { ...points, probability: Math.max(...known), asking };
};

const wholeWork = (row: CostRow, asking: readonly Asking[], found: Report): ThreePoints => {
  const extent = Math.max(0, ...asking.map((one) => extentIn(row, one, found)));
  return {
    low: row.low + extent * (row.perExtent?.low ?? 0),
    likely: row.likely + extent * (row.perExtent?.likely ?? 0),
    high: row.high + extent * (row.perExtent?.high ?? 0),
  };
};

/** A trifle asks for a trifle's price, where the row has one; whatever is graver for the whole work. */
const reasonsOf = (row: CostRow, group: readonly Asking[], found: Report): Reason[] => {
  const { small } = row;
  const isTrifle = ({ entry }: Asking): boolean => small !== undefined && entry.severity === "small";
  const grave = group.filter((one) => !isTrifle(one));
  const asTrifle = small && reasonOf(group.filter(isTrifle), row, small);
  const asWhole = reasonOf(grave, row, wholeWork(row, grave, found));
  return [asTrifle, asWhole].filter((one) => one !== undefined);
};

const expectedOf = (reason: Reason): number => reason.probability * betaPertMean(reason);

const costOfGroup = (row: CostRow, group: readonly Asking[], found: Report): CostAtStake | UnsetCost => {
  // The dearest reason counts, and once: several signs of one worn engine are not several engines.
  const [dearest] = reasonsOf(row, group, found).toSorted(
    (one, other) => expectedOf(other) - expectedOf(one),
  );
  if (dearest === undefined)
    return { row: row.row, because: "no-probability", entries: group.map(({ index }) => index) };
  const { asking, ...cost } = dearest;
  const entries = asking.map(({ index }) => index);
  return { row: row.row, entries, group: group[0]?.item.section ?? "", ...cost };
};

const isPriced = (cost: CostAtStake | UnsetCost): cost is CostAtStake => !("because" in cost);

/**
 * What in a comparison may have to be put right, priced from a table its owner keeps. Nothing is guessed: what has no row or no
 * probability is listed as unset and adds nothing to a sum. A row that counts once for the car is asked for once, whatever asks.
 *
 * @example costsAtStake({ comparison, found, sheet, table }).costs[0]?.row // "tire"
 */
export const costsAtStake = ({ comparison, found, sheet, table }: CostsAtStakeInput): CostsAtStake => {
  const items = new Map(sheet.items.map((item) => [item.id, item]));
  const rows = new Map(table.rows.map((row) => [row.row, row]));
  const asking = comparison.entries.flatMap((entry, index): Asking[] => {
    const item = items.get(entry.item);
    if (item === undefined || item.costRow === null || !isAtStake(entry)) return [];
    return [{ index, entry, item, row: item.costRow }];
  });
  const all = [...Map.groupBy(asking, ({ row }) => row)].flatMap(
    ([name, group]): (CostAtStake | UnsetCost)[] => {
      const row = rows.get(name);
      if (row === undefined)
        return [{ row: name, because: "no-row", entries: group.map(({ index }) => index) }];
      return [...Map.groupBy(group, (one) => groupKey(row, one)).values()].map((one) =>
        costOfGroup(row, one, found),
      );
    },
  );
  return {
    currency: table.currency,
    correlation: table.correlationWithinSection,
    costs: all.filter(isPriced),
    unset: all.filter((cost) => "because" in cost),
  };
};
