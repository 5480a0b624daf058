import { mean } from "@evenhand/measurement/type-a";
import { gapTaper } from "../gap-taper/index.ts";
import type { Gap, GapEnds } from "../gap-taper/index.ts";
import { originalPaint } from "../original-paint/index.ts";
import { paintMap, readingsOf } from "../paint-map/index.ts";
import type { PanelPaint } from "../paint-map/index.ts";
import { panelColor } from "../panel-color/index.ts";
import type { PanelLab } from "../panel-color/index.ts";
import { square } from "../square/index.ts";
import type { LengthPair } from "../square/index.ts";
import { neighborPanels } from "./neighbor-panels.ts";
import type { Checks, Finder } from "./prepared.ts";
import { estimateOf, findClaim, findRead, findReads, optionOf } from "./view.ts";
import type { Found, Read, View } from "./view.ts";

const MATERIALS: Readonly<Record<string, PanelPaint["material"]>> = {
  aluminum: "aluminum",
  "glass-fiber": "other",
  other: "other",
};

type Measured = { readonly paint: PanelPaint; readonly reads: readonly Found[] };

const paintOf = (view: View, read: Read<"reading">): Measured[] => {
  const thickness = estimateOf(view, read);
  if (thickness === undefined) return [];
  const material = findRead(view, "choice", "body.panel-material", read.position);
  const highest = findRead(view, "reading", "body.paint-highest", read.position);
  const paint: PanelPaint = {
    panel: read.position.replaceAll("-", " "),
    thickness,
    thickest: highest === undefined ? undefined : estimateOf(view, highest),
    // A probe reads on metal only, so a panel whose metal is not named is taken as steel.
    material: MATERIALS[optionOf(material) ?? ""] ?? "steel",
  };
  return [{ paint, reads: [read, material, highest].flatMap((found) => found ?? []) }];
};

const measuredPanels = (view: View): Measured[] =>
  findReads(view, "reading", "body.paint-thickness").flatMap((read) => paintOf(view, read));

const paintMaps: Finder = (view) => {
  const measured = measuredPanels(view);
  if (measured.length === 0) return [];
  const panels = measured.map(({ paint }) => paint);
  const reads = measured.flatMap((panel) => panel.reads);
  return [{ rule: "paint-map", reads, run: () => paintMap({ panels }, view.firm) }];
};

/** Each panel called original by itself, all judged together. */
const paintClaims: Finder = (view) => {
  const claimed = measuredPanels(view).flatMap(({ paint, reads }) => {
    const claim = findClaim(view, "choice", "body.paint-history", reads[0]?.position ?? "");
    return claim !== undefined && optionOf(claim) === "original" ? [{ paint, reads, claim }] : [];
  });
  const among = claimed.flatMap(({ paint }) => readingsOf(paint)).length;
  return claimed.map(({ paint, reads, claim }) => ({
    rule: "original-paint",
    reads,
    claim,
    run: () => originalPaint({ panels: [paint], among }, view.firm),
  }));
};

const labOf = (view: View, read: Read<"color">): PanelLab => {
  const of = (axis: "L" | "a" | "b") => mean(read.answer.values.map((value) => value[axis]));
  const repeatability = view.sheet.items.get(read.item)?.item.color?.repeatability ?? 0;
  return {
    panel: read.position,
    color: { L: of("L"), a: of("a"), b: of("b") },
    standardUncertainty: repeatability / Math.sqrt(read.answer.values.length),
  };
};

const colors: Finder = (view) => {
  const reads = findReads(view, "color", "body.color");
  if (reads.length < 2) return [];
  const panels = reads.map((read) => labOf(view, read));
  const metallicOneAngle = reads.some(({ answer }) => answer.metallic && answer.geometry !== "multi-angle");
  const neighbors = neighborPanels(panels.map(({ panel }) => panel));
  if (neighbors.length === 0) return [];
  return [
    { rule: "panel-color", reads, run: () => panelColor({ panels, neighbors, metallicOneAngle }, view.firm) },
  ];
};

type MeasuredGap = {
  readonly gap: string;
  readonly side: "left" | "right";
  readonly ends: GapEnds;
  readonly reads: readonly Found[];
};

const gapOf = (view: View, top: Read<"reading">): MeasuredGap[] => {
  const bottom = findRead(view, "reading", "gaps.width-bottom", top.position);
  if (bottom === undefined) return [];
  const [upper, lower] = [estimateOf(view, top, "differences"), estimateOf(view, bottom, "differences")];
  if (upper === undefined || lower === undefined) return [];
  const side = top.position.includes("right") ? "right" : "left";
  const gap = top.position
    .split("-")
    .filter((word) => word !== side)
    .join(" ");
  return [{ gap, side, ends: { top: upper, bottom: lower }, reads: [top, bottom] }];
};

const gaps: Finder = (view) => {
  const measured = findReads(view, "reading", "gaps.width-top").flatMap((top) => gapOf(view, top));
  if (measured.length === 0) return [];
  const byName = new Map<string, Gap>();
  for (const { gap, side, ends } of measured) byName.set(gap, { ...byName.get(gap), gap, [side]: ends });
  return [
    {
      rule: "gap-taper",
      reads: measured.flatMap(({ reads }) => reads),
      run: () => gapTaper({ gaps: [...byName.values()] }, view.firm),
    },
  ];
};

const pairOf = (view: View, item: string, [left, right]: readonly [string, string]) => {
  const reads = [findRead(view, "reading", item, left), findRead(view, "reading", item, right)].flatMap(
    (read) => read ?? [],
  );
  const [one, other] = reads.map((read) => estimateOf(view, read, "differences"));
  const lengths: LengthPair | undefined = one === undefined || other === undefined ? undefined : [one, other];
  return { lengths, reads };
};

const shape: Finder = (view) => {
  const wheelbase = pairOf(view, "underbody.wheelbase", ["left", "right"]);
  const diagonals = pairOf(view, "underbody.diagonals", ["left-front-right-rear", "right-front-left-rear"]);
  const pairs = [wheelbase, diagonals].filter(({ lengths }) => lengths !== undefined);
  if (pairs.length === 0) return [];
  const claim = findClaim(view, "choice", "underbody.collision-repair");
  return [
    {
      rule: "square",
      reads: pairs.flatMap(({ reads }) => reads),
      claim: optionOf(claim) === "none" ? claim : undefined,
      run: () => square({ wheelbase: wheelbase.lengths, diagonals: diagonals.lengths }, view.firm),
    },
  ];
};

/** Rules on paint, color, gaps and shape. */
export const bodyChecks: Checks = {
  oneReport: [paintMaps, colors, gaps],
  bothReports: [paintClaims, shape],
};
