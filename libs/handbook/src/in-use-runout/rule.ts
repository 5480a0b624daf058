import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import { estimateOf, findReads } from "../view/index.ts";
import type { View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { inUseRunout } from "./index.ts";
import type { InUseRunoutInput } from "./index.ts";
import { inUseRunoutRecord } from "./record.ts";

const find = (view: View): Inputs<InUseRunoutInput>[] =>
  ["wheels.runout-lateral", "wheels.runout-radial"]
    .flatMap((item) => findReads(view, "reading", item))
    .flatMap((read): Inputs<InUseRunoutInput>[] => {
      const runout = estimateOf(view, read);
      return runout === undefined ? [] : [{ reads: [read], input: { runout } }];
    });

/** inUseRunout with all that belongs to it. */
export const inUseRunoutRule = defineRule({
  record: inUseRunoutRecord,
  compute: ({ runout }) => inUseRunout(runout),
  find,
  examples,
  trueClaims,
  growth,
});
