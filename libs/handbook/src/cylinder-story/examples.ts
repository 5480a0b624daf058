import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { CylinderStoryInput } from "./index.ts";
import type { cylinderStoryRecord } from "./record.ts";

export const examples: Examples<typeof cylinderStoryRecord, CylinderStoryInput> = {
  "one-story": {
    cylinders: [{ cylinder: 1, compression: "low", leak: "leaks", escapes: ["intake"] }],
    coolantGas: "absent",
  },
  "gasket-between": {
    cylinders: [
      { cylinder: 1, compression: "low", leak: "leaks", escapes: ["neighbor"] },
      { cylinder: 2, compression: "low", leak: "leaks", escapes: ["neighbor"] },
    ],
    neighbors: [[1, 2]],
  },
  "low-but-tight": { cylinders: [{ cylinder: 3, compression: "low", leak: "tight" }] },
  "leaks-but-not-low": { cylinders: [{ cylinder: 3, compression: "normal", leak: "leaks" }] },
  "escape-without-gas": {
    cylinders: [{ cylinder: 3, compression: "low", leak: "leaks", escapes: ["coolant"] }],
    coolantGas: "absent",
  },
  "gas-without-escape": { cylinders: [{ cylinder: 3, leak: "tight" }], coolantGas: "present" },
  "not-clear": { cylinders: [{ cylinder: 3, compression: "unclear", leak: "leaks" }] },
  "too-few": { cylinders: [{ cylinder: 3, compression: "low" }] },
};

export const trueClaims: TrueClaims<CylinderStoryInput> = "no-figures";

export const growth: Growth<CylinderStoryInput> = "no-figures";
