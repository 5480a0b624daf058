import { joinedReads, present } from "../readers/present.ts";
import type { Construction } from "../tire-size/index.ts";
import type { FittedTire } from "./index.ts";
import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import { findRead, optionOf } from "../view/index.ts";
import type { Found, Read, View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { tiresMixed } from "./index.ts";
import type { TiresMixedInput } from "./index.ts";
import { tiresMixedRecord } from "./record.ts";

const constructionOf = (read: Read<"choice"> | undefined): Construction | undefined => {
  const option = optionOf(read);
  return option === "radial" || option === "bias" || option === "bias-belted" ? option : undefined;
};

type Fitted = { readonly tire: FittedTire; readonly reads: readonly Found[] };

const fittedAt = (view: View, corner: string): Fitted => {
  const size = findRead(view, "code", "wheels.tire-size", corner);
  const construction = findRead(view, "choice", "wheels.tire-construction", corner);
  return {
    tire: { size: size?.answer.text, construction: constructionOf(construction) },
    reads: present<Found>([size, construction]),
  };
};

const find = (view: View): Inputs<TiresMixedInput>[] => {
  const leftFront = fittedAt(view, "left-front");
  const rightFront = fittedAt(view, "right-front");
  const leftRear = fittedAt(view, "left-rear");
  const rightRear = fittedAt(view, "right-rear");
  const reads = joinedReads([leftFront, rightFront, leftRear, rightRear]);
  if (reads.length < 2) return [];
  const input = {
    leftFront: leftFront.tire,
    rightFront: rightFront.tire,
    leftRear: leftRear.tire,
    rightRear: rightRear.tire,
  };
  return [{ reads, input }];
};

/** tiresMixed with all that belongs to it. */
export const tiresMixedRule = defineRule({
  record: tiresMixedRecord,
  compute: tiresMixed,
  find,
  examples,
  trueClaims,
  growth,
});
