import { estimate } from "@evenhand/measurement/estimate";
import { between } from "../draws/index.ts";
import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { ChargingInput } from "./index.ts";
import type { chargingRecord } from "./record.ts";

const alternator = {
  volts: estimate(14.2, 0.03),
  engineSpeed: 1800,
  system: 12,
  machine: "alternator",
} as const;

export const examples: Examples<typeof chargingRecord, ChargingInput> = {
  charges: alternator,
  "too-low": { ...alternator, volts: estimate(12.6, 0.03) },
  "too-high": { ...alternator, volts: estimate(8.1, 0.03), system: 6, machine: "generator" },
  "range-covers": { ...alternator, volts: estimate(13.5, 0.03) },
  "generator-at-idle": { ...alternator, machine: "generator", engineSpeed: 700 },
  "other-speed": { ...alternator, engineSpeed: 700 },
  "speed-unknown": { ...alternator, engineSpeed: undefined },
};

export const trueClaims: TrueClaims<ChargingInput> = {
  "charging at the low end": (read) => ({
    volts: read(13.5, 0.05),
    engineSpeed: 1800,
    system: 12,
    machine: "alternator",
  }),
};

export const growth: Growth<ChargingInput> = {
  numbers: (n, u) => ({
    volts: between(n, 0, 12, 16, u),
    engineSpeed: 1700,
    system: 12,
    machine: "alternator",
  }),
};
