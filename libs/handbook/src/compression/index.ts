import { listed } from "@evenhand/message/listed";
import type { Figure, FirmLimits, LimitUse, RuleResult, Verdict } from "@evenhand/shared/cross-check";
import { difference } from "@evenhand/measurement/difference";
import type { Estimate } from "@evenhand/measurement/estimate";
import { median } from "@evenhand/measurement/median";
import { judge, productOf, worstVerdict } from "../interval/index.ts";
import { figure } from "../rule-result/index.ts";
import { compressionRecord } from "./record.ts";

export type CylinderPressure = { readonly cylinder: number; readonly pressure: Estimate };

export type CompressionInput = {
  /** psi; uncertainty without what one gauge shares over all cylinders, which cancels in a ratio. */
  readonly cylinders: readonly CylinderPressure[];
  /** Cylinders that share a wall of the head gasket, two by two. */
  readonly neighbors?: readonly (readonly [number, number])[];
  /** Warm and with the throttle open, as far as was noted: only then is the level itself judged. */
  readonly levelCounts?: boolean;
  /** The maker's own figures, entered with their source. */
  readonly makers?: { readonly lowestShare?: number; readonly least?: number };
};

const shareOfPressure = ({ pressure }: CylinderPressure, share: number): Estimate => ({
  value: share * pressure.value,
  standardUncertainty: Math.abs(share) * pressure.standardUncertainty,
  degreesOfFreedom: pressure.degreesOfFreedom,
});

/** Every cylinder against a share of each other one, all judged together. */
export const lowAgainstOthers = (
  cylinders: readonly CylinderPressure[],
  share: number,
): Map<number, Verdict> => {
  const among = cylinders.length * (cylinders.length - 1);
  const shares = cylinders.map((high) => ({ high, pressure: shareOfPressure(high, share) }));
  // What a cylinder has over the share of another one; below 0 it is too low against it.
  const verdictOf = (low: CylinderPressure): Verdict => {
    let worst: Verdict = "holds";
    for (const { high, pressure } of shares) {
      if (high === low) continue;
      const verdict = judge(difference(low.pressure, pressure), { low: 0 }, among);
      if (verdict === "breaks") return verdict;
      if (verdict === "cannot-tell") worst = verdict;
    }
    return worst;
  };
  return new Map(cylinders.map((low) => [low.cylinder, verdictOf(low)]));
};

/**
 * Which cylinders are certainly low, certainly not, or neither: for setting beside leak-down.
 *
 * @example
 * compressionStates({ cylinders: [{ cylinder: 1, pressure: exactly(90) }, { cylinder: 2, pressure: exactly(150) }] })
 * // Map { 1 => "low", 2 => "normal" }
 */
export const compressionStates = (
  input: CompressionInput,
  firm: FirmLimits = {},
): Map<number, "low" | "normal" | "unclear"> =>
  new Map(
    [...lowAgainstOthers(input.cylinders, shareOf(input, firm).value)].map(([cylinder, verdict]) => [
      cylinder,
      ({ breaks: "low", holds: "normal", "cannot-tell": "unclear" } as const)[verdict],
    ]),
  );

const shareOf = ({ makers }: CompressionInput, firm: FirmLimits): LimitUse =>
  makers?.lowestShare === undefined
    ? compressionRecord.limit("compression.lowest-share", firm)
    : compressionRecord.makersLimit("compression.lowest-share", makers.lowestShare);

const figuresOf = (cylinders: readonly CylinderPressure[]): Record<string, Figure> => {
  const sorted = cylinders.toSorted((a, b) => a.pressure.value - b.pressure.value);
  const [lowest, highest] = [sorted[0], sorted.at(-1)];
  if (lowest === undefined || highest === undefined) return {};
  const share = productOf(1, [
    [lowest.pressure, 1],
    [highest.pressure, -1],
  ]);
  return {
    lowest: figure(lowest.pressure.value, "psi", lowest.pressure.standardUncertainty),
    lowestCylinder: figure(lowest.cylinder),
    highest: figure(highest.pressure.value, "psi", highest.pressure.standardUncertainty),
    highestCylinder: figure(highest.cylinder),
    share: figure(share.value, "1", share.standardUncertainty),
    median: figure(median(cylinders.map(({ pressure }) => pressure.value)), "psi"),
  };
};

const neighborsLow = (neighbors: readonly (readonly [number, number])[], verdicts: Map<number, Verdict>) =>
  neighbors.find(([a, b]) => verdicts.get(a) === "breaks" && verdicts.get(b) === "breaks");

/** How the cylinders stand to a least figure, where there is one. */
const againstLeast = (cylinders: readonly CylinderPressure[], least: number | undefined): Verdict =>
  least === undefined
    ? "holds"
    : worstVerdict(cylinders.map(({ pressure }) => judge(pressure, { low: least }, cylinders.length)));

/** The least figure in force: the maker's, else that of common practice where the level counts. */
const leastOf = ({ makers, levelCounts }: CompressionInput, firm: FirmLimits): LimitUse | undefined => {
  if (makers?.least !== undefined) return compressionRecord.makersLimit("compression.least", makers.least);
  return levelCounts === true ? compressionRecord.limit("compression.least", firm) : undefined;
};

/**
 * Pattern of compression: no cylinder under the limit's share of another, and none under the maker's least figure; without one
 * the level is judged by common practice, since an evenly tired engine is even. Each pair of cylinders is judged, all
 * of them together at 99 %, so that an even engine is not failed for having many cylinders.
 *
 * Source: makers' manuals differ; 75 % from the service manual of an industrial engine. The
 * level: common practice, no source.
 *
 * @example
 * compression({ cylinders: [{ cylinder: 1, pressure: exactly(140) }, { cylinder: 2, pressure: exactly(104) }] }).reason
 * // "uneven"
 */
export const compression = (input: CompressionInput, firm: FirmLimits = {}): RuleResult => {
  const { cylinders, neighbors = [], makers } = input;
  const share = shareOf(input, firm);
  const least = leastOf(input, firm);
  const detail = {
    figures: {
      ...figuresOf(cylinders),
      ...(makers?.least === undefined ? {} : { least: figure(makers.least, "psi") }),
    },
    limits: least === undefined || makers?.least !== undefined ? [share] : [share, least],
  };
  if (cylinders.length < 2) return compressionRecord.answer("too-few", detail);
  const verdicts = lowAgainstOthers(cylinders, share.value);
  const together = neighborsLow(neighbors, verdicts);
  if (together !== undefined) {
    return compressionRecord.answer("neighbors-low", {
      ...detail,
      words: { neighbors: listed(together.map(String), "and") },
    });
  }
  const pattern = worstVerdict([...verdicts.values()]);
  if (pattern === "breaks") return compressionRecord.answer("uneven", detail);
  const both = worstVerdict([pattern, againstLeast(cylinders, least?.value)]);
  const low = makers?.least === undefined ? "low-level" : "under-least";
  const reason = ({ breaks: low, "cannot-tell": "range-covers", holds: "even" } as const)[both];
  return compressionRecord.answer(reason, detail);
};
