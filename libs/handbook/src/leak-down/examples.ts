import { estimate } from "@evenhand/measurement/estimate";
import { between } from "../draws/index.ts";
import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { LeakDownInput } from "./index.ts";
import type { leakDownRecord } from "./record.ts";

const leaks = (...values: number[]) =>
  values.map((value, index) => ({
    cylinder: index + 1,
    leak: estimate(value, 0.7),
    escapes: ["exhaust"] as const,
  }));

export const examples: Examples<typeof leakDownRecord, LeakDownInput> = {
  good: { cylinders: leaks(4, 5, 6), testPressure: 100 },
  worn: { cylinders: leaks(4, 15, 6), testPressure: 100 },
  "good-or-worn": { cylinders: leaks(4, 10, 6), testPressure: 100 },
  poor: { cylinders: leaks(4, 28, 6), testPressure: 100 },
  "range-covers": { cylinders: leaks(4, 20.5, 6), testPressure: 98 },
  "other-pressure": { cylinders: leaks(4, 28, 6), testPressure: 80 },
  "too-few": { cylinders: [], testPressure: 100 },
};

export const trueClaims: TrueClaims<LeakDownInput> = {
  "eight cylinders that leak exactly 20 %": (read) => ({
    cylinders: Array.from({ length: 8 }, (_, cylinder) => ({ cylinder, leak: read(20, 1.5) })),
    testPressure: 100,
  }),
};

export const growth: Growth<LeakDownInput> = {
  numbers: (n, u) => ({
    cylinders: n.map((_, index) => ({ cylinder: index, leak: between(n, index, 2, 26, u) })),
    testPressure: 100,
  }),
};
