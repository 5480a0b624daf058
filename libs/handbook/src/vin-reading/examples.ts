import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { VinReadingInput } from "./index.ts";
import type { vinReadingRecord } from "./record.ts";

const good = "1HGCM82633A004352";

export const examples: Examples<typeof vinReadingRecord, VinReadingInput> = {
  same: { first: good, second: good.toLowerCase(), market: "north-america" },
  "first-misread": { first: "1HGCM8Z633A004352", second: good, market: "north-america" },
  "second-misread": { first: good, second: "1HGCM82633A004325", market: "north-america" },
  "both-pass": { first: "1111111111A111111", second: "111111111A1111111", market: "north-america" },
  "neither-passes": { first: "1HGCM8Z633A004359", second: "1HGCM82633A004359", market: "north-america" },
  "not-a-misreading": { first: good, second: "1HGCM82633A009999", market: "north-america" },
  "outside-the-rule": { first: "194375S104512", second: "1943755104512", market: "north-america" },
};

export const trueClaims: TrueClaims<VinReadingInput> = "no-figures";

export const growth: Growth<VinReadingInput> = "no-figures";
