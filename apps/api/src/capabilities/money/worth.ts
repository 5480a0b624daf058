import { betaPertMean } from "@evenhand/decision/beta-pert";
import { costsAtStake } from "@evenhand/decision/costs-at-stake";
import { type Look, worthOfLooking } from "@evenhand/decision/worth-of-looking";
import type { CostTable } from "@evenhand/shared/cost-table";
import type { WorthOfLooking } from "@evenhand/shared/http/money";
import type { LandedCost, LandedCostEntries } from "@evenhand/shared/landed-cost";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { twoFigures } from "@evenhand/decision/two-figures";
import type { OrderedComparison } from "../comparisons/index.ts";

const items = new Map(sheetVersion1.items.map((item) => [item.id, item]));
const words = new Map(sheetVersion1.costRows.map((row) => [row.id, row.words.american]));
const shown = 5;

/** What is in doubt and priced, each with the minutes the sheet gives for looking at what asks for it. */
function looksOf({ comparison, b }: OrderedComparison, table: CostTable): Look[] {
  const { costs } = costsAtStake({ comparison, found: b, sheet: sheetVersion1, table });
  return costs.map((cost, at) => {
    const entries = cost.entries.flatMap((entry) => comparison.entries[entry] ?? []);
    const named = new Set(entries.map(({ item }) => item));
    const minutes = [...named].reduce((sum, item) => sum + (items.get(item)?.minutes ?? 0), 0);
    return {
      id: `${cost.row} ${at}`,
      probability: cost.probability,
      mean: betaPertMean(cost),
      minutes: Math.max(1, minutes),
      first: entries.some(({ severity }) => severity === "halt" || severity === "danger"),
    };
  });
}

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
  const { together, order } = worthOfLooking(room, looksOf(ordered, table));
  const looks = order.slice(0, shown).map(({ id, minutes, first }) => {
    const [row = ""] = id.split(" ");
    return { row, words: words.get(row) ?? row, minutes, first };
  });
  return { together: { minor: twoFigures(together), currency: limit.currency }, looks };
}
