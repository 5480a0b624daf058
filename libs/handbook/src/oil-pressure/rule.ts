import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import { oilPressuresOf } from "../readers/oil-pressures.ts";
import type { View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { oilPressure } from "./index.ts";
import type { OilPressureInput } from "./index.ts";
import { oilPressureRecord } from "./record.ts";

const find = (view: View): Inputs<OilPressureInput>[] =>
  oilPressuresOf(view).map(({ read, input }) => ({ reads: [read], input }));

/** oilPressure with all that belongs to it. */
export const oilPressureRule = defineRule({
  record: oilPressureRecord,
  compute: oilPressure,
  find,
  examples,
  trueClaims,
  growth,
});
