import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { VinFormInput } from "./index.ts";
import type { vinFormRecord } from "./record.ts";

const american = { market: "north-america", modelYear: 2003 } as const;
const good = "0EVTL82633A007146";

export const examples: Examples<typeof vinFormRecord, VinFormInput> = {
  passes: { vin: "0ev tl826-33a007146", ...american },
  length: { vin: "0EVTL82633A00714", ...american },
  characters: { vin: "0EVTL82633AOO7146", ...american },
  "check-digit": { vin: "0EVTL82643A007146", ...american },
  "read-again": { vin: "0EVTL82643A007146", ...american, readOnce: true },
  "before-1981": { vin: "TM464S20871", market: "north-america", modelYear: 1964 },
  "year-unknown": { vin: "TM464S20871", market: "north-america" },
  "other-market": { vin: good, market: "other", modelYear: 2003 },
  "market-unknown": { vin: good, market: "unknown", modelYear: 2003 },
};

export const trueClaims: TrueClaims<VinFormInput> = "no-figures";

export const growth: Growth<VinFormInput> = "no-figures";
