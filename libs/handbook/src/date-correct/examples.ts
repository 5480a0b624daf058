import { februaries, onDay } from "../draws/index.ts";
import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { DateCorrectInput } from "./index.ts";
import type { dateCorrectRecord } from "./record.ts";

const built = onDay(1967, 3, 20);

export const examples: Examples<typeof dateCorrectRecord, DateCorrectInput> = {
  usual: { part: onDay(1967, 2, 15), built },
  plausible: { part: onDay(1966, 12, 15), built },
  "low-volume": { part: onDay(1966, 6, 15), built, lowVolume: true },
  "after-build": { part: onDay(1967, 6, 15), built },
  "too-early": { part: onDay(1965, 6, 15), built },
  "fits-nowhere": { part: februaries(1956, 1976), built },
  "low-volume-only": { part: onDay(1966, 6, 15), built },
  "some-readings": { part: februaries(1957, 1967, 1977), built },
  "too-few": { part: [], built },
};

export const trueClaims: TrueClaims<DateCorrectInput> = "no-figures";

export const growth: Growth<DateCorrectInput> = {
  dates: {
    "date correct": (part, to) => ({ part, built: to }),
    "date correct, low volume": (part, to) => ({ part, built: to, lowVolume: true }),
  },
};
