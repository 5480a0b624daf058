import { februaries, onDay } from "../draws/index.ts";
import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { DateOrderInput } from "./index.ts";
import type { dateOrderRecord } from "./record.ts";

const built = onDay(1967, 3, 20);

export const examples: Examples<typeof dateOrderRecord, DateOrderInput> = {
  "in-order": { cast: onDay(1967, 1, 15), assembled: onDay(1967, 2, 3), built },
  "out-of-order": { cast: onDay(1967, 2, 15), assembled: onDay(1967, 2, 3), built },
  "some-readings": { cast: februaries(1957, 1967, 1977), built },
  "too-few": { built },
};

export const trueClaims: TrueClaims<DateOrderInput> = "no-figures";

export const growth: Growth<DateOrderInput> = {
  dates: { "date order": (cast, to) => ({ cast, built: to }) },
};
