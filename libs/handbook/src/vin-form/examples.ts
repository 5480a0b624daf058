import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { VinFormInput } from "./index.ts";
import type { vinFormRecord } from "./record.ts";

const american = { market: "north-america", modelYear: 2003 } as const;
const good = "1HGCM82633A004352";

export const examples: Examples<typeof vinFormRecord, VinFormInput> = {
  passes: { vin: "1hg cm826-33a004352", ...american },
  length: { vin: "1HGCM82633A00435", ...american },
  characters: { vin: "1HGCM82633AOO4352", ...american },
  "check-digit": { vin: "1HGCM82643A004352", ...american },
  "before-1981": { vin: "194375S104512", market: "north-america", modelYear: 1964 },
  "year-unknown": { vin: "194375S104512", market: "north-america" },
  "other-market": { vin: good, market: "other", modelYear: 2003 },
  "market-unknown": { vin: good, market: "unknown", modelYear: 2003 },
};

export const trueClaims: TrueClaims<VinFormInput> = "no-figures";

export const growth: Growth<VinFormInput> = "no-figures";
