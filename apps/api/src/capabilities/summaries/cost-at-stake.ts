import { costByMatter } from "@evenhand/decision/cost-by-matter";
import { costSum } from "@evenhand/decision/cost-sum";
import { costsAtStake, type CostsAtStake } from "@evenhand/decision/costs-at-stake";
import type { CostTable } from "@evenhand/shared/cost-table";
import type { AnswerCost } from "@evenhand/shared/page-one";
import type { SummaryCost } from "@evenhand/shared/summary";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import type { OrderedComparison } from "../comparisons/index.ts";

const draws = 10_000;

/** Drawn with a seed from the comparison's own hash: the same comparison and table, the same figures. */
const seedOf = ({ hash }: OrderedComparison): number => Number.parseInt(hash.slice(0, 8), 16);

const atStakeOf = ({ comparison, b }: OrderedComparison, table: CostTable): CostsAtStake =>
  costsAtStake({ comparison, found: b, sheet: sheetVersion1, table });

const rowsOf = ({ costs }: CostsAtStake): SummaryCost["rows"] =>
  costs.map(({ row, entries, probability, low, likely, high }) => ({
    row,
    entries: [...entries],
    probability,
    low: Math.round(low),
    likely: Math.round(likely),
    high: Math.round(high),
  }));

/** What a summary keeps of it, row by row. */
export function summaryCostOf(ordered: OrderedComparison, table: CostTable): SummaryCost {
  const atStake = atStakeOf(ordered, table);
  const seed = seedOf(ordered);
  const sum = costSum(atStake.costs, { correlation: atStake.correlation, draws, seed });
  return {
    currency: atStake.currency,
    table: table.name,
    rows: rowsOf(atStake),
    unset: [...new Set(atStake.unset.map(({ row }) => row))],
    total: { low: Math.round(sum.p10), likely: Math.round(sum.p50), high: Math.round(sum.p90) },
    draws,
    seed,
  };
}

/** What page one shows of it, matter by matter. */
export function answerCostOf(ordered: OrderedComparison, table: CostTable): NonNullable<AnswerCost["cost"]> {
  const { matters, unknown } = ordered.answer;
  return costByMatter({
    atStake: atStakeOf(ordered, table),
    matters: [...matters, ...unknown].map(({ matter }) => matter),
    table: table.name,
    draws,
    seed: seedOf(ordered),
  });
}
