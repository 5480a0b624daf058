import type { Examples, Growth, TrueClaims } from "../define-rule/index.ts";
import type { TiresMixedInput } from "./index.ts";
import type { tiresMixedRecord } from "./record.ts";

const radial = { construction: "radial", size: "205/75R15" } as const;
const bias = { construction: "bias", size: "G78-15" } as const;

export const examples: Examples<typeof tiresMixedRecord, TiresMixedInput> = {
  matched: {
    leftFront: radial,
    rightFront: { ...radial, size: "P205/75SR15" },
    leftRear: radial,
    rightRear: radial,
  },
  "radial-front-bias-rear": { leftFront: radial, rightFront: radial, leftRear: bias, rightRear: bias },
  "constructions-differ": {
    leftFront: bias,
    rightFront: bias,
    leftRear: radial,
    rightRear: { size: "G78-15", construction: "bias-belted" },
  },
  "sizes-differ": {
    leftFront: radial,
    rightFront: { ...radial, size: "215/75R15" },
    leftRear: radial,
    rightRear: radial,
  },
  "equivalent-sizes": {
    leftFront: bias,
    rightFront: { ...bias, size: "8.25-15" },
    leftRear: bias,
    rightRear: bias,
  },
  "size-unreadable": {
    leftFront: radial,
    rightFront: { ...radial, size: "big ones" },
    leftRear: radial,
    rightRear: radial,
  },
  "not-all-known": { leftFront: radial, rightFront: radial, leftRear: { size: "G78-15" } },
};

export const trueClaims: TrueClaims<TiresMixedInput> = "no-figures";

export const growth: Growth<TiresMixedInput> = "no-figures";
