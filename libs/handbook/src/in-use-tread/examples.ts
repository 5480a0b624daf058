import { estimate } from "@evenhand/measurement/estimate";
import { between } from "../draws/index.ts";
import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { InUseTreadInput } from "./index.ts";
import type { inUseTreadRecord } from "./record.ts";

export const examples: Examples<typeof inUseTreadRecord, InUseTreadInput> = {
  meets: { reading: estimate(5, 0.3) },
  "under-limit": { reading: estimate(1, 0.2) },
  "range-covers": { reading: estimate(2.1, 0.3) },
};

export const trueClaims: TrueClaims<InUseTreadInput> = {
  "tread at 2/32 in": (read) => ({ reading: read(2, 0.4) }),
};

export const growth: Growth<InUseTreadInput> = { numbers: (n, u) => ({ reading: between(n, 0, 0, 4, u) }) };
