import { claimedRatio, findRoad } from "../readers/axle.ts";
import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import type { View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { roadRatio } from "./index.ts";
import type { RoadRatioInput } from "./index.ts";
import { roadRatioRecord } from "./record.ts";

const find = (view: View): Inputs<RoadRatioInput>[] => {
  const { read: claim, claimed, makers } = claimedRatio(view);
  const road = findRoad(view);
  if (claimed === undefined || road === undefined) return [];
  return [{ reads: road.reads, claim, input: { ...road.reading, claimed, makers } }];
};

/** roadRatio with all that belongs to it. */
export const roadRatioRule = defineRule({
  record: roadRatioRecord,
  compute: roadRatio,
  needs: ["driveline.axle-ratio", "road.revolutions", "road.gps-speed"],
  find,
  examples,
  trueClaims,
  growth,
});
