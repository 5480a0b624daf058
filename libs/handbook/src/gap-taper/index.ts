import type { FirmLimits, RuleResult, Verdict } from "@evenhand/shared/cross-check";
import { difference } from "@evenhand/measurement/difference";
import type { Estimate } from "@evenhand/measurement/estimate";
import { judge } from "../interval/index.ts";
import { figure } from "../rule-result/index.ts";
import { gapTaperRecord } from "./record.ts";
import { resultMessages, valueOf } from "../result-words/index.ts";

/** One gap at its two ends, mm. */
export type GapEnds = { readonly top: Estimate; readonly bottom: Estimate };
export type Gap = { readonly gap: string; readonly left?: GapEnds; readonly right?: GapEnds };
export type GapTaperInput = { readonly gaps: readonly Gap[] };

type Measure = { readonly of: "taper" | "sides"; readonly name: string; readonly difference: Estimate };

const measuresOf = ({ gap, left, right }: Gap): Measure[] => {
  const tapers = Object.entries({ left, right }).flatMap(([side, ends]): Measure[] =>
    ends === undefined
      ? []
      : [{ of: "taper", name: `${gap} ${side}`, difference: difference(ends.top, ends.bottom) }],
  );
  if (left === undefined || right === undefined) return tapers;
  return [
    ...tapers,
    { of: "sides", name: resultMessages.say("at-top", { gap }), difference: difference(left.top, right.top) },
    {
      of: "sides",
      name: resultMessages.say("at-bottom", { gap }),
      difference: difference(left.bottom, right.bottom),
    },
  ];
};

type Judged = Measure & { readonly verdict: Verdict };

const reasonOf = (judged: readonly Judged[]) => {
  const broken = judged.filter(({ verdict }) => verdict === "breaks");
  if (broken.length > 0) return broken.some(({ of }) => of === "taper") ? "tapers" : "sides-differ";
  return judged.every(({ verdict }) => verdict === "holds") ? "even" : "range-covers";
};

/**
 * Taper of gaps and left against right, all judged together. A hint only: hinges wear and doors are hung anew.
 *
 * Source: common practice, no source.
 *
 * @returns the gaps out of the limit as alternatives, the farthest out first
 */
export const gapTaper = ({ gaps }: GapTaperInput, firm: FirmLimits = {}): RuleResult => {
  const limit = gapTaperRecord.limit("gap.taper", firm);
  const measures = gaps
    .flatMap(measuresOf)
    .toSorted((a, b) => Math.abs(b.difference.value) - Math.abs(a.difference.value));
  const [farthest] = measures;
  if (farthest === undefined) return gapTaperRecord.answer("too-few", { limits: [limit] });
  const zone = { low: -limit.value, high: limit.value };
  const judged = measures.map((measure) => ({
    ...measure,
    verdict: judge(measure.difference, zone, measures.length),
  }));
  const broken = judged.filter(({ verdict }) => verdict === "breaks");
  const { value, standardUncertainty } = farthest.difference;
  return gapTaperRecord.answer(reasonOf(judged), {
    limits: [limit],
    figures: { difference: figure(Math.abs(value), "mm", standardUncertainty) },
    words: { gap: farthest.name },
    alternatives: broken.map(({ name, difference: out }) =>
      valueOf(name, resultMessages.say("millimeters", { length: Math.abs(out.value).toFixed(1) })),
    ),
  });
};
