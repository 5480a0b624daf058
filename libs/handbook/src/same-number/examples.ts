import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { SameNumberInput } from "./index.ts";
import type { sameNumberRecord } from "./record.ts";

export const examples: Examples<typeof sameNumberRecord, SameNumberInput> = {
  "all-equal": [
    { place: "title", number: "194-375 S" },
    { place: "plate", number: "194375s" },
  ],
  differ: [
    { place: "title", number: "194375" },
    { place: "plate", number: "194399" },
  ],
  "probably-misread": [
    { place: "title", number: "194375" },
    { place: "plate", number: "19437S" },
  ],
  "too-few": [{ place: "title", number: "194375" }],
};

export const trueClaims: TrueClaims<SameNumberInput> = "no-figures";

export const growth: Growth<SameNumberInput> = "no-figures";
