import { mean } from "@evenhand/measurement/type-a";
import { neighborPanels } from "../readers/neighbor-panels.ts";
import type { PanelLab } from "./index.ts";
import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import { findReads } from "../view/index.ts";
import type { Read, View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { panelColor } from "./index.ts";
import type { PanelColorInput } from "./index.ts";
import { panelColorRecord } from "./record.ts";

const labOf = (view: View, read: Read<"color">): PanelLab => {
  const { values } = read.answer;
  const [only] = values;
  const of = (axis: "L" | "a" | "b") => mean(values.map((value) => value[axis]));
  const repeatability = view.sheet.items.get(read.item)?.item.color?.repeatability ?? 0;
  return {
    panel: read.position,
    color: only !== undefined && values.length === 1 ? only : { L: of("L"), a: of("a"), b: of("b") },
    standardUncertainty: repeatability / Math.sqrt(values.length),
  };
};

const find = (view: View): Inputs<PanelColorInput>[] => {
  const reads = findReads(view, "color", "body.color");
  if (reads.length < 2) return [];
  const panels = reads.map((read) => labOf(view, read));
  const metallicOneAngle = reads.some(({ answer }) => answer.metallic && answer.geometry !== "multi-angle");
  const neighbors = neighborPanels(panels.map(({ panel }) => panel));
  return neighbors.length === 0 ? [] : [{ reads, input: { panels, neighbors, metallicOneAngle } }];
};

/** panelColor with all that belongs to it. */
export const panelColorRule = defineRule({
  record: panelColorRecord,
  compute: panelColor,
  needs: ["body.color"],
  find,
  examples,
  trueClaims,
  growth,
});
