import type { FirmLimits, LimitUse, RuleResult } from "@evenhand/shared/cross-check";
import type { Estimate } from "@evenhand/measurement/estimate";
import { rectangular } from "@evenhand/measurement/type-b";
import { derived, productOf, spanOf } from "../interval/index.ts";
import type { Span } from "../interval/index.ts";
import { judgeRatio, ratiosWithin } from "../ratio-zone/index.ts";
import { figure } from "../rule-result/index.ts";
import { roadRatioRecord } from "./record.ts";

/** How engine and gearbox were joined: a clutch or a locked converter does not slip. */
export type Coupling = "clutch" | "locked" | "unlocked" | "unknown";

export type RoadReading = {
  readonly engineSpeed: Estimate;
  /** By satellite, mph. */
  readonly roadSpeed: Estimate;
  /** Rolling circumference, in. */
  readonly circumference: Estimate;
  /** Ratio of the gear engaged: 1 in direct drive. */
  readonly gear: number;
  readonly coupling: Coupling;
};

export type RoadRatioInput = Omit<RoadReading, "gear"> & {
  readonly gear?: number;
  readonly claimed?: number;
  readonly makers?: readonly number[];
};

/** rpm × in per turn of the wheel, over mph: 63,360 in a mile, 60 minutes an hour. */
const INCHES_A_MINUTE_PER_MPH = 63_360 / 60;

const slipOf = (coupling: Coupling, low: LimitUse, high: LimitUse): Span => {
  if (coupling === "unlocked") return { low: low.value, high: high.value };
  return { low: 0, high: coupling === "unknown" ? high.value : 0 };
};

/** Ratio as it would be without slip. */
const unslipped = ({ engineSpeed, roadSpeed, circumference, gear }: RoadReading): Estimate =>
  productOf(1 / (INCHES_A_MINUTE_PER_MPH * gear), [
    [engineSpeed, 1],
    [circumference, 1],
    [roadSpeed, -1],
  ]);

/** Every ratio a reading on the road allows: the 99 % interval at the least slip and at the greatest. */
const roadSpan = (reading: RoadReading, slip: Span): Span => {
  const { low, high } = spanOf(unslipped(reading));
  return { low: low * (1 - slip.high), high: high * (1 - slip.low) };
};

/**
 * The ratio from the road as an estimate: slip halfway, its range taken as equally likely throughout. For setting
 * it beside the other ways; {@link roadRatio} keeps the range as one.
 *
 * @throws {RangeError} never; `roadSpeed` must not be 0
 */
export const roadEstimate = (reading: RoadReading, firm: FirmLimits = {}): Estimate => {
  const slip = slipOf(
    reading.coupling,
    roadRatioRecord.limit("ratio.slip-low", firm),
    roadRatioRecord.limit("ratio.slip-high", firm),
  );
  const whole = unslipped(reading);
  const held = 1 - (slip.low + slip.high) / 2;
  const range = rectangular((whole.value * (slip.high - slip.low)) / 2);
  return derived(whole.value * held, [{ ...whole, sensitivity: held }, { standardUncertainty: range }]);
};

/**
 * Axle ratio from engine speed and road speed: rpm × (1 − slip) × circumference / (speed × gear), converter slip
 * kept as a range. What cannot be told from the maker's neighboring ratios stays undecided.
 *
 * Source: arithmetic on the figures read; the range of slip is common practice, no source.
 *
 * @example
 * roadRatio({
 *   engineSpeed: exactly(2200), roadSpeed: exactly(49.13), circumference: exactly(28 * Math.PI),
 *   gear: 1, coupling: "clutch", claimed: 3.23, makers: [3.23, 3.55, 3.73],
 * }).reason // "other-ratio"
 */
export const roadRatio = (input: RoadRatioInput, firm: FirmLimits = {}): RuleResult => {
  const { engineSpeed, roadSpeed, circumference, gear, coupling, claimed, makers } = input;
  const [slipLow, slipHigh] = [
    roadRatioRecord.limit("ratio.slip-low", firm),
    roadRatioRecord.limit("ratio.slip-high", firm),
  ];
  const [slowest, spacing] = [
    roadRatioRecord.limit("ratio.slowest", firm),
    roadRatioRecord.limit("ratio.spacing-share", firm),
  ];
  const figures = {
    engineSpeed: figure(engineSpeed.value, "rpm", engineSpeed.standardUncertainty),
    roadSpeed: figure(roadSpeed.value, "mph", roadSpeed.standardUncertainty),
    circumference: figure(circumference.value, "in", circumference.standardUncertainty),
  };
  if (roadSpeed.value < slowest.value)
    return roadRatioRecord.answer("too-slow", { figures, limits: [slowest] });
  if (gear === undefined) return roadRatioRecord.answer("gear-unknown", { figures });
  const span = roadSpan({ ...input, gear }, slipOf(coupling, slipLow, slipHigh));
  const limits = [...(coupling === "unlocked" || coupling === "unknown" ? [slipLow, slipHigh] : []), spacing];
  const detail = {
    figures,
    limits,
    ranges: { ratio: { ...span, unit: "1" } },
    alternatives: ratiosWithin(span, makers),
  };
  if (claimed === undefined) return roadRatioRecord.answer("no-claim", detail);
  return roadRatioRecord.answer(judgeRatio(span, { claimed, makers }, spacing.value), {
    ...detail,
    figures: { ...figures, claimed: figure(claimed) },
  });
};
