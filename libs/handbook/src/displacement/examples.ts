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
    bore: read(4, 0.002),
    stroke: read((275 * 1.01) / (Math.PI * 32), 0.003),
    cylinders: 8,
    claimed: 275,
  }),
  "displacement as claimed": (read) => ({
    bore: read(4, 0.02),
    stroke: read(275 / (Math.PI * 32), 0.03),
    cylinders: 8,
    claimed: 275,
  }),
};

export const growth: Growth<DisplacementInput> = {
  numbers: (n, u) => ({
    bore: between(n, 0, 3.9, 4.1, u),
    stroke: between(n, 1, 2.68, 2.8, u),
    cylinders: 8,
    claimed: 275,
  }),
};
