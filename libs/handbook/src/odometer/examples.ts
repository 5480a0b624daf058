import { estimate } from "@evenhand/measurement/estimate";
import { dayOf } from "../day/index.ts";
import { between } from "../draws/index.ts";
import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { OdometerInput } from "./index.ts";
import type { odometerRecord } from "./record.ts";

const at = (year: number, miles: number, more: { allowedSince?: number } = {}) => ({
  day: dayOf(year, 5, 4),
  miles: estimate(miles, 0.1),
  place: "title",
  ...more,
});

export const examples: Examples<typeof odometerRecord, OdometerInput> = {
  rises: { readings: [at(2010, 41_000), at(2026, 46_200)], digits: 6 },
  falls: { readings: [at(2010, 91_000), at(2026, 46_200)], digits: 6 },
  "rises-too-much": {
    readings: [at(2026, 46_200), { ...at(2026, 46_400, { allowedSince: 50 }), place: "delivery" }],
    digits: 6,
  },
  "rolled-over-or-back": { readings: [at(2010, 91_000), at(2026, 46_200)], digits: 5 },
  "range-covers": { readings: [at(2010, 46_200), at(2026, 46_200)], digits: 6 },
  "too-few": { readings: [at(2010, 46_200)], digits: 6 },
};

export const trueClaims: TrueClaims<OdometerInput> = {
  "an odometer that has not moved": (read) => ({
    readings: [
      { day: 0, miles: read(46_200, 0.3), place: "a" },
      { day: 1, miles: read(46_200, 0.3), place: "b" },
    ],
    digits: 6,
  }),
  "an odometer that rose just what was driven": (read) => ({
    readings: [
      { day: 0, miles: read(46_200, 0.3), place: "a" },
      { day: 1, miles: read(46_250, 0.3), place: "b", allowedSince: 50 },
    ],
    digits: 6,
  }),
};

export const growth: Growth<OdometerInput> = {
  numbers: (n, u) => ({
    readings: [
      { day: 0, miles: between(n, 0, 40_000, 50_000, u), place: "title" },
      { day: 10, miles: between(n, 1, 40_000, 50_000, u), place: "plate", allowedSince: 4000 },
    ],
    digits: 6,
  }),
};
