import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { ChassisPatternInput } from "./index.ts";
import type { chassisPatternRecord } from "./record.ts";

export const examples: Examples<typeof chassisPatternRecord, ChassisPatternInput> = {
  matches: { number: "13867Q 104512", pattern: "1[35]###[QZ]######" },
  "does-not-match": { number: "13867A104512", pattern: "1[35]###[QZ]######" },
  "no-pattern": { number: "13867A104512" },
};

export const trueClaims: TrueClaims<ChassisPatternInput> = "no-figures";

export const growth: Growth<ChassisPatternInput> = "no-figures";
