import { estimate } from "@evenhand/measurement/estimate";
import { between } from "../draws/index.ts";
import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { SquareInput } from "./index.ts";
import type { squareRecord } from "./record.ts";

export const examples: Examples<typeof squareRecord, SquareInput> = {
  square: { wheelbase: [estimate(2743, 0.7), estimate(2744, 0.7)] },
  "wheelbase-differs": { wheelbase: [estimate(2743, 0.7), estimate(2729, 0.7)] },
  "diagonals-differ": { diagonals: [estimate(3100, 0.7), estimate(3114, 0.7)] },
  "range-covers": { diagonals: [estimate(3100, 0.7), estimate(3106, 0.7)] },
  "too-few": {},
};

export const trueClaims: TrueClaims<SquareInput> = {
  "wheelbase exactly 6 mm apart": (read) => ({ wheelbase: [read(2743, 1.5), read(2749, 1.5)] }),
};

export const growth: Growth<SquareInput> = {
  numbers: (n, u) => ({
    wheelbase: [between(n, 0, 2700, 2712, u), between(n, 1, 2700, 2712, u)],
    diagonals: [between(n, 2, 3100, 3112, u), between(n, 3, 3100, 3112, u)],
  }),
};
