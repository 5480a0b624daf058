import {
  betaPertMean,
  betaPertShape,
  betaPertVariance,
  pertRuleVariance,
} from "@evenhand/decision/beta-pert";
import { expect, test } from "vitest";
import pert from "../../fixtures/published/pert.json" with { type: "json" };

const near = (value: number, published: number | undefined): void => {
  if (published === undefined) return;
  const digits = (published.toString().split(".")[1] ?? "").length;
  expect(value).toBeCloseTo(published, Math.max(digits, 1));
};

test.each(pert.cases)("three points $low, $likely, $high ($source; $mark)", (points) => {
  expect(betaPertMean(points)).toBeCloseTo(points.mean, 10);
  near(pertRuleVariance(points), points.pertRuleVariance);
  near(Math.sqrt(pertRuleVariance(points)), points.pertRuleStandardDeviation);
  near(Math.sqrt(betaPertVariance(points)), points.betaPertStandardDeviation);
});

test.each(pert.cases.filter(({ shape }) => shape !== undefined))(
  "shape of $low, $likely, $high",
  ({ shape, ...points }) => expect(betaPertShape(points)).toEqual(shape),
);
