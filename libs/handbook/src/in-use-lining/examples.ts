import { estimate } from "@evenhand/measurement/estimate";
import { between } from "../draws/index.ts";
import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { InUseLiningInput } from "./index.ts";
import type { inUseLiningRecord } from "./record.ts";

export const examples: Examples<typeof inUseLiningRecord, InUseLiningInput> = {
  meets: { reading: estimate(0.2, 0.005), fixing: "bonded" },
  "under-limit": { reading: estimate(0.01, 0.003), fixing: "riveted" },
  "range-covers": { reading: estimate(0.03, 0.003), fixing: "riveted" },
  "fixing-unknown": { reading: estimate(0.03, 0.003), fixing: "unknown" },
};

export const trueClaims: TrueClaims<InUseLiningInput> = {
  "lining at 1/32 in": (read) => ({ reading: read(1 / 32, 0.004), fixing: "riveted" }),
};

export const growth: Growth<InUseLiningInput> = {
  numbers: (n, u) => ({ reading: between(n, 0, 0, 0.06, u), fixing: "bonded" }),
};
