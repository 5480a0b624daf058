import type { CostSumOptions, UncertainCost } from "./index.ts";
import { normalScores } from "./normal-scores.ts";
import { cellsPerScore, greatestScore, scoreTable } from "./score-table.ts";
import type { ScoreTable } from "./score-table.ts";

/** Adds one cost's draws to the totals, its scores alone. */
const addOwn = ({ from, costs }: ScoreTable, own: Float64Array, totals: Float64Array): void => {
  for (let draw = 0; draw < totals.length; draw += 1) {
    const score = own[draw]!;
    if (score >= from) totals[draw] = totals[draw]! + costs[((score + greatestScore) * cellsPerScore) | 0]!;
  }
};

/** The same where part of the score is the group's. */
const addShared = (
  { from, costs }: ScoreTable,
  own: Float64Array,
  group: Float64Array,
  correlation: number,
  totals: Float64Array,
): void => {
  const [ofGroup, ofOwn] = [Math.sqrt(correlation), Math.sqrt(1 - correlation)];
  for (let draw = 0; draw < totals.length; draw += 1) {
    const score = ofGroup * group[draw]! + ofOwn * own[draw]!;
    if (score >= from) totals[draw] = totals[draw]! + costs[((score + greatestScore) * cellsPerScore) | 0]!;
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
  for (const group of Map.groupBy(costs, (cost) => cost.group).values()) {
    if (correlation > 0) fill(shared);
    for (const cost of group) {
      fill(own);
      const table = scoreTable(cost, cost.probability);
      if (correlation > 0) addShared(table, own, shared, correlation, totals);
      else addOwn(table, own, totals);
    }
  }
  return totals;
};
