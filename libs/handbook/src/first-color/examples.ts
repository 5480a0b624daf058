import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { FirstColorInput } from "./index.ts";
import type { firstColorRecord } from "./record.ts";

export const examples: Examples<typeof firstColorRecord, FirstColorInput> = {
  equal: { tag: "Y 2", spots: [{ place: "under the dash", color: "y-2" }] },
  differs: { tag: "Y", spots: [{ place: "under the dash", color: "R" }] },
  "other-terms": { tag: "40", spots: [{ place: "under the dash", color: "dark blue" }] },
  "too-few": { tag: "Y", spots: [] },
};

export const trueClaims: TrueClaims<FirstColorInput> = "no-figures";

export const growth: Growth<FirstColorInput> = "no-figures";
