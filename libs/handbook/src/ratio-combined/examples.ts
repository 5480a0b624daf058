import { estimate } from "@evenhand/measurement/estimate";
import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { RatioCombinedInput } from "./index.ts";
import type { ratioCombinedRecord } from "./record.ts";

const makers = [3.23, 3.58, 3.73];

export const examples: Examples<typeof ratioCombinedRecord, RatioCombinedInput> = {
  "claimed-ratio": {
    ways: [
      { way: "tag", ratio: estimate(3.58, 0.003) },
      { way: "turns", ratio: estimate(3.6, 0.03) },
    ],
    claimed: 3.58,
    makers,
  },
  "other-ratio": {
    ways: [
      { way: "road", ratio: estimate(3.2, 0.05) },
      { way: "turns", ratio: estimate(3.25, 0.03) },
    ],
    claimed: 3.58,
    makers,
  },
  "cannot-separate": {
    ways: [
      { way: "road", ratio: estimate(3.62, 0.1) },
      { way: "turns", ratio: estimate(3.65, 0.1) },
    ],
    claimed: 3.58,
    makers,
  },
  "no-claim": {
    ways: [
      { way: "road", ratio: estimate(3.2, 0.05) },
      { way: "turns", ratio: estimate(3.25, 0.03) },
    ],
  },
  "ways-disagree": {
    ways: [
      { way: "tag", ratio: estimate(3.58, 0.003) },
      { way: "road", ratio: estimate(3.2, 0.05) },
    ],
    claimed: 3.58,
  },
  "too-few": { ways: [], claimed: 3.58 },
};

export const trueClaims: TrueClaims<RatioCombinedInput> = {
  "axle, two ways together": (read) => ({
    ways: [
      { way: "turns", ratio: read(3.58, 0.08) },
      { way: "road", ratio: read(3.58, 0.06) },
    ],
    claimed: 3.58,
  }),
};

export const growth: Growth<RatioCombinedInput> = "no-figures";
