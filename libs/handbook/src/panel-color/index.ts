import { listed } from "@evenhand/message/listed";
import type { FirmLimits, RuleResult } from "@evenhand/shared/cross-check";
import { normalCdf, normalDensity } from "@evenhand/measurement/normal-distribution";
import { colorDifference } from "../color-difference/index.ts";
import type { Lab } from "../color-difference/index.ts";
import { HANDBOOK_COVERAGE, judgeSpan } from "../interval/index.ts";
import type { Span } from "../interval/index.ts";
import { figure } from "../rule-result/index.ts";
import { panelColorRecord } from "./record.ts";
import { resultMessages } from "../result-words/index.ts";

export type PanelLab = {
  readonly panel: string;
  /** Mean of the panel's readings. */
  readonly color: Lab;
  /** Standard uncertainty of that mean in each of L*, a*, b*. */
  readonly standardUncertainty: number;
};

export type PanelColorInput = {
  readonly panels: readonly PanelLab[];
  /** Panels that meet, two by two. */
  readonly neighbors: readonly (readonly [string, string])[];
  /** Metallic or pearl paint read from one angle only. */
  readonly metallicOneAngle?: boolean;
};

/** The most by which CIEDE2000 stretches an axis of L*a*b*: a* near gray. */
const MOST_STRETCH = 1.5;

/** Probability that a random step in three directions goes no farther than `x` standard deviations of one. */
const within = (x: number): number => 2 * normalCdf(x) - 1 - 2 * x * normalDensity(x);

/**
 * The distance a random step in three directions stays within with the given probability, in standard
 * deviations of one direction: the root of the chi-square quantile with three degrees of freedom, by bisection of
 * P = 2Φ(x) − 1 − 2x·φ(x).
 *
 * @example threeWayFactor(0.99) // 3.368…
 */
export const threeWayFactor = (probability: number): number => {
  let [low, high] = [0, 12];
  for (let step = 0; step < 60; step += 1) {
    const middle = (low + high) / 2;
    if (within(middle) < probability) low = middle;
    else high = middle;
  }
  return high;
};

/** Panels meet at a few dozen places at most. */
const factors = new Map<number, number>();

/** How far the noise of any one of so many pairs of panels can have gone. */
const factorOf = (pairs: number): number => {
  const known = factors.get(pairs);
  if (known !== undefined) return known;
  const factor = MOST_STRETCH * threeWayFactor(1 - (1 - HANDBOOK_COVERAGE) / Math.max(1, pairs));
  factors.set(pairs, factor);
  return factor;
};

type Pair = { readonly panels: readonly [string, string]; readonly deltaE: number; readonly span: Span };

/** Scatter only ever adds to a distance, so its range is by the triangle: |d| ± the farthest the noise can have gone. */
const pairsOf = ({ panels, neighbors }: PanelColorInput): Pair[] => {
  const byName = new Map(panels.map((panel) => [panel.panel, panel]));
  const met = neighbors.flatMap(([left, right]) => {
    const [one, other] = [byName.get(left), byName.get(right)];
    return one === undefined || other === undefined ? [] : [{ one, other }];
  });
  const factor = factorOf(met.length);
  return met.map(({ one, other }) => {
    const deltaE = colorDifference(one.color, other.color);
    const reach = factor * Math.hypot(one.standardUncertainty, other.standardUncertainty);
    return {
      panels: [one.panel, other.panel],
      deltaE,
      span: { low: Math.max(0, deltaE - reach), high: deltaE + reach },
    };
  });
};

/**
 * Color difference of neighboring panels. Metallic paint read from one angle cannot be told.
 *
 * Source: CIEDE2000 (ISO/CIE 11664-6); the figure that is noticed is common practice, no source.
 *
 * @returns the noticeable pairs as alternatives, the farthest apart first
 */
export const panelColor = (input: PanelColorInput, firm: FirmLimits = {}): RuleResult => {
  const limit = panelColorRecord.limit("panel-color.noticeable", firm);
  const limits = [limit];
  const pairs = pairsOf(input).toSorted((a, b) => b.deltaE - a.deltaE);
  const [farthest] = pairs;
  if (farthest === undefined) return panelColorRecord.answer("too-few", { limits });
  const detail = {
    limits,
    figures: { deltaE: figure(farthest.deltaE, "dE") },
    ranges: { deltaE: { ...farthest.span, unit: "dE" } },
    words: { panels: listed(farthest.panels, "and") },
  };
  if (input.metallicOneAngle === true) return panelColorRecord.answer("metallic-one-angle", detail);
  const judged = pairs.map((pair) => ({ pair, verdict: judgeSpan(pair.span, { high: limit.value }) }));
  const noticed = judged.filter(({ verdict }) => verdict === "breaks").map(({ pair }) => pair);
  if (noticed.length > 0) {
    const alternatives = noticed.map(({ panels, deltaE }) =>
      resultMessages.say("at-place", { place: listed(panels, "and"), value: deltaE.toFixed(1) }),
    );
    return panelColorRecord.answer("noticeable", { ...detail, alternatives });
  }
  return panelColorRecord.answer(
    judged.every(({ verdict }) => verdict === "holds") ? "not-noticed" : "range-covers",
    detail,
  );
};
