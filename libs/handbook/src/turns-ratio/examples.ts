import { estimate } from "@evenhand/measurement/estimate";
import { between } from "../draws/index.ts";
import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { TurnsRatioInput } from "./index.ts";
import type { turnsRatioRecord } from "./record.ts";
const makers = [3.23, 3.58, 3.73];

export const examples: Examples<typeof turnsRatioRecord, TurnsRatioInput> = {
  "claimed-ratio": {
    shaftTurns: estimate(17.9, 0.05),
    wheelTurns: 10,
    wheels: "one-held",
    claimed: 3.58,
    makers,
  },
  "other-ratio": { shaftTurns: estimate(32.3, 0.05), wheelTurns: 10, wheels: "both", claimed: 3.58, makers },
  "cannot-separate": { shaftTurns: estimate(3.6, 0.1), wheelTurns: 1, wheels: "both", claimed: 3.58, makers },
  "perhaps-doubled": { shaftTurns: estimate(3.55, 0.02), wheelTurns: 1, wheels: "one-held", claimed: 3.58 },
  "no-claim": { shaftTurns: estimate(32.3, 0.05), wheelTurns: 10, wheels: "both" },
};

export const trueClaims: TrueClaims<TurnsRatioInput> = {
  "axle by turning": (read) => ({
    shaftTurns: read(1.79, 0.03),
    wheelTurns: 1,
    wheels: "one-held",
    claimed: 3.58,
  }),
};

export const growth: Growth<TurnsRatioInput> = {
  numbers: (n, u) => ({
    shaftTurns: between(n, 0, 2.8, 4.2, u),
    wheelTurns: 1,
    wheels: "both",
    claimed: 3.58,
    makers: [3.23, 3.58, 3.73],
  }),
};
