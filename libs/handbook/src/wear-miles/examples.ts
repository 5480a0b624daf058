import { between } from "../draws/index.ts";
import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import { exactly } from "../interval/index.ts";
import type { WearMilesInput } from "./index.ts";
import type { wearMilesRecord } from "./record.ts";

const pedals = { part: "pedals", condition: { low: 0, high: 0.2 } };

export const examples: Examples<typeof wearMilesRecord, WearMilesInput> = {
  "fits-miles": { parts: [pedals], miles: exactly(88_000) },
  "more-wear-than-miles": {
    parts: [pedals, { part: "wheel rim", condition: { low: 0.8, high: 1 } }],
    miles: exactly(12_000),
  },
  "range-covers": { parts: [{ part: "pedals", condition: { low: 0.3, high: 0.5 } }], miles: exactly(12_000) },
  retrimmed: { parts: [{ ...pedals, retrimmed: true }], miles: exactly(12_000) },
  "too-few": { parts: [pedals] },
};

export const trueClaims: TrueClaims<WearMilesInput> = {
  "worn pedals at exactly the limit": (read) => ({
    parts: [{ part: "pedals", condition: { low: 0, high: 0.2 } }],
    miles: read(30_000, 500),
  }),
};

export const growth: Growth<WearMilesInput> = {
  numbers: (n, u) => ({
    parts: [{ part: "pedals", condition: { low: 0, high: 0.2 } }],
    miles: between(n, 0, 10_000, 60_000, u),
  }),
};
