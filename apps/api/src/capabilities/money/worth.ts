import { looksAtStake } from "@evenhand/decision/looks-at-stake";
import { twoFigures } from "@evenhand/decision/two-figures";
import { worthOfLooking } from "@evenhand/decision/worth-of-looking";
import type { CostTable } from "@evenhand/shared/cost-table";
import type { WorthOfLooking } from "@evenhand/shared/http/money";
import type { LandedCost, LandedCostEntries } from "@evenhand/shared/landed-cost";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import type { OrderedComparison } from "../comparisons/index.ts";

const words = new Map(sheetVersion1.costRows.map((row) => [row.id, row.words.american]));
const shown = 5;

/**
 * What another look would be worth: `null` without a limit, or where the limit, the table of costs and everything else are not in
 * one currency.
 */
export function worthOf(
  { limit }: LandedCostEntries,
  { lines, totals }: LandedCost,
  ordered: OrderedComparison,
  table: CostTable,
): WorthOfLooking | null {
  const [total] = totals;
  if (limit === null || totals.length !== 1 || total?.currency !== limit.currency) return null;
  if (table.currency !== limit.currency) return null;
  const putRight = lines.find(({ line }) => line === "put-right");
  const repairs = putRight !== undefined && "amount" in putRight ? putRight.amount.likely : 0;
  const room = limit.minor - (total.amount.likely - repairs);
  const { together, order } = worthOfLooking(
    room,
    looksAtStake({ comparison: ordered.comparison, found: ordered.b, sheet: sheetVersion1, table }),
  );
  const looks = order
    .slice(0, shown)
    .map(({ row, minutes, first }) => ({ row, words: words.get(row) ?? row, minutes, first }));
  return { together: { minor: twoFigures(together), currency: limit.currency }, looks };
}
