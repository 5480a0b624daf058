import { estimate } from "@evenhand/measurement/estimate";
import { between } from "../draws/index.ts";
import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { CrankingInput } from "./index.ts";
import type { crankingRecord } from "./record.ts";

export const examples: Examples<typeof crankingRecord, CrankingInput> = {
  enough: { volts: estimate(10.4, 0.05), system: 12 },
  "too-low": { volts: estimate(4.2, 0.05), system: 6 },
  "range-covers": { volts: estimate(9.6, 0.05), system: 12 },
};

export const trueClaims: TrueClaims<CrankingInput> = {
  "cranking at the least": (read) => ({ volts: read(9.6, 0.08), system: 12 }),
};

export const growth: Growth<CrankingInput> = {
  numbers: (n, u) => ({ volts: between(n, 0, 3, 6, u), system: 6 }),
};
