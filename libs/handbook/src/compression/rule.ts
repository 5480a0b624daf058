import { compressionOf } from "../readers/cylinders.ts";
import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import type { View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { compression } from "./index.ts";
import type { CompressionInput } from "./index.ts";
import { compressionRecord } from "./record.ts";

const find = (view: View): Inputs<CompressionInput>[] => {
  const pressures = compressionOf(view);
  return pressures === undefined ? [] : [pressures];
};

/** compression with all that belongs to it. */
export const compressionRule = defineRule({
  record: compressionRecord,
  compute: compression,
  find,
  examples,
  trueClaims,
  growth,
});
