import { estimate } from "@evenhand/measurement/estimate";
import { between } from "../draws/index.ts";
import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { OilPressureInput } from "./index.ts";
import type { oilPressureRecord } from "./record.ts";

const oil = { pressure: estimate(30, 1), engineSpeed: estimate(2000, 20), oilTemperature: 95 };

export const examples: Examples<typeof oilPressureRecord, OilPressureInput> = {
  enough: oil,
  low: { ...oil, pressure: estimate(12, 1) },
  "under-makers": { ...oil, makersLeast: 40 },
  "range-covers": { ...oil, pressure: estimate(21, 1) },
  "not-hot": { ...oil, oilTemperature: 40 },
  "temperature-unknown": { ...oil, oilTemperature: undefined },
};

export const trueClaims: TrueClaims<OilPressureInput> = {
  "oil pressure at the least": (read) => ({
    pressure: read(20, 1.5),
    engineSpeed: read(2000, 30),
    oilTemperature: 90,
  }),
};

export const growth: Growth<OilPressureInput> = {
  numbers: (n, u) => ({
    pressure: between(n, 0, 5, 50, u),
    engineSpeed: between(n, 1, 700, 3000, u),
    oilTemperature: 90,
  }),
};
