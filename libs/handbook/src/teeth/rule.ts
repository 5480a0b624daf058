import { claimedRatio, findTeeth } from "../readers/axle.ts";
import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import type { View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { teeth } from "./index.ts";
import type { TeethInput } from "./index.ts";
import { teethRecord } from "./record.ts";

const find = (view: View): Inputs<TeethInput>[] => {
  const { read: claim, claimed, makers } = claimedRatio(view);
  const counted = findTeeth(view);
  if (claimed === undefined || counted === undefined) return [];
  const { ring, pinion, reads } = counted;
  return [{ reads, claim, input: { ring, pinion, claimed, makers } }];
};

/** teeth with all that belongs to it. */
export const teethRule = defineRule({
  record: teethRecord,
  compute: teeth,
  needs: ["driveline.axle-ratio", "driveline.ring-teeth", "driveline.pinion-teeth"],
  find,
  examples,
  trueClaims,
  growth,
});
