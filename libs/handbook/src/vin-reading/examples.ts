import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { VinReadingInput } from "./index.ts";
import type { vinReadingRecord } from "./record.ts";

const good = "0EVTL82633A007146";

export const examples: Examples<typeof vinReadingRecord, VinReadingInput> = {
  same: { first: good, second: good.toLowerCase(), market: "north-america" },
  "first-misread": { first: "0EVTL8Z633A007146", second: good, market: "north-america" },
  "second-misread": { first: good, second: "0EVTL82633A007164", market: "north-america" },
  "both-pass": { first: "1111111111A111111", second: "111111111A1111111", market: "north-america" },
  "neither-passes": { first: "0EVTL8Z633A007149", second: "0EVTL82633A007149", market: "north-america" },
  "not-a-misreading": { first: good, second: "0EVTL82633A009999", market: "north-america" },
  "outside-the-rule": { first: "TM464S20871", second: "TM464520871", market: "north-america" },
};

export const trueClaims: TrueClaims<VinReadingInput> = "no-figures";

export const growth: Growth<VinReadingInput> = "no-figures";
