import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import { estimateOf, findClaim, findRead, vehicleOf } from "../view/index.ts";
import type { View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { displacement } from "./index.ts";
import type { DisplacementInput } from "./index.ts";
import { displacementRecord } from "./record.ts";

const find = (view: View): Inputs<DisplacementInput>[] => {
  const [bore, stroke] = [
    findRead(view, "reading", "engine.bore"),
    findRead(view, "reading", "engine.stroke"),
  ];
  const cylinders = vehicleOf(view)?.form.cylinders;
  if (bore === undefined || stroke === undefined || cylinders === undefined) return [];
  const [b, s] = [estimateOf(view, bore), estimateOf(view, stroke)];
  const claim = findClaim(view, "reading", "engine.displacement");
  if (b === undefined || s === undefined || claim === undefined) return [];
  const claimed = estimateOf(view, claim)?.value;
  return [{ reads: [bore, stroke], claim, input: { bore: b, stroke: s, cylinders, claimed } }];
};

/** displacement with all that belongs to it. */
export const displacementRule = defineRule({
  record: displacementRecord,
  compute: displacement,
  needs: ["engine.bore", "engine.stroke", "engine.displacement"],
  find,
  examples,
  trueClaims,
  growth,
});
