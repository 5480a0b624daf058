import { compressionOf } from "../readers/cylinders.ts";
import type { Tested } from "../readers/cylinders.ts";
import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import type { Found, View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { compression, compressionStates } from "./index.ts";
import type { CompressionInput } from "./index.ts";
import { compressionRecord } from "./record.ts";

/** The cylinders that are low: against the others, or against a least figure where that is what broke. */
const lowOnes = (
  view: View,
  { input, reads }: Tested<CompressionInput>,
  reason: string,
): readonly Found[] => {
  if (reason !== "uneven" && reason !== "neighbors-low") return reads;
  const states = compressionStates(input, view.firm);
  return reads.filter((_, index) => states.get(input.cylinders[index]?.cylinder ?? 0) === "low");
};

const find = (view: View): Inputs<CompressionInput>[] => {
  const pressures = compressionOf(view);
  if (pressures === undefined) return [];
  const { input, reads } = pressures;
  return [{ input, reads, bad: ({ reason }) => lowOnes(view, pressures, reason) }];
};

/** compression with all that belongs to it. */
export const compressionRule = defineRule({
  record: compressionRecord,
  compute: compression,
  needs: ["engine.compression"],
  find,
  examples,
  trueClaims,
  growth,
});
