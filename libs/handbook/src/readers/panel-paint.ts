import type { PanelPaint } from "../paint-map/index.ts";
import { saidPosition } from "../of-position/index.ts";
import { present } from "./present.ts";
import { estimateOf, findRead, findReads, optionOf } from "../view/index.ts";
import type { Found, Read, View } from "../view/index.ts";
import { onceAView } from "../view/once.ts";

const MATERIALS: Readonly<Record<string, PanelPaint["material"]>> = {
  aluminum: "aluminum",
  "glass-fiber": "other",
  other: "other",
};

/** A panel's paint with the findings it is from. */
export type Measured = { readonly paint: PanelPaint; readonly reads: readonly Found[] };

const paintOf = (view: View, read: Read<"reading">): Measured | undefined => {
  const thickness = estimateOf(view, read);
  if (thickness === undefined) return undefined;
  const material = findRead(view, "choice", "body.panel-material", read.position);
  const highest = findRead(view, "reading", "body.paint-highest", read.position);
  const paint: PanelPaint = {
    panel: saidPosition(read.position),
    thickness,
    contrast: estimateOf(view, read, "differences"),
    thickest: highest === undefined ? undefined : estimateOf(view, highest),
    // A probe reads on metal only, so a panel whose metal is not named is taken as steel.
    material: MATERIALS[optionOf(material) ?? ""] ?? "steel",
  };
  return { paint, reads: present<Found>([read, material, highest]) };
};

/** Every panel whose paint was measured. Several rules ask for them. */
export const measuredPanels = onceAView((view): readonly Measured[] =>
  present(findReads(view, "reading", "body.paint-thickness").map((read) => paintOf(view, read))),
);
