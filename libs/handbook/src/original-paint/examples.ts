import type { Estimate } from "@evenhand/measurement/estimate";
import { estimate } from "@evenhand/measurement/estimate";
import { between } from "../draws/index.ts";
import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { OriginalPaintInput } from "./index.ts";
import type { originalPaintRecord } from "./record.ts";
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

export const examples: Examples<typeof originalPaintRecord, OriginalPaintInput> = {
  "no-contradiction": { panels: paint(120, 118, 125) },
  refinished: { panels: paint(120, 310, 118) },
  "over-the-others": { panels: paint(190).slice(0, 1), car: paint(190, 88, 91, 86, 90) },
  "range-covers": { panels: paint(120, 201) },
  thin: { panels: paint(120, 50) },
  "too-few": { panels: [] },
};

export const trueClaims: TrueClaims<OriginalPaintInput> = {
  "twelve original panels at 200 µm": (read) => ({
    panels: Array.from({ length: 12 }, (_, index) => panel(`${index}`, read(200, 10))),
  }),
};

export const growth: Growth<OriginalPaintInput> = {
  numbers: (n, u) => ({ panels: panelsOf(n.slice(0, 2), u) }),
};
