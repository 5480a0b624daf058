import type { CostSumOptions, UncertainCost } from "./index.ts";
import { normalScores } from "./normal-scores.ts";
import { scoreTable } from "./score-table.ts";
import type { ScoreTable } from "./score-table.ts";

/** Adds one cost's draws to the totals. `shared` holds the group's scores, already weighted. */
const addDraws = (
  { from, scale, costs }: ScoreTable,
  own: Float64Array,
  shared: Float64Array,
  ownWeight: number,
  totals: Float64Array,
): void => {
  const last = costs.length - 2;
  for (let draw = 0; draw < totals.length; draw += 1) {
    const score = ownWeight * own[draw]! + shared[draw]!;
    if (score <= from) continue;
    const place = (score - from) * scale;
    const index = place < last ? place | 0 : last - 1;
    const below = costs[index]!;
    const part = place < last ? place - index : 1;
    totals[draw] = totals[draw]! + below + (costs[index + 1]! - below) * part;
  }
};

/** One total a draw. Costs of one group are drawn in the order given, groups in the order they first come. */
export const drawTotals = (
  costs: readonly UncertainCost[],
  { correlation, draws, seed }: CostSumOptions,
): Float64Array => {
  const fill = normalScores(seed);
  const totals = new Float64Array(draws);
  const own = new Float64Array(draws);
  const shared = new Float64Array(draws);
  const [sharedWeight, ownWeight] = [Math.sqrt(correlation), Math.sqrt(1 - correlation)];
  for (const group of Map.groupBy(costs, (cost) => cost.group).values()) {
    if (correlation > 0) {
      fill(shared);
      for (let draw = 0; draw < draws; draw += 1) shared[draw] = sharedWeight * shared[draw]!;
    }
    for (const cost of group) {
      fill(own);
      addDraws(scoreTable(cost, cost.probability), own, shared, ownWeight, totals);
    }
  }
  return totals;
};
