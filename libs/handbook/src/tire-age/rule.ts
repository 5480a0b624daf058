import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import { findReads, visitDay } from "../view/index.ts";
import type { View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { tireAge } from "./index.ts";
import type { TireAgeInput } from "./index.ts";
import { tireAgeRecord } from "./record.ts";

const find = (view: View): Inputs<TireAgeInput>[] => {
  const asked: Inputs<TireAgeInput>[] = [];
  for (const read of findReads(view, "code", "wheels.tire-identification")) {
    const visit = visitDay(view, read.side);
    if (visit !== undefined) asked.push({ reads: [read], input: { number: read.answer.text, visit } });
  }
  return asked;
};

/** tireAge with all that belongs to it. */
export const tireAgeRule = defineRule({
  record: tireAgeRecord,
  compute: tireAge,
  needs: ["wheels.tire-identification"],
  find,
  examples,
  trueClaims,
  growth,
});
