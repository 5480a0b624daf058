import type { LengthPair } from "./index.ts";
import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import { joinedReads, present } from "../readers/present.ts";
import { estimateOf, findClaim, findRead, optionOf } from "../view/index.ts";
import type { View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { square } from "./index.ts";
import type { SquareInput } from "./index.ts";
import { squareRecord } from "./record.ts";

const pairOf = (view: View, item: string, [left, right]: readonly [string, string]) => {
  const reads = present([findRead(view, "reading", item, left), findRead(view, "reading", item, right)]);
  const [one, other] = reads.map((read) => estimateOf(view, read, "differences"));
  const lengths: LengthPair | undefined = one === undefined || other === undefined ? undefined : [one, other];
  return { lengths, reads };
};

const breaks = (input: SquareInput): boolean => square(input).verdict === "breaks";

const find = (view: View): Inputs<SquareInput>[] => {
  const wheelbase = pairOf(view, "underbody.wheelbase", ["left", "right"]);
  const diagonals = pairOf(view, "underbody.diagonals", ["left-front-right-rear", "right-front-left-rear"]);
  const pairs = [wheelbase, diagonals].filter(({ lengths }) => lengths !== undefined);
  if (pairs.length === 0) return [];
  const claim = findClaim(view, "choice", "underbody.collision-repair");
  return [
    {
      reads: joinedReads(pairs),
      bad: () => [
        ...(breaks({ wheelbase: wheelbase.lengths }) ? wheelbase.reads : []),
        ...(breaks({ diagonals: diagonals.lengths }) ? diagonals.reads : []),
      ],
      claim: optionOf(claim) === "none" ? claim : undefined,
      input: { wheelbase: wheelbase.lengths, diagonals: diagonals.lengths },
    },
  ];
};

/** square with all that belongs to it. */
export const squareRule = defineRule({
  record: squareRecord,
  compute: square,
  find,
  examples,
  trueClaims,
  growth,
});
