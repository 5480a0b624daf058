import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import { estimateOf, findReads } from "../view/index.ts";
import type { View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { inUseRunout } from "./index.ts";
import type { InUseRunoutInput } from "./index.ts";
import { inUseRunoutRecord } from "./record.ts";

const find = (view: View): Inputs<InUseRunoutInput>[] => {
  const asked: Inputs<InUseRunoutInput>[] = [];
  for (const item of ["wheels.runout-lateral", "wheels.runout-radial"]) {
    for (const read of findReads(view, "reading", item)) {
      const runout = estimateOf(view, read);
      if (runout !== undefined) asked.push({ reads: [read], input: { runout } });
    }
  }
  return asked;
};

/** inUseRunout with all that belongs to it. */
export const inUseRunoutRule = defineRule({
  record: inUseRunoutRecord,
  compute: ({ runout }) => inUseRunout(runout),
  find,
  examples,
  trueClaims,
  growth,
});
