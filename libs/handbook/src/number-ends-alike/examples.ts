import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { NumberEndsAlikeInput } from "./index.ts";
import type { numberEndsAlikeRecord } from "./record.ts";

const engine = {
  unit: "engine",
  stamp: "R6720871",
  chassisNumber: "TM467R20871",
  saidToMatch: true,
  readTwice: true,
} as const;

export const examples: Examples<typeof numberEndsAlikeRecord, NumberEndsAlikeInput> = {
  alike: engine,
  "not-alike": { ...engine, stamp: "R6731196", saidToMatch: false },
  "said-to-match": { ...engine, stamp: "R6731196" },
  "read-again": { ...engine, stamp: "R6731196", readTwice: false },
  "probably-misread": { ...engine, stamp: "R672S871", chassisNumber: "TM467R25871" },
  "too-short": { ...engine, stamp: "XK" },
};

export const trueClaims: TrueClaims<NumberEndsAlikeInput> = "no-figures";

export const growth: Growth<NumberEndsAlikeInput> = "no-figures";
