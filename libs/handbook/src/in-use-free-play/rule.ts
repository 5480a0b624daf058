import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import { estimateOf, findRead } from "../view/index.ts";
import type { View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { inUseFreePlay } from "./index.ts";
import type { InUseFreePlayInput } from "./index.ts";
import { inUseFreePlayRecord } from "./record.ts";

const find = (view: View): Inputs<InUseFreePlayInput>[] => {
  const read = findRead(view, "reading", "steering.free-play");
  const play = read === undefined ? undefined : estimateOf(view, read);
  if (read === undefined || play === undefined) return [];
  const wheel = findRead(view, "reading", "interior.steering-wheel-diameter");
  const wheelDiameter = wheel === undefined ? undefined : estimateOf(view, wheel)?.value;
  // The wheel's diameter says how much is allowed; it is never what is bad.
  const reads = wheel === undefined ? [read] : [read, wheel];
  return [{ reads, bad: () => [read], input: { play, wheelDiameter } }];
};

/** inUseFreePlay with all that belongs to it. */
export const inUseFreePlayRule = defineRule({
  record: inUseFreePlayRecord,
  compute: ({ play, wheelDiameter }) => inUseFreePlay(play, wheelDiameter),
  needs: ["steering.free-play"],
  find,
  examples,
  trueClaims,
  growth,
});
