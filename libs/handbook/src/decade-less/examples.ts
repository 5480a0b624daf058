import { dayOf, yearRange } from "../day/index.ts";
import { februaries } from "../draws/index.ts";
import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { DecadeLessInput } from "./index.ts";
import type { decadeLessRecord } from "./record.ts";

export const examples: Examples<typeof decadeLessRecord, DecadeLessInput> = {
  "one-left": {
    code: "7",
    candidates: februaries(1957, 1967, 1977),
    facts: [{ first: dayOf(1960, 1, 1), last: dayOf(1970, 1, 1) }],
  },
  "none-left": { code: "7", candidates: februaries(1957, 1967), facts: [yearRange(1970)] },
  "claim-not-among": { code: "7", candidates: februaries(1957, 1967), facts: [], claimed: [yearRange(1969)] },
  "several-left": { code: "7", candidates: februaries(1957, 1967), facts: [], claimed: [yearRange(1967)] },
};

export const trueClaims: TrueClaims<DecadeLessInput> = "no-figures";

export const growth: Growth<DecadeLessInput> = "no-figures";
