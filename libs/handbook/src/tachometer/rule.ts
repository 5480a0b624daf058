import { findQuantity } from "../readers/axle.ts";
import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import { findClaim } from "../view/index.ts";
import type { View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { tachometer } from "./index.ts";
import type { TachometerInput } from "./index.ts";
import { tachometerRecord } from "./record.ts";

const find = (view: View): Inputs<TachometerInput>[] => {
  const indicated = findQuantity(view, "road.indicated-revolutions");
  const measured = findQuantity(view, "road.revolutions");
  if (indicated === undefined || measured === undefined) return [];
  const claim = findClaim(view, "working", "electrics.tachometer");
  return [
    {
      reads: [...indicated.reads, ...measured.reads],
      bad: () => indicated.reads,
      claim: claim?.answer.value === "yes" ? claim : undefined,
      input: { indicated: indicated.value, measured: measured.value },
    },
  ];
};

/** tachometer with all that belongs to it. */
export const tachometerRule = defineRule({
  record: tachometerRecord,
  compute: tachometer,
  needs: ["road.indicated-revolutions", "road.revolutions"],
  find,
  examples,
  trueClaims,
  growth,
});
