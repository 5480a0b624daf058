import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { NumberEndsAlikeInput } from "./index.ts";
import type { numberEndsAlikeRecord } from "./record.ts";

const engine = {
  unit: "engine",
  stamp: "17N104512",
  chassisNumber: "136677N104512",
  saidToMatch: true,
  readTwice: true,
} as const;

export const examples: Examples<typeof numberEndsAlikeRecord, NumberEndsAlikeInput> = {
  alike: engine,
  "not-alike": { ...engine, stamp: "17N209981", saidToMatch: false },
  "said-to-match": { ...engine, stamp: "17N209981" },
  "read-again": { ...engine, stamp: "17N209981", readTwice: false },
  "probably-misread": { ...engine, stamp: "17N10S512", chassisNumber: "136677N105512" },
  "too-short": { ...engine, stamp: "XK" },
};

export const trueClaims: TrueClaims<NumberEndsAlikeInput> = "no-figures";

export const growth: Growth<NumberEndsAlikeInput> = "no-figures";
