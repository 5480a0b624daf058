import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { OdometerDisclosureInput } from "./index.ts";
import type { odometerDisclosureRecord } from "./record.ts";

export const examples: Examples<typeof odometerDisclosureRecord, OdometerDisclosureInput> = {
  "exempt-by-age": { modelYear: 1964, transferYear: 2026 },
  "exempt-by-kind": { modelYear: 2020, transferYear: 2026, weightRating: 16_001 },
  due: { modelYear: 2011, transferYear: 2021 },
  "claimed-exempt-but-due": { modelYear: 2011, transferYear: 2021, claimedExempt: true },
  "too-few": { modelYear: 2011 },
};

export const trueClaims: TrueClaims<OdometerDisclosureInput> = "no-figures";

export const growth: Growth<OdometerDisclosureInput> = "no-figures";
