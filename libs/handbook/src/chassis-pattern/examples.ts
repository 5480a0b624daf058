import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { ChassisPatternInput } from "./index.ts";
import type { chassisPatternRecord } from "./record.ts";

export const examples: Examples<typeof chassisPatternRecord, ChassisPatternInput> = {
  matches: { number: "TM467R 20871", pattern: "T[MN]###[RW]#####" },
  "does-not-match": { number: "TM467A20871", pattern: "T[MN]###[RW]#####" },
  "read-again": { number: "TM467A20871", pattern: "T[MN]###[RW]#####", readOnce: true },
  "no-pattern": { number: "TM467A20871" },
};

export const trueClaims: TrueClaims<ChassisPatternInput> = "no-figures";

export const growth: Growth<ChassisPatternInput> = "no-figures";
