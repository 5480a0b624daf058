import type { Verdict } from "@evenhand/shared/cross-check";
import { combineUncertainty } from "@evenhand/measurement/combine-uncertainty";
import type { Component } from "@evenhand/measurement/combine-uncertainty";
import type { Estimate } from "@evenhand/measurement/estimate";
import { expandedUncertainty } from "@evenhand/measurement/expanded-uncertainty";
import { welchSatterthwaite } from "@evenhand/measurement/welch-satterthwaite";

/** What a value may be; a missing end is open. Both ends belong to the zone: equality passes. */
export type Zone = { readonly low?: number; readonly high?: number };

/** A stretch of values, both ends included. */
export type Span = { readonly low: number; readonly high: number };

/**
 * The share of two-sided intervals that hold the true value in the handbook: 99 %, a half per cent left out
 * on each side. A claim that is exactly true is then outside in no more than one reading in a hundred, in
 * whatever place of its zone the truth lies.
 */
export const HANDBOOK_COVERAGE = 0.99;

/** The coverage of each of so many intervals, taken as the next power of two. */
const coverageOf = (among: number): number => 1 - (1 - HANDBOOK_COVERAGE) / 2 ** Math.ceil(Math.log2(among));

/** As many as are ever judged together; logarithm and power take longer than all the rest. */
const COVERAGES = Array.from({ length: 256 }, (_, among) => coverageOf(among));
const coverageAmong = (among: number): number => COVERAGES[among] ?? coverageOf(among);

/**
 * The 99 % interval of an estimate, by its own degrees of freedom.
 *
 * @param among how many intervals are judged together; each is widened (Bonferroni) so that the 99 % hold for
 *   all of them at once. Taken as the next power of two, so that few coverages are ever asked for
 * @example spanOf({ value: 10, standardUncertainty: 1, degreesOfFreedom: Infinity }) // { low: 7.424…, high: 12.575… }
 */
export const spanOf = (estimate: Estimate, among = 1): Span => {
  const half = expandedUncertainty(estimate, coverageAmong(among));
  return { low: estimate.value - half, high: estimate.value + half };
};

/**
 * Whether a stretch of possible values lies in a zone (holds), wholly outside it (breaks), or neither. Widening
 * the stretch can only move the answer to `cannot-tell`.
 *
 * @example judgeSpan({ low: 5, high: 6 }, { high: 6 }) // "holds"
 */
export const judgeSpan = (span: Span, zone: Zone): Verdict => {
  const low = zone.low ?? Number.NEGATIVE_INFINITY;
  const high = zone.high ?? Number.POSITIVE_INFINITY;
  if (span.low >= low && span.high <= high) return "holds";
  return span.high < low || span.low > high ? "breaks" : "cannot-tell";
};

/**
 * What several verdicts come to: one that breaks breaks all, and one that cannot be told leaves all undecided.
 *
 * @example worstVerdict(["holds", "cannot-tell"]) // "cannot-tell"
 */
export const worstVerdict = (verdicts: readonly Verdict[]): Verdict => {
  if (verdicts.includes("breaks")) return "breaks";
  return verdicts.includes("cannot-tell") ? "cannot-tell" : "holds";
};

/**
 * The same for an estimate and its 99 % interval.
 *
 * @example judge({ value: 2, standardUncertainty: 0, degreesOfFreedom: Infinity }, { low: 2 }) // "holds"
 */
export const judge = (estimate: Estimate, zone: Zone, among = 1): Verdict =>
  judgeSpan(spanOf(estimate, among), zone);

/**
 * A quantity worked out from others, with its uncertainty by first order (JCGM 100:2008, 5.1.2).
 *
 * @param components what it was worked out from, each with its sensitivity
 */
export const derived = (value: number, components: readonly Component[]): Estimate => ({
  value,
  standardUncertainty: combineUncertainty(components),
  degreesOfFreedom: welchSatterthwaite(components),
});

/**
 * A product of powers of independent quantities; the shares of uncertainty add in quadrature. Values must not be 0.
 *
 * @example power product of speed and time: productOf(1, [[speed, 1], [time, 1]])
 */
export const productOf = (factor: number, terms: readonly (readonly [Estimate, number])[]): Estimate => {
  const value = terms.reduce((product, [term, exponent]) => product * term.value ** exponent, factor);
  return derived(
    value,
    terms.map(([term, exponent]) => ({ ...term, sensitivity: (exponent * value) / term.value })),
  );
};

/** A number known without uncertainty. */
export const exactly = (value: number): Estimate => ({
  value,
  standardUncertainty: 0,
  degreesOfFreedom: Number.POSITIVE_INFINITY,
});
