import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { VinYearInput } from "./index.ts";
import type { vinYearRecord } from "./record.ts";

const good = "0EVTL82633A007146";

export const examples: Examples<typeof vinYearRecord, VinYearInput> = {
  "same-year": { vin: good, market: "north-america", kind: "car", claimedYear: 2003 },
  "other-year": { vin: good, market: "north-america", kind: "car", claimedYear: 2004 },
  "year-character": { vin: "0EVTL8263UA007146", market: "north-america", kind: "car", claimedYear: 2003 },
  "read-again": { vin: good, market: "north-america", kind: "car", claimedYear: 2004, readOnce: true },
  "before-1981": { vin: "TM464S20871", market: "north-america", kind: "car", claimedYear: 1964 },
  "other-market": { vin: good, market: "other", kind: "car", claimedYear: 2003 },
  "market-unknown": { vin: good, market: "unknown", kind: "car", claimedYear: 2003 },
  "not-seventeen": { vin: "EVTL82633A007146", market: "north-america", kind: "car", claimedYear: 2003 },
  "either-cycle": { vin: good, market: "north-america", kind: "other", claimedYear: 2003 },
};

export const trueClaims: TrueClaims<VinYearInput> = "no-figures";

export const growth: Growth<VinYearInput> = "no-figures";
