import type { AnswerOf } from "@evenhand/shared/answer";
import type { ReadingSpec } from "@evenhand/shared/sheet";
import { compareReading } from "@evenhand/comparison/compare-reading";
import { deltaOf } from "@evenhand/comparison/delta";
import { mean } from "@evenhand/measurement/type-a";

export type Verdict = "agree" | "consistent" | "doubtful" | "differ";

/** A way to tell whether two people's readings say the same. */
export type Judge = {
  readonly name: string;
  readonly judge: (spec: ReadingSpec, a: AnswerOf<"reading">, b: AnswerOf<"reading">) => Verdict;
};

const ordinary = { id: "ordinary", name: "the item's ordinary instrument" };
const sameDay = () => ({ differentDays: false, later: null });

/** The engine, limits aside. */
export const engine: Judge = {
  name: "this engine",
  judge: (spec, a, b) => {
    const { outcome } = compareReading({
      a,
      b,
      item: {},
      spec,
      contextA: {},
      contextB: {},
      instrumentA: ordinary,
      instrumentB: ordinary,
      shared: false,
      drifts: false,
      useAllowed: () => 0,
      times: sameDay,
    });
    if (outcome === "agree" || outcome === "consistent" || outcome === "doubtful" || outcome === "differ")
      return outcome;
    throw new TypeError(`two readings came out ${outcome}`);
  },
};

const meanOf = ({ values }: AnswerOf<"reading">): number => mean(values.map(({ value }) => value));

const written = (answer: AnswerOf<"reading">, step: number): number =>
  step === 0 ? meanOf(answer) : Math.round(meanOf(answer) / step);

/** Cell by cell, as two columns of a spreadsheet: the figure as its instrument shows it, equal or not. */
export const cellEquality: Judge = {
  name: "equal cells",
  judge: ({ instrument }, a, b) =>
    written(a, instrument.resolution) === written(b, instrument.resolution) ? "agree" : "differ",
};

/** One fixed tolerance a column, and the best there is: the difference that matters itself. */
export const fixedTolerance: Judge = {
  name: "fixed tolerance",
  judge: ({ delta, typical }, a, b) => {
    const tolerance = deltaOf(delta, typical ?? 0, typical ?? 0);
    return Math.abs(meanOf(a) - meanOf(b)) <= tolerance ? "agree" : "differ";
  },
};
