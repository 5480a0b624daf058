import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { SameNumberInput } from "./index.ts";
import type { sameNumberRecord } from "./record.ts";

export const examples: Examples<typeof sameNumberRecord, SameNumberInput> = {
  "all-equal": [
    { place: "title", number: "20-875 S" },
    { place: "plate", number: "20875s" },
  ],
  differ: [
    { place: "title", number: "20875" },
    { place: "plate", number: "20899" },
    { place: "title (inspection)", number: "20875" },
    { place: "plate (inspection)", number: "20899" },
  ],
  "read-again": [
    { place: "title", number: "20875" },
    { place: "plate", number: "20899" },
  ],
  "probably-misread": [
    { place: "title", number: "20875" },
    { place: "plate", number: "2087S" },
  ],
  "too-few": [{ place: "title", number: "20875" }],
};

export const trueClaims: TrueClaims<SameNumberInput> = "no-figures";

export const growth: Growth<SameNumberInput> = "no-figures";
