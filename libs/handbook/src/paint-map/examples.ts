import type { Estimate } from "@evenhand/measurement/estimate";
import { estimate } from "@evenhand/measurement/estimate";
import { between } from "../draws/index.ts";
import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { PaintMapInput } from "./index.ts";
import type { paintMapRecord } from "./record.ts";
const NAMES = ["hood", "left door", "right door", "roof", "trunk"];
const paint = (...values: number[]) =>
  values.map((value, index) => ({
    panel: NAMES[index] ?? "",
    thickness: estimate(value, 3),
    material: "steel" as const,
  }));
const panel = (name: string, thickness: Estimate) => ({
  panel: name,
  thickness,
  material: "steel" as const,
});
const panelsOf = (n: readonly number[], u: number) =>
  n.map((_, index) => ({
    panel: `panel ${index}`,
    thickness: between(n, index, 40, 900, u),
    material: "steel" as const,
  }));

export const examples: Examples<typeof paintMapRecord, PaintMapInput> = {
  "even-over-car": { panels: paint(120, 118, 125, 130, 122) },
  "panels-stand-out": { panels: paint(120, 118, 420, 130, 122) },
  "filler-likely": { panels: paint(120, 118, 1420, 130, 122) },
  thick: { panels: paint(520, 500) },
  "range-covers": { panels: paint(120, 118, 197, 130, 122) },
  "too-few": { panels: paint(120, 118) },
};

export const trueClaims: TrueClaims<PaintMapInput> = {
  "twelve panels of one thickness": (read) => ({
    panels: Array.from({ length: 12 }, (_, index) => panel(`${index}`, read(120, 15))),
  }),
};

export const growth: Growth<PaintMapInput> = { numbers: (n, u) => ({ panels: panelsOf(n, u) }) };
