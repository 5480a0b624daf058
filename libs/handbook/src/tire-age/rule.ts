import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import { findReads, visitDay } from "../view/index.ts";
import type { View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { tireAge } from "./index.ts";
import type { TireAgeInput } from "./index.ts";
import { tireAgeRecord } from "./record.ts";

const find = (view: View): Inputs<TireAgeInput>[] =>
  findReads(view, "code", "wheels.tire-identification").flatMap((read): Inputs<TireAgeInput>[] => {
    const visit = visitDay(view, read.side);
    return visit === undefined ? [] : [{ reads: [read], input: { number: read.answer.text, visit } }];
  });

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
