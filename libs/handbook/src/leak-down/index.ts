import { listed } from "@evenhand/message/listed";
import type { FirmLimits, RuleResult } from "@evenhand/shared/cross-check";
import type { Estimate } from "@evenhand/measurement/estimate";
import { median } from "@evenhand/measurement/median";
import { judge } from "../interval/index.ts";
import { figure } from "../rule-result/index.ts";
import { leakDownRecord } from "./record.ts";
import { resultMessages } from "../result-words/index.ts";

/** Where the air of a leak-down test comes out. */
export type Escape = "intake" | "exhaust" | "crankcase" | "coolant" | "neighbor";

export type CylinderLeak = {
  readonly cylinder: number;
  /** % */
  readonly leak: Estimate;
  readonly escapes?: readonly Escape[];
};

export type LeakDownInput = {
  readonly cylinders: readonly CylinderLeak[];
  /** psi; the bands are for 100. */
  readonly testPressure?: number;
};

/** With fewer cylinders than this a median says nothing of the engine. */
const ENOUGH_FOR_MEDIAN = 4;

/** A gauge set within this of the bands' pressure counts as set to it, psi. */
const PRESSURE_SLACK_PSI = 5;

/** Whether a test was made at the pressure the bands are for. */
export const isBandsPressure = (testPressure: number | undefined, firm: FirmLimits = {}): boolean =>
  testPressure !== undefined &&
  Math.abs(testPressure - leakDownRecord.limit("leak-down.pressure", firm).value) <= PRESSURE_SLACK_PSI;

/**
 * Which cylinders certainly leak, certainly do not, or neither, at the bands' pressure: for setting beside
 * compression.
 */
export const leakStates = (
  { cylinders }: LeakDownInput,
  firm: FirmLimits = {},
): Map<number, "leaks" | "tight" | "unclear"> => {
  const [good, poor] = [
    leakDownRecord.limit("leak-down.good", firm).value,
    leakDownRecord.limit("leak-down.poor", firm).value,
  ];
  const stateOf = ({ leak }: CylinderLeak) => {
    if (judge(leak, { high: good }, cylinders.length) === "holds") return "tight";
    return judge(leak, { high: poor }, cylinders.length) === "breaks" ? "leaks" : "unclear";
  };
  return new Map(cylinders.map((cylinder) => [cylinder.cylinder, stateOf(cylinder)]));
};

const reasonOf = (cylinders: readonly CylinderLeak[], good: number, poor: number) => {
  const against = (high: number) => cylinders.map(({ leak }) => judge(leak, { high }, cylinders.length));
  const [small, large] = [against(good), against(poor)];
  if (large.includes("breaks")) return "poor";
  if (large.includes("cannot-tell")) return "range-covers";
  if (small.includes("breaks")) return "worn";
  return small.includes("cannot-tell") ? "good-or-worn" : "good";
};

/**
 * Pattern of leak-down: the leakiest cylinder against the bands; the median of four cylinders or more stands beside it. The bands are for
 * 100 psi; at another pressure nothing is said.
 *
 * Source: common practice, no source.
 *
 * @example
 * leakDown({ cylinders: [{ cylinder: 1, leak: exactly(28), escapes: ["exhaust"] }], testPressure: 100 }).reason // "poor"
 */
export const leakDown = ({ cylinders, testPressure }: LeakDownInput, firm: FirmLimits = {}): RuleResult => {
  const [good, poor, pressure] = [
    leakDownRecord.limit("leak-down.good", firm),
    leakDownRecord.limit("leak-down.poor", firm),
    leakDownRecord.limit("leak-down.pressure", firm),
  ];
  const worst = cylinders.toSorted((a, b) => b.leak.value - a.leak.value)[0];
  if (worst === undefined) return leakDownRecord.answer("too-few", { limits: [good, poor, pressure] });
  const detail = {
    figures: {
      worst: figure(worst.leak.value, "%", worst.leak.standardUncertainty),
      worstCylinder: figure(worst.cylinder),
      ...(cylinders.length < ENOUGH_FOR_MEDIAN
        ? {}
        : { median: figure(median(cylinders.map(({ leak }) => leak.value)), "%") }),
      ...(testPressure === undefined ? {} : { testPressure: figure(testPressure, "psi") }),
    },
    words: { escape: worst.escapes === undefined ? resultMessages.say("not-noted") : listed(worst.escapes) },
    limits: [good, poor, pressure],
  };
  if (!isBandsPressure(testPressure, firm)) {
    return leakDownRecord.answer("other-pressure", detail);
  }
  return leakDownRecord.answer(reasonOf(cylinders, good.value, poor.value), detail);
};
