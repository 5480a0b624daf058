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

/** A difference of two widths, and between which: the ends of one side, or the two sides at one end. */
type Measure = {
  readonly gap: string;
  readonly at: "left" | "right" | "top" | "bottom";
  readonly difference: Estimate;
};

const addTaper = (
  measures: Measure[],
  gap: string,
  at: "left" | "right",
  ends: GapEnds | undefined,
): void => {
  if (ends !== undefined) measures.push({ gap, at, difference: difference(ends.top, ends.bottom) });
};

const measuresOf = (gaps: readonly Gap[]): Measure[] => {
  const measures: Measure[] = [];
  for (const { gap, left, right } of gaps) {
    addTaper(measures, gap, "left", left);
    addTaper(measures, gap, "right", right);
    if (left === undefined || right === undefined) continue;
    measures.push({ gap, at: "top", difference: difference(left.top, right.top) });
    measures.push({ gap, at: "bottom", difference: difference(left.bottom, right.bottom) });
  }
  return measures;
};

const isTaper = ({ at }: Measure): boolean => at === "left" || at === "right";

const nameOf = ({ gap, at }: Measure): string => {
  if (at === "left" || at === "right") return `${gap} ${at}`;
  return resultMessages.say(at === "top" ? "at-top" : "at-bottom", { gap });
};

const reasonOf = (verdicts: readonly Verdict[], broken: readonly Measure[]) => {
  if (broken.length > 0) return broken.some(isTaper) ? "tapers" : "sides-differ";
  return verdicts.every((verdict) => verdict === "holds") ? "even" : "range-covers";
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
  const measures = measuresOf(gaps).sort(
    (a, b) => Math.abs(b.difference.value) - Math.abs(a.difference.value),
  );
  const [farthest] = measures;
  if (farthest === undefined) return gapTaperRecord.answer("too-few", { limits: [limit] });
  const zone = { low: -limit.value, high: limit.value };
  const verdicts = measures.map((measure) => judge(measure.difference, zone, measures.length));
  const broken = measures.filter((_, index) => verdicts[index] === "breaks");
  const { value, standardUncertainty } = farthest.difference;
  return gapTaperRecord.answer(reasonOf(verdicts, broken), {
    limits: [limit],
    figures: { difference: figure(Math.abs(value), "mm", standardUncertainty) },
    words: { gap: nameOf(farthest) },
    alternatives: broken.map((measure) => {
      const length = Math.abs(measure.difference.value).toFixed(1);
      return valueOf(nameOf(measure), resultMessages.say("millimeters", { length }));
    }),
  });
};
