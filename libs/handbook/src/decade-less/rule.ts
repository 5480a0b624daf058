import { candidatesOf } from "../readers/part-dates.ts";
import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import { findReads } from "../view/index.ts";
import type { View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { decadeLess } from "./index.ts";
import type { DecadeLessInput } from "./index.ts";
import { decadeLessRecord } from "./record.ts";

/** Codes that mean more than one date in the maker's years. */
const find = (view: View): Inputs<DecadeLessInput>[] =>
  findReads(view, "code", "identity.date-code").flatMap((read): Inputs<DecadeLessInput>[] => {
    const candidates = candidatesOf(view, read, read.position);
    if (candidates.length < 2) return [];
    return [{ reads: [read], input: { code: read.answer.text, candidates, facts: [] } }];
  });

/** decadeLess with all that belongs to it. */
export const decadeLessRule = defineRule({
  record: decadeLessRecord,
  compute: decadeLess,
  needs: ["identity.date-code"],
  find,
  examples,
  trueClaims,
  growth,
});
