import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { PartialVinInput } from "./index.ts";
import type { partialVinRecord } from "./record.ts";

export const examples: Examples<typeof partialVinRecord, PartialVinInput> = {
  equal: { stamp: "R 67 20871", chassisNumber: "TM467R20871", derivation: "{6}{4-5}{7-11}" },
  differs: { stamp: "R6731196", chassisNumber: "TM467R20871", derivation: "{6}{4-5}{7-11}" },
  "read-again": {
    stamp: "R6731196",
    chassisNumber: "TM467R20871",
    derivation: "{6}{4-5}{7-11}",
    readOnce: true,
  },
  "probably-misread": { stamp: "R672O871", chassisNumber: "TM467R20871", derivation: "{6}{4-5}{7-11}" },
  "never-stamped": { neverStamped: true, chassisNumber: "TM467R20871" },
  "not-read": { chassisNumber: "TM467R20871" },
  "no-pattern": { stamp: "R6720871", chassisNumber: "TM467R20871" },
  "number-too-short": { stamp: "R6720871", chassisNumber: "TM467R", derivation: "{7-11}" },
};

export const trueClaims: TrueClaims<PartialVinInput> = "no-figures";

export const growth: Growth<PartialVinInput> = "no-figures";
