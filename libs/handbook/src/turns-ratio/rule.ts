import { claimedRatio, findTurning } from "../readers/axle.ts";
import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import type { View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { turnsRatio } from "./index.ts";
import type { TurnsRatioInput } from "./index.ts";
import { turnsRatioRecord } from "./record.ts";

const find = (view: View): Inputs<TurnsRatioInput>[] => {
  const { read: claim, claimed, makers } = claimedRatio(view);
  const turning = findTurning(view);
  if (claimed === undefined || turning === undefined) return [];
  return [{ reads: [turning.read], claim, input: { ...turning.turning, claimed, makers } }];
};

/** turnsRatio with all that belongs to it. */
export const turnsRatioRule = defineRule({
  record: turnsRatioRecord,
  compute: turnsRatio,
  needs: ["driveline.axle-ratio", "driveline.axle-turns"],
  find,
  examples,
  trueClaims,
  growth,
});
