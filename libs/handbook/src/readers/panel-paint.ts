import type { PanelPaint } from "../paint-map/index.ts";
import { present } from "./axle.ts";
import { estimateOf, findRead, findReads, optionOf } from "../view/index.ts";
import type { Found, Read, View } from "../view/index.ts";

const MATERIALS: Readonly<Record<string, PanelPaint["material"]>> = {
  aluminum: "aluminum",
  "glass-fiber": "other",
  other: "other",
};

/** A panel's paint with the findings it is from. */
export type Measured = { readonly paint: PanelPaint; readonly reads: readonly Found[] };

const paintOf = (view: View, read: Read<"reading">): Measured[] => {
  const thickness = estimateOf(view, read);
  if (thickness === undefined) return [];
  const material = findRead(view, "choice", "body.panel-material", read.position);
  const highest = findRead(view, "reading", "body.paint-highest", read.position);
  const paint: PanelPaint = {
    panel: read.position.replaceAll("-", " "),
    thickness,
    contrast: estimateOf(view, read, "differences"),
    thickest: highest === undefined ? undefined : estimateOf(view, highest),
    // A probe reads on metal only, so a panel whose metal is not named is taken as steel.
    material: MATERIALS[optionOf(material) ?? ""] ?? "steel",
  };
  return [{ paint, reads: present<Found>([read, material, highest]) }];
};

/** A function of the view alone, which several rules ask for. */
const measured = new WeakMap<View, readonly Measured[]>();

/** Every panel whose paint was measured. */
export const measuredPanels = (view: View): readonly Measured[] => {
  const known = measured.get(view);
  if (known !== undefined) return known;
  const panels = findReads(view, "reading", "body.paint-thickness").flatMap((read) => paintOf(view, read));
  measured.set(view, panels);
  return panels;
};
