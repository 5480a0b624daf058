import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { PartialVinInput } from "./index.ts";
import type { partialVinRecord } from "./record.ts";

export const examples: Examples<typeof partialVinRecord, PartialVinInput> = {
  equal: { stamp: "1 7N 104512", chassisNumber: "136677N104512", derivation: "1{6}{7}{8-13}" },
  differs: { stamp: "17N209981", chassisNumber: "136677N104512", derivation: "1{6}{7}{8-13}" },
  "probably-misread": { stamp: "17N1O4512", chassisNumber: "136677N104512", derivation: "1{6}{7}{8-13}" },
  "never-stamped": { neverStamped: true, chassisNumber: "136677N104512" },
  "not-read": { chassisNumber: "136677N104512" },
  "no-pattern": { stamp: "17N104512", chassisNumber: "136677N104512" },
  "number-too-short": { stamp: "17N104512", chassisNumber: "136677N", derivation: "{8-13}" },
};

export const trueClaims: TrueClaims<PartialVinInput> = "no-figures";

export const growth: Growth<PartialVinInput> = "no-figures";
