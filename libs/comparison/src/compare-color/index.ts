import type { AnswerOf } from "@evenhand/shared/answer";
import type { Item } from "@evenhand/shared/sheet";
import { colorDifference } from "@evenhand/handbook/color-difference";
import type { Lab } from "@evenhand/handbook/color-difference";
import { classifyInterval } from "@evenhand/measurement/equivalence";
import { combineUncertainty } from "@evenhand/measurement/combine-uncertainty";
import type { Component } from "@evenhand/measurement/combine-uncertainty";
import { moderatedVariance } from "@evenhand/measurement/moderated-variance";
import { coverageFactor } from "@evenhand/measurement/student-factor";
import { mean } from "@evenhand/measurement/type-a";
import { welchSatterthwaite } from "@evenhand/measurement/welch-satterthwaite";
import { inOneShape } from "../judgment/index.ts";
import type { Judgment } from "../judgment/index.ts";
import type { Reason } from "../reason/index.ts";
import { standingOf } from "../standing/index.ts";

type Color = AnswerOf<"color">;
type ColorSpec = NonNullable<Item["color"]>;

const meanColor = ({ values }: Color): Lab => ({
  L: mean(values.map((value) => value.L)),
  a: mean(values.map((value) => value.a)),
  b: mean(values.map((value) => value.b)),
});

/** Uncertainty of a mean color: the sheet's scatter, drawn up by the scatter seen where that is larger. */
const uncertaintyOfMean = (answer: Color, center: Lab, { repeatability }: ColorSpec): Component => {
  const count = answer.values.length;
  const squares = answer.values.map((value) => colorDifference(value, center) ** 2);
  const seen = count < 2 ? 0 : Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / (count - 1));
  const { standardDeviation, degreesOfFreedom } = moderatedVariance(
    { standardDeviation: seen, degreesOfFreedom: count - 1 },
    { standardDeviation: repeatability, degreesOfFreedom: Number.POSITIVE_INFINITY },
  );
  return { standardUncertainty: standardDeviation / Math.sqrt(count), degreesOfFreedom };
};

const incomparable = (reason: Reason): Judgment =>
  inOneShape({
    outcome: "incomparable",
    reason,
    direction: "neither",
    standing: standingOf("incomparable"),
  });

const SAME = inOneShape({
  outcome: "agree",
  reason: "same-color",
  direction: "neither",
  standing: standingOf("agree"),
});

/** Equal answers agree before anything else is asked of them. */
const isEqual = (a: Color, b: Color): boolean =>
  a.geometry === b.geometry &&
  a.metallic === b.metallic &&
  a.values.length === b.values.length &&
  a.values.every((value, index) => {
    const other = b.values[index];
    return value.L === other?.L && value.a === other.a && value.b === other.b;
  });

const REASONS = {
  agree: "color-within-delta",
  consistent: "color-not-settled",
  doubtful: "color-beyond-chance",
  differ: "color-beyond-delta",
} as const;

/**
 * Compares two colors by ΔE₀₀ of their means against δ, with the scatter of color readings (the sheet's, moderated by
 * the one seen); equal answers agree. A metallic measured
 * from one angle, or by different geometries, cannot be set against the other.
 *
 * @example compareColor(red, red, { delta: 2, repeatability: 0.3, source }).outcome // "agree"
 */
export const compareColor = (a: Color, b: Color, spec: ColorSpec): Judgment => {
  if (isEqual(a, b)) return SAME;
  const oneAngle = a.geometry !== "multi-angle" || b.geometry !== "multi-angle";
  if ((a.metallic || b.metallic) && oneAngle) return incomparable("metallic-from-one-angle");
  if (a.geometry !== b.geometry) return incomparable("other-geometry");
  const centerA = meanColor(a);
  const centerB = meanColor(b);
  const deltaE = colorDifference(centerA, centerB);
  const parts = [uncertaintyOfMean(a, centerA, spec), uncertaintyOfMean(b, centerB, spec)];
  const expandedUncertainty = coverageFactor(welchSatterthwaite(parts)) * combineUncertainty(parts);
  const outcome = classifyInterval(deltaE, expandedUncertainty, spec.delta);
  return {
    outcome,
    reason: REASONS[outcome],
    direction: "neither",
    standing: standingOf(outcome, { tooCoarse: expandedUncertainty > spec.delta }),
    figures: { of: "color", deltaE, expandedUncertainty, delta: spec.delta },
    limits: undefined,
    marks: undefined,
    coverageOnly: undefined,
  };
};
