import { matterId } from "@evenhand/shared/matter-id";
import type { Matter } from "@evenhand/shared/matter";
import type { AnswerCost } from "@evenhand/shared/page-one";
import { betaPertMean } from "../beta-pert/index.ts";
import { costSum } from "../cost-sum/index.ts";
import type { CostAtStake, CostsAtStake } from "../costs-at-stake/index.ts";
import { twoFigures } from "../two-figures/index.ts";

export type CostByMatterInput = {
  readonly atStake: CostsAtStake;
  /** Worst first; a cost belongs to the first that holds one of the lines that ask for it. */
  readonly matters: readonly Pick<Matter, "kind" | "zone" | "lines">[];
  /** What the table is called. */
  readonly table: string;
  readonly draws: number;
  readonly seed: number;
};

const expected = (cost: CostAtStake): number => cost.probability * betaPertMean(cost);

const matterOfLine = (matters: CostByMatterInput["matters"]): ReadonlyMap<number, number> => {
  const of = new Map<number, number>();
  for (const [place, { lines }] of matters.entries()) for (const line of lines) of.set(line, place);
  return of;
};

/**
 * What putting right may cost: the range of the total, and what each matter is likely to add, dearest first, all to two digits.
 * What no matter holds is in the total and in no part.
 *
 * @example costByMatter({ atStake, matters, table: "Own", draws: 10_000, seed: 1 }).byMatter[0] // { matter: "engine-wear", likely: 620000 }
 */
export const costByMatter = ({ atStake, matters, table, draws, seed }: CostByMatterInput) => {
  const ofLine = matterOfLine(matters);
  const sums = new Map<number, number>();
  for (const cost of atStake.costs) {
    const place = Math.min(...cost.entries.map((entry) => ofLine.get(entry) ?? Infinity));
    if (Number.isFinite(place)) sums.set(place, (sums.get(place) ?? 0) + expected(cost));
  }
  const { p10, p50, p90 } = costSum(atStake.costs, { correlation: atStake.correlation, draws, seed });
  const byMatter = matters.flatMap((matter, place) => {
    const sum = sums.get(place);
    return sum === undefined ? [] : [{ matter: matterId(matter), likely: twoFigures(sum) }];
  });
  return {
    currency: atStake.currency,
    table,
    total: { low: twoFigures(p10), likely: twoFigures(p50), high: twoFigures(p90) },
    byMatter: byMatter.sort((a, b) => b.likely - a.likely),
    unset: [...new Set(atStake.unset.map(({ row }) => row))],
  } satisfies AnswerCost["cost"];
};
