import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import { findReads, lowestOf } from "../view/index.ts";
import type { View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { inUseTread } from "./index.ts";
import type { InUseTreadInput } from "./index.ts";
import { inUseTreadRecord } from "./record.ts";

/** The shallowest spot of each tire. */
const find = (view: View): Inputs<InUseTreadInput>[] => {
  const asked: Inputs<InUseTreadInput>[] = [];
  for (const read of findReads(view, "reading", "wheels.tread-depth")) {
    const reading = lowestOf(view, read);
    if (reading !== undefined) asked.push({ reads: [read], input: { reading } });
  }
  return asked;
};

/** inUseTread with all that belongs to it. */
export const inUseTreadRule = defineRule({
  record: inUseTreadRecord,
  compute: ({ reading }) => inUseTread(reading),
  needs: ["wheels.tread-depth"],
  find,
  examples,
  trueClaims,
  growth,
});
