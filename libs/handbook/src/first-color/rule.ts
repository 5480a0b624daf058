import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import { findClaim, findRead } from "../view/index.ts";
import type { View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { firstColor } from "./index.ts";
import type { FirstColorInput } from "./index.ts";
import { firstColorRecord } from "./record.ts";

const find = (view: View): Inputs<FirstColorInput>[] => {
  const tag = findClaim(view, "code", "identity.paint-code");
  const spot = findRead(view, "code", "doors.first-color");
  if (tag === undefined || spot === undefined) return [];
  const spots = [{ place: "unpainted spots", color: spot.answer.text }];
  return [{ reads: [tag, spot], claim: tag, bad: () => [spot], input: { tag: tag.answer.text, spots } }];
};

/** firstColor with all that belongs to it. */
export const firstColorRule = defineRule({
  record: firstColorRecord,
  compute: firstColor,
  needs: ["identity.paint-code", "doors.first-color"],
  find,
  examples,
  trueClaims,
  growth,
});
