import type { Gap, GapEnds } from "./index.ts";
import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import { ofPosition } from "../of-position/index.ts";
import { joinedReads, present } from "../readers/present.ts";
import { estimateOf, findRead, findReads } from "../view/index.ts";
import type { Found, Read, View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { gapTaper } from "./index.ts";
import type { GapTaperInput } from "./index.ts";
import { gapTaperRecord } from "./record.ts";

type MeasuredGap = {
  readonly gap: string;
  readonly side: "left" | "right";
  readonly ends: GapEnds;
  readonly reads: readonly Found[];
};

/** Which gap a position is of, and on which side of the car. */
const placeOfGap = ofPosition((position) => {
  const side = position.includes("right") ? "right" : "left";
  const gap = position
    .split("-")
    .filter((word) => word !== side)
    .join(" ");
  return { gap, side } as const;
});

const gapOf = (view: View, top: Read<"reading">): MeasuredGap | undefined => {
  const bottom = findRead(view, "reading", "gaps.width-bottom", top.position);
  if (bottom === undefined) return undefined;
  const upper = estimateOf(view, top, "differences");
  const lower = estimateOf(view, bottom, "differences");
  if (upper === undefined || lower === undefined) return undefined;
  const { gap, side } = placeOfGap(top.position);
  return { gap, side, ends: { top: upper, bottom: lower }, reads: [top, bottom] };
};

/** Each gap with both its sides, as far as they were measured. */
const gapsOf = (measured: readonly MeasuredGap[]): readonly Gap[] => {
  const byName = new Map<string, { gap: string; left?: GapEnds; right?: GapEnds }>();
  for (const { gap, side, ends } of measured) {
    const known = byName.get(gap);
    if (known === undefined) byName.set(gap, side === "left" ? { gap, left: ends } : { gap, right: ends });
    else known[side] = ends;
  }
  return [...byName.values()];
};

const find = (view: View): Inputs<GapTaperInput>[] => {
  const measured = present(findReads(view, "reading", "gaps.width-top").map((top) => gapOf(view, top)));
  if (measured.length === 0) return [];
  return [{ reads: joinedReads(measured), input: { gaps: gapsOf(measured) } }];
};

/** gapTaper with all that belongs to it. */
export const gapTaperRule = defineRule({
  record: gapTaperRecord,
  compute: gapTaper,
  needs: ["gaps.width-top", "gaps.width-bottom"],
  find,
  examples,
  trueClaims,
  growth,
});
