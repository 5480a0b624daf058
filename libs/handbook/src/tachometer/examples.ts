import { estimate } from "@evenhand/measurement/estimate";
import { between } from "../draws/index.ts";
import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { TachometerInput } from "./index.ts";
import type { tachometerRecord } from "./record.ts";

export const examples: Examples<typeof tachometerRecord, TachometerInput> = {
  within: { indicated: estimate(2550, 20), measured: estimate(2480, 6) },
  "reads-high": { indicated: estimate(2900, 20), measured: estimate(2400, 6) },
  "reads-low": { indicated: estimate(2000, 20), measured: estimate(2400, 6) },
  "range-covers": { indicated: estimate(2650, 40), measured: estimate(2400, 6) },
  "too-slow": { indicated: estimate(900, 20), measured: estimate(700, 6) },
};

export const trueClaims: TrueClaims<TachometerInput> = {
  "tachometer 10 % high": (read) => ({ indicated: read(2640, 20), measured: read(2400, 10) }),
};

export const growth: Growth<TachometerInput> = {
  numbers: (n, u) => ({
    indicated: between(n, 0, 2000, 2800, u),
    measured: between(n, 1, 2200, 2600, u),
  }),
};
