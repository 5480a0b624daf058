import type { Estimate } from "@evenhand/measurement/estimate";
import { rectangular } from "@evenhand/measurement/type-b";
import { claimedRatio, findQuantity, findRoad, findTeeth, findTurning } from "../readers/axle.ts";
import { present } from "../readers/present.ts";
import { roadEstimate } from "../road-ratio/index.ts";
import { teethRecord } from "../teeth/record.ts";
import { isPerhapsDoubled, turnsEstimate } from "../turns-ratio/index.ts";
import type { RatioWay } from "./index.ts";
import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import type { Found, View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { ratioCombined } from "./index.ts";
import type { RatioCombinedInput } from "./index.ts";
import { ratioCombinedRecord } from "./record.ts";

type Way = RatioWay & { readonly reads: readonly Found[] };

/** A ratio on a tag, or from teeth, is quoted to two decimals. */
const quoted = (view: View, value: number): Estimate => ({
  value,
  standardUncertainty: rectangular(teethRecord.limit("ratio.rounding", view.firm).value),
  degreesOfFreedom: Number.POSITIVE_INFINITY,
});

const waysOf = (view: View): Way[] => {
  const tag = findQuantity(view, "driveline.axle-ratio-tag");
  const [road, turning, counted] = [findRoad(view), findTurning(view), findTeeth(view)];
  const gear = road?.reading.gear;
  return present<Way>([
    tag && { way: "tag", ratio: quoted(view, tag.value.value), reads: tag.reads },
    counted && { way: "teeth", ratio: quoted(view, counted.ring / counted.pinion), reads: counted.reads },
    // Turns that were perhaps doubled before they were written down are no way to the ratio.
    turning && !isPerhapsDoubled(turning.turning, view.firm)
      ? { way: "turns", ratio: turnsEstimate(turning.turning), reads: [turning.read] }
      : undefined,
    road && gear !== undefined
      ? { way: "road", ratio: roadEstimate({ ...road.reading, gear }, view.firm), reads: road.reads }
      : undefined,
  ]);
};

const find = (view: View): Inputs<RatioCombinedInput>[] => {
  const { read: claim, claimed, makers } = claimedRatio(view);
  const ways = waysOf(view);
  if (claimed === undefined || ways.length < 2) return [];
  return [{ reads: ways.flatMap(({ reads }) => reads), claim, input: { ways, claimed, makers } }];
};

/** ratioCombined with all that belongs to it. */
export const ratioCombinedRule = defineRule({
  record: ratioCombinedRecord,
  compute: ratioCombined,
  needs: ["driveline.axle-ratio"],
  find,
  examples,
  trueClaims,
  growth,
});
