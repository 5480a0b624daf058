import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import { findRead, findReads, lowestOf, optionOf } from "../view/index.ts";
import type { View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { inUseLining } from "./index.ts";
import type { InUseLiningInput } from "./index.ts";
import { inUseLiningRecord } from "./record.ts";

const find = (view: View): Inputs<InUseLiningInput>[] =>
  findReads(view, "reading", "brakes.lining-thickness").flatMap((read): Inputs<InUseLiningInput>[] => {
    const reading = lowestOf(view, read);
    if (reading === undefined) return [];
    const kind = findRead(view, "choice", "brakes.lining-kind", read.position);
    const option = optionOf(kind);
    const fixing = option === "riveted" || option === "bonded" ? option : "unknown";
    return [{ reads: kind === undefined ? [read] : [read, kind], input: { reading, fixing } }];
  });

/** inUseLining with all that belongs to it. */
export const inUseLiningRule = defineRule({
  record: inUseLiningRecord,
  compute: ({ reading, fixing }) => inUseLining(reading, fixing),
  needs: ["brakes.lining-thickness"],
  find,
  examples,
  trueClaims,
  growth,
});
