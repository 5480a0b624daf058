import { estimate } from "@evenhand/measurement/estimate";
import { dayOf } from "../day/index.ts";
import { between } from "../draws/index.ts";
import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import { exactly } from "../interval/index.ts";
import type { ActualMilesInput } from "./index.ts";
import type { actualMilesRecord } from "./record.ts";

const on = (year: number, shown: number, place = "service bill") => ({
  day: dayOf(year, 5, 4),
  miles: exactly(shown),
  place,
});
const shown = on(2019, 61_240, "odometer");
const built = dayOf(1958, 10, 1);

export const examples: Examples<typeof actualMilesRecord, ActualMilesInput> = {
  "no-room": {
    shown: on(1964, 61_240, "odometer"),
    digits: 5,
    built,
    calledActual: true,
    entries: [on(1961, 30_000)],
  },
  "six-digits": { shown, digits: 6, calledActual: true, entries: [] },
  "called-actual-but-lower": { shown, digits: 5, calledActual: true, entries: [on(1986, 97_410)] },
  "lower-than-papers": { shown, digits: 5, calledActual: false, entries: [on(1986, 97_410)] },
  "may-be-more": { shown, digits: 5, built, calledActual: true, entries: [on(1986, 42_000)] },
  "too-near": {
    shown: { ...shown, miles: estimate(61_240, 5) },
    digits: 5,
    calledActual: true,
    entries: [on(2018, 61_241)],
  },
};

export const trueClaims: TrueClaims<ActualMilesInput> = {
  "actual miles that have not risen since the last paper": (read) => ({
    shown: { ...shown, miles: read(61_240, 0.3) },
    digits: 5,
    calledActual: true,
    entries: [{ ...on(2018, 0), miles: read(61_240, 0.3) }],
  }),
};

export const growth: Growth<ActualMilesInput> = {
  numbers: (n, u) => ({
    shown: { ...on(1964, 0, "odometer"), miles: between(n, 0, 40_000, 80_000, u) },
    digits: 5,
    built,
    calledActual: true,
    entries: [{ ...on(1961, 0), miles: between(n, 1, 20_000, 60_000, u) }],
  }),
};
