import { estimate } from "@evenhand/measurement/estimate";
import { between } from "../draws/index.ts";
import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { DisplacementInput } from "./index.ts";
import type { displacementRecord } from "./record.ts";

const bore = { bore: estimate(3.75, 0.001), stroke: estimate(3.125, 0.002), cylinders: 8 };

export const examples: Examples<typeof displacementRecord, DisplacementInput> = {
  "as-claimed": { ...bore, claimed: 276 },
  overbored: { ...bore, claimed: 270 },
  "not-as-claimed": { ...bore, claimed: 258 },
  "range-covers": { ...bore, claimed: 278.9 },
  "no-claim": bore,
};

export const trueClaims: TrueClaims<DisplacementInput> = {
  "displacement 1 % over the claim": (read) => ({
    bore: read(3.75, 0.002),
    stroke: read((276 * 1.01) / (Math.PI * 28.125), 0.003),
    cylinders: 8,
    claimed: 276,
  }),
  "displacement as claimed": (read) => ({
    bore: read(3.75, 0.02),
    stroke: read(276 / (Math.PI * 28.125), 0.03),
    cylinders: 8,
    claimed: 276,
  }),
};

export const growth: Growth<DisplacementInput> = {
  numbers: (n, u) => ({
    bore: between(n, 0, 3.65, 3.85, u),
    stroke: between(n, 1, 3.06, 3.19, u),
    cylinders: 8,
    claimed: 276,
  }),
};
