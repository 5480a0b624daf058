import { estimate } from "@evenhand/measurement/estimate";
import { between } from "../draws/index.ts";
import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { InUseToeInput } from "./index.ts";
import type { inUseToeRecord } from "./record.ts";

export const examples: Examples<typeof inUseToeRecord, InUseToeInput> = {
  meets: { toe: estimate(0.1, 0.01), makers: 0.125 },
  "over-limit": { toe: estimate(-0.3, 0.01), makers: 0.125 },
  "range-covers": { toe: estimate(0.19, 0.01), makers: 0.125 },
  "makers-value-unknown": { toe: estimate(0.19, 0.01) },
};

export const trueClaims: TrueClaims<InUseToeInput> = {
  "toe at the limit, the band narrow": (read) => ({ toe: read(0.15, 0.2), makers: 0.1, unit: "mm" }),
};

export const growth: Growth<InUseToeInput> = {
  numbers: (n, u) => ({ toe: between(n, 0, -4, 4, u), makers: 1.6, unit: "mm" }),
};
