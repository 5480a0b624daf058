import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import { estimateOf, findRead } from "../view/index.ts";
import type { View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { inUseToe } from "./index.ts";
import type { InUseToeInput } from "./index.ts";
import { inUseToeRecord } from "./record.ts";

const find = (view: View): Inputs<InUseToeInput>[] =>
  (
    [
      ["front-axle", view.maker.toeFront],
      ["rear-axle", view.maker.toeRear],
    ] as const
  ).flatMap(([axle, makers]): Inputs<InUseToeInput>[] => {
    const read = findRead(view, "reading", "steering.toe", axle);
    const toe = read === undefined ? undefined : estimateOf(view, read);
    return read === undefined || toe === undefined
      ? []
      : [{ reads: [read], input: { toe, makers, unit: "mm" } }];
  });

/** inUseToe with all that belongs to it. */
export const inUseToeRule = defineRule({
  record: inUseToeRecord,
  compute: ({ toe, makers, unit }) => inUseToe(toe, makers, unit),
  needs: ["steering.toe"],
  find,
  examples,
  trueClaims,
  growth,
});
