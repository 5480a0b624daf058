import type { RuleResult } from "@evenhand/shared/cross-check";
import { measuredPanels } from "../readers/panel-paint.ts";
import { joinedReads } from "../readers/present.ts";
import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import type { View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { paintMap } from "./index.ts";
import type { PaintMapInput } from "./index.ts";
import { paintMapRecord } from "./record.ts";

const find = (view: View): Inputs<PaintMapInput>[] => {
  const measured = measuredPanels(view);
  if (measured.length === 0) return [];
  const panels = measured.map(({ paint }) => paint);
  const bad = ({ alternatives = [] }: RuleResult) =>
    measured
      .filter(({ paint }) => alternatives.some((text) => text.startsWith(`${paint.panel} `)))
      .flatMap(({ reads }) => reads.slice(0, 1));
  return [{ reads: joinedReads(measured), bad, input: { panels } }];
};

/** paintMap with all that belongs to it. */
export const paintMapRule = defineRule({
  record: paintMapRecord,
  compute: paintMap,
  needs: ["body.paint-thickness"],
  find,
  examples,
  trueClaims,
  growth,
});
