import { estimate } from "@evenhand/measurement/estimate";
import { between } from "../draws/index.ts";
import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import { exactly } from "../interval/index.ts";
import type { SpeedometerInput } from "./index.ts";
import type { speedometerRecord } from "./record.ts";

export const examples: Examples<typeof speedometerRecord, SpeedometerInput> = {
  within: { indicated: estimate(61, 0.3), satellite: estimate(60, 0.1) },
  "reads-high": {
    indicated: estimate(69, 0.3),
    satellite: estimate(60, 0.1),
    fittedDiameter: exactly(25),
  },
  "reads-low": { indicated: estimate(51, 0.3), satellite: estimate(60, 0.1) },
  "range-covers": { indicated: estimate(66, 0.5), satellite: estimate(60, 0.1) },
  "too-slow": { indicated: estimate(10, 0.5), satellite: estimate(10, 0.1) },
};

export const trueClaims: TrueClaims<SpeedometerInput> = {
  "speedometer 10 % high": (read) => ({ indicated: read(66, 0.4), satellite: read(60, 0.2) }),
};

export const growth: Growth<SpeedometerInput> = {
  numbers: (n, u) => ({ indicated: between(n, 0, 50, 70, u), satellite: between(n, 1, 55, 65, u) }),
};
