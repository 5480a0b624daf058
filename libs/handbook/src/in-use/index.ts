import type { LimitUse, RuleResult } from "@evenhand/shared/cross-check";
import { callConformity, probabilityOfConformity } from "@evenhand/measurement/conformity";
import type { Limits } from "@evenhand/measurement/conformity";
import type { Estimate } from "@evenhand/measurement/estimate";
import { judge } from "../interval/index.ts";
import { limitUse } from "../limits/index.ts";
import { figure, ruleResult } from "../rule-result/index.ts";

/** The call as the regulation has it, on the figure as read, and the probability beside it. */
const callsOf = (reading: Estimate, limits: Limits) => {
  const { lower = Number.NEGATIVE_INFINITY, upper = Number.POSITIVE_INFINITY } = limits;
  const probability = probabilityOfConformity(reading, limits);
  return {
    words: {
      plain: reading.value >= lower && reading.value <= upper ? "passes" : "fails",
      call: callConformity(probability),
    },
    probability: figure(probability),
  };
};

const measured = ({ value, standardUncertainty }: Estimate, unit: string) =>
  figure(value, unit, standardUncertainty);

const atLeast = (rule: "in-use-tread" | "in-use-lining", reading: Estimate, limit: LimitUse): RuleResult => {
  const { words, probability } = callsOf(reading, { lower: limit.value });
  const verdict = judge(reading, { low: limit.value });
  const reason = ({ holds: "meets", breaks: "under-limit", "cannot-tell": "range-covers" } as const)[verdict];
  const figures = { reading: measured(reading, limit.unit), probability };
  return ruleResult(rule, reason, { figures, words, limits: [limit] });
};

/**
 * Tread depth in use: not less than 2/32 in anywhere; equality passes. Judge the shallowest reading.
 *
 * Source: 49 CFR 570.9(a), from memory for passenger cars. Local inspection law decides.
 *
 * @param reading 1/32 in
 * @example inUseTread(exactly(2)).reason // "meets"
 */
export const inUseTread = (reading: Estimate): RuleResult =>
  atLeast("in-use-tread", reading, limitUse("in-use.tread"));

/**
 * Brake lining in use: not less than 1/32 in, over the fastener where riveted, over the shoe where bonded; equality
 * passes. Where the fixing is not known it is not known what was measured.
 *
 * Source: 49 CFR 570.5(e), from memory; the riveted figure read in 570.59(c). Local inspection law decides.
 *
 * @param reading in
 * @example inUseLining(exactly(0.03), "riveted").reason // "under-limit"
 */
export const inUseLining = (reading: Estimate, fixing: "riveted" | "bonded" | "unknown"): RuleResult =>
  fixing === "unknown"
    ? ruleResult("in-use-lining", "fixing-unknown", { figures: { reading: measured(reading, "in") } })
    : atLeast("in-use-lining", reading, limitUse(`in-use.lining-${fixing}`));

const ROWS = [
  { diameter: 16, limit: "in-use.free-play-16" },
  { diameter: 18, limit: "in-use.free-play-18" },
  { diameter: 20, limit: "in-use.free-play-20" },
  { diameter: 22, limit: "in-use.free-play-22" },
] as const;

/**
 * The figure of the row at or before the wheel's diameter, and of the row at or after it: the same one where the
 * table has the wheel, and no second one where it ends. The least figure where the diameter is not known.
 */
const freePlayLimits = (diameter?: number) => {
  const strict = ROWS.findLast((row) => diameter !== undefined && row.diameter <= diameter) ?? ROWS[0];
  const lax = ROWS.find((row) => diameter !== undefined && row.diameter >= diameter);
  return { strict: limitUse(strict.limit), lax: lax === undefined ? undefined : limitUse(lax.limit) };
};

/**
 * Steering free play in use, by the diameter of the steering wheel. The table has rows for 16 in or less, 18, 20
 * and 22 in and no rule between: there the stricter row passes, the laxer fails, and nothing else is said.
 *
 * Source: 49 CFR 570.7(a) table 1. Local inspection law decides.
 *
 * @param play at the rim, in
 * @param diameter of the steering wheel, in
 * @example inUseFreePlay(exactly(2.1), 17).reason // "between-rows"
 */
export const inUseFreePlay = (play: Estimate, diameter?: number): RuleResult => {
  const { strict, lax } = freePlayLimits(diameter);
  const { words, probability } = callsOf(play, { upper: strict.value });
  const detail = {
    figures: {
      reading: measured(play, "in"),
      probability,
      ...(diameter === undefined ? {} : { wheelDiameter: figure(diameter, "in") }),
    },
    words,
    limits: lax === undefined || lax.id === strict.id ? [strict] : [strict, lax],
  };
  if (judge(play, { high: strict.value }) === "holds") return ruleResult("in-use-free-play", "meets", detail);
  if (lax !== undefined && judge(play, { high: lax.value }) === "breaks") {
    return ruleResult("in-use-free-play", "over-limit", detail);
  }
  if (diameter === undefined) return ruleResult("in-use-free-play", "wheel-unknown", detail);
  return ruleResult("in-use-free-play", lax?.id === strict.id ? "range-covers" : "between-rows", detail);
};

/**
 * Toe in use: toe-in or toe-out not more than 1.5 times the maker's value; equality passes.
 *
 * Source: 49 CFR 570.7(d). Local inspection law decides.
 *
 * @param toe in any unit, toe-out negative
 * @param makers the maker's value in the same unit; a value of 0 allows no multiple
 * @example inUseToe(exactly(-0.3), 0.125).reason // "over-limit"
 */
export const inUseToe = (toe: Estimate, makers?: number, unit = "in"): RuleResult => {
  const share = limitUse("in-use.toe-share");
  const figures = { reading: measured(toe, unit) };
  if (makers === undefined || makers === 0)
    return ruleResult("in-use-toe", "makers-value-unknown", { figures, limits: [share] });
  const most = share.value * Math.abs(makers);
  const { words, probability } = callsOf(toe, { lower: -most, upper: most });
  const reason = ({ holds: "meets", breaks: "over-limit", "cannot-tell": "range-covers" } as const)[
    judge(toe, { low: -most, high: most })
  ];
  return ruleResult("in-use-toe", reason, {
    figures: { ...figures, probability, makers: figure(makers, unit), most: figure(most, unit) },
    words,
    limits: [share],
  });
};

/**
 * Wheel runout in use, lateral or radial: not more than 1/8 in; equality passes.
 *
 * Source: 49 CFR 570.10(b). Local inspection law decides.
 *
 * @param runout in
 * @example inUseRunout(exactly(0.125)).reason // "meets"
 */
export const inUseRunout = (runout: Estimate): RuleResult => {
  const limit = limitUse("in-use.runout");
  const { words, probability } = callsOf(runout, { upper: limit.value });
  const reason = ({ holds: "meets", breaks: "over-limit", "cannot-tell": "range-covers" } as const)[
    judge(runout, { high: limit.value })
  ];
  return ruleResult("in-use-runout", reason, {
    figures: { reading: measured(runout, "in"), probability },
    words,
    limits: [limit],
  });
};
