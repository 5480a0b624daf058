import { dayOf } from "../day/index.ts";
import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { TireAgeInput } from "./index.ts";
import type { tireAgeRecord } from "./record.ts";

export const examples: Examples<typeof tireAgeRecord, TireAgeInput> = {
  young: { number: "DOT 0VNE HKTA 0624", visit: dayOf(2026, 5, 4) },
  "caution-age": { number: "0VNEHKTA 2518", visit: dayOf(2026, 5, 4) },
  "replace-age": { number: "0VNEHKTA 317", visit: dayOf(2026, 5, 4) },
  "not-a-date": { number: "5401", visit: dayOf(2026, 5, 4) },
  "after-the-visit": { number: "2528", visit: dayOf(2026, 5, 4) },
  "some-readings": { number: "1820", visit: dayOf(2026, 5, 6) },
};

export const trueClaims: TrueClaims<TireAgeInput> = "no-figures";

export const growth: Growth<TireAgeInput> = "no-figures";
