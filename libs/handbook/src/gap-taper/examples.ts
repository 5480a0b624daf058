import { estimate } from "@evenhand/measurement/estimate";
import { between } from "../draws/index.ts";
import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { GapTaperInput } from "./index.ts";
import type { gapTaperRecord } from "./record.ts";

const ends = (top: number, bottom: number) => ({ top: estimate(top, 0.2), bottom: estimate(bottom, 0.2) });
const drawn = (n: readonly number[], index: number, u: number) => ({
  top: between(n, index, 2, 9, u),
  bottom: between(n, index + 1, 2, 9, u),
});

export const examples: Examples<typeof gapTaperRecord, GapTaperInput> = {
  even: { gaps: [{ gap: "fender to door", left: ends(4, 4.5), right: ends(4.2, 4.4) }] },
  tapers: { gaps: [{ gap: "fender to door", left: ends(4, 9) }] },
  "sides-differ": { gaps: [{ gap: "fender to door", left: ends(4, 4.5), right: ends(9, 9.4) }] },
  "range-covers": { gaps: [{ gap: "fender to door", left: ends(4, 7.1) }] },
  "too-few": { gaps: [] },
};

export const trueClaims: TrueClaims<GapTaperInput> = {
  "a gap that tapers exactly 3 mm": (read) => ({
    gaps: [{ gap: "door", left: { top: read(4, 0.3), bottom: read(7, 0.3) } }],
  }),
};

export const growth: Growth<GapTaperInput> = {
  numbers: (n, u) => ({ gaps: [{ gap: "door", left: drawn(n, 0, u), right: drawn(n, 2, u) }] }),
};
