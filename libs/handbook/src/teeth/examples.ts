import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { TeethInput } from "./index.ts";
import type { teethRecord } from "./record.ts";

const makers = [3.23, 3.58, 3.73];

export const examples: Examples<typeof teethRecord, TeethInput> = {
  "claimed-ratio": { ring: 41, pinion: 11, claimed: 3.73, makers },
  "other-ratio": { ring: 41, pinion: 11, claimed: 3.58, makers },
  "not-the-makers": { ring: 37, pinion: 11, claimed: 3.58, makers },
  "no-claim": { ring: 41, pinion: 11 },
};

export const trueClaims: TrueClaims<TeethInput> = "no-figures";

export const growth: Growth<TeethInput> = "no-figures";
