import { systemVolts } from "../readers/system-volts.ts";
import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import { estimateOf, findRead } from "../view/index.ts";
import type { View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { cranking } from "./index.ts";
import type { CrankingInput } from "./index.ts";
import { crankingRecord } from "./record.ts";

const find = (view: View): Inputs<CrankingInput>[] => {
  const turning = findRead(view, "reading", "electrics.volts-cranking");
  const volts = turning === undefined ? undefined : estimateOf(view, turning);
  return turning === undefined || volts === undefined
    ? []
    : [{ reads: [turning], input: { volts, system: systemVolts(view) } }];
};

/** cranking with all that belongs to it. */
export const crankingRule = defineRule({
  record: crankingRecord,
  compute: cranking,
  needs: ["electrics.volts-cranking"],
  find,
  examples,
  trueClaims,
  growth,
});
