import { costSum } from "@evenhand/decision/cost-sum";
import type { UncertainCost } from "@evenhand/decision/cost-sum";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import { benchRow } from "./row.ts";
import type { BenchRow } from "./row.ts";

const items = 60;
const draws = 10_000;
const seed = 20_260_521;

const costs: readonly UncertainCost[] = Array.from({ length: items }, (_, index) => ({
  low: 100 + index,
  likely: 180 + 3 * index,
  high: 500 + 11 * index,
  probability: 0.1 + (index % 9) / 10,
  group: `section-${index % 6}`,
}));

/** The plain loop: as many normal scores from the same generator, added up in a typed array and sorted. */
const plainLoop = (): number => {
  const generator = xoroshiro128plus(seed);
  const totals = new Float64Array(draws);
  for (let item = 0; item < items; item += 1) {
    for (let draw = 0; draw < draws; draw += 2) {
      const radius = Math.sqrt(-2 * Math.log(((generator.next() >>> 0) + 0.5) / 2 ** 32));
      const angle = (2 * Math.PI * (generator.next() >>> 0)) / 2 ** 32;
      totals[draw] = totals[draw]! + radius * Math.cos(angle);
      totals[draw + 1] = totals[draw + 1]! + radius * Math.sin(angle);
    }
  }
  return totals.sort()[draws / 2]!;
};

const sumOfCosts = (): unknown => costSum(costs, { correlation: 0, draws, seed });

const timeOf = (work: () => unknown): number => {
  const start = performance.now();
  work();
  return performance.now() - start;
};

const runs = 120;

/** Both in turn, so that a busy moment falls on both; the fastest of each. */
const ratio = (work: () => unknown, against: () => unknown): number => {
  let [ofWork, ofAgainst] = [Infinity, Infinity];
  for (let run = 0; run < runs; run += 1) {
    ofAgainst = Math.min(ofAgainst, timeOf(against));
    ofWork = Math.min(ofWork, timeOf(work));
  }
  return ofWork / ofAgainst;
};

/** Cost sum of 60 uncertain items, 10,000 draws, without correlation, against a plain loop that draws the same numbers. */
export const rows = (): BenchRow[] => [
  benchRow({
    work: "cost sum, 60 uncertain items, 10,000 draws",
    against: "a plain typed-array loop drawing the same numbers",
    value: ratio(sumOfCosts, plainLoop),
    goal: 1.3,
    better: "lower",
  }),
];
