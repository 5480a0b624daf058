import { estimate } from "@evenhand/measurement/estimate";
import { between } from "../draws/index.ts";
import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { InUseFreePlayInput } from "./index.ts";
import type { inUseFreePlayRecord } from "./record.ts";

export const examples: Examples<typeof inUseFreePlayRecord, InUseFreePlayInput> = {
  meets: { play: estimate(1, 0.1), wheelDiameter: 17 },
  "over-limit": { play: estimate(3, 0.1), wheelDiameter: 17 },
  "range-covers": { play: estimate(2.1, 0.1), wheelDiameter: 16 },
  "between-rows": { play: estimate(2.1, 0.1), wheelDiameter: 17 },
  "wheel-unknown": { play: estimate(2.6, 0.1) },
};

export const trueClaims: TrueClaims<InUseFreePlayInput> = {
  "free play at the limit": (read) => ({ play: read(2.25, 0.1), wheelDiameter: 18 }),
};

export const growth: Growth<InUseFreePlayInput> = {
  numbers: (n, u) => ({ play: between(n, 0, 1, 4, u), wheelDiameter: between(n, 1, 14, 24, 0).value }),
};
