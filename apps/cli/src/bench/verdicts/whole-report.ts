import type { Comparison, Statistic } from "@evenhand/shared/comparison";
import type { Pair } from "./people.ts";
import { CAR } from "./assumptions.ts";
import { eachCar, studied } from "./study.ts";
import type { Plant } from "./study.ts";
import type { Known } from "./truth.ts";

const WHAT = ["step", "shift", "coefficient"] as const;
export type WholeFigure = (typeof WHAT)[number];

const statistics = ({ bias, agreement }: Comparison): Readonly<Record<WholeFigure, Statistic>> => ({
  step: bias.meanStep,
  shift: bias.shift,
  coefficient: agreement.gwetAC2,
});

const isWeighed = ({ item }: Pick<Known, "item">): boolean =>
  item.answer === "grade" || item.answer === "reading";

/** Cars of one condition, so that there is one figure for all of them to hold. */
const likeConditioned: Plant = (car, draws) => ({
  car: {
    ...car,
    known: car.known.map((one) =>
      one.truth.kind === "grade"
        ? { ...one, truth: { kind: "grade", deserves: CONDITION + CAR.gradeSpread * draws.normal() } }
        : one,
    ),
  },
  claims: new Map(),
});
const CONDITION = (CAR.condition[0] + CAR.condition[1]) / 2;

type Seen = { readonly estimate: number; readonly low: number; readonly high: number };

/** How often the 95 % intervals of whole reports hold what the same two people come to over all of them. */
export const coverageOfWhole = (pair: Pair, cars: number): Readonly<Record<WholeFigure, number>> => {
  const seen: Record<WholeFigure, Seen[]> = { step: [], shift: [], coefficient: [] };
  eachCar(
    cars,
    (number) => studied(pair, number, likeConditioned, isWeighed),
    ({ comparison }) => {
      const all = statistics(comparison);
      for (const what of WHAT) {
        const statistic = all[what];
        if (statistic.state === "known") seen[what].push(statistic);
      }
    },
  );
  const covered = (what: WholeFigure): number => {
    const reports = seen[what];
    const truth = reports.reduce((sum, { estimate }) => sum + estimate, 0) / reports.length;
    return reports.filter(({ low, high }) => low <= truth && truth <= high).length / reports.length;
  };
  return { step: covered("step"), shift: covered("shift"), coefficient: covered("coefficient") };
};
