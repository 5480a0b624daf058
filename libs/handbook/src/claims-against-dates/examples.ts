import { februaries, inMonth, onDay } from "../draws/index.ts";
import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { ClaimsAgainstDatesInput } from "./index.ts";
import type { claimsAgainstDatesRecord } from "./record.ts";

const built = onDay(1967, 3, 20);

export const examples: Examples<typeof claimsAgainstDatesRecord, ClaimsAgainstDatesInput> = {
  "no-contradiction": { claim: "original", built, dates: [onDay(1967, 2, 1)] },
  "new-but-old": { claim: "new", stated: onDay(2026, 5, 4), dates: [inMonth(2021, 3)] },
  "older-than-claimed": {
    claim: "at-most-years",
    years: 3,
    stated: onDay(2026, 5, 4),
    dates: [inMonth(2021, 3)],
  },
  "original-but-later": { claim: "original", built, dates: [onDay(1967, 2, 1), onDay(1971, 2, 1)] },
  "untouched-but-later": { claim: "untouched", built, dates: [onDay(1988, 2, 1)] },
  "fitted-before-made": { claim: "fitted-with-bill", document: onDay(2015, 6, 1), dates: [inMonth(2018, 2)] },
  "pictured-before-made": {
    claim: "seen-in-photograph",
    document: onDay(2015, 6, 1),
    dates: [inMonth(2018, 2)],
  },
  "some-readings": { claim: "original", built, dates: [februaries(1957, 1967, 1977)] },
  "too-few": { claim: "original", built, dates: [] },
};

export const trueClaims: TrueClaims<ClaimsAgainstDatesInput> = "no-figures";

export const growth: Growth<ClaimsAgainstDatesInput> = {
  dates: {
    "called original": (part, to) => ({ claim: "original", built: to, dates: [part] }),
    "called new": (part, stated) => ({ claim: "new", stated, dates: [part] }),
  },
};
