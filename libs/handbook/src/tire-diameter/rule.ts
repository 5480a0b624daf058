import { inInches } from "../readers/axle.ts";
import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import { estimateOf, findRead, findReads } from "../view/index.ts";
import type { View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { tireDiameter } from "./index.ts";
import type { TireDiameterInput } from "./index.ts";
import { tireDiameterRecord } from "./record.ts";

const find = (view: View): Inputs<TireDiameterInput>[] =>
  findReads(view, "reading", "wheels.rollout").flatMap((rollout): Inputs<TireDiameterInput>[] => {
    const size = findRead(view, "code", "wheels.tire-size", rollout.position);
    const measured = estimateOf(view, rollout);
    if (size === undefined || measured === undefined) return [];
    return [
      {
        reads: [size, rollout],
        claim: size,
        input: { size: size.answer.text, rollout: inInches(measured) },
      },
    ];
  });

/** tireDiameter with all that belongs to it. */
export const tireDiameterRule = defineRule({
  record: tireDiameterRecord,
  compute: tireDiameter,
  needs: ["wheels.rollout", "wheels.tire-size"],
  find,
  examples,
  trueClaims,
  growth,
});
