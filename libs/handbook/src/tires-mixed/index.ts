import { listed } from "@evenhand/message/listed";
import type { RuleResult } from "@evenhand/shared/cross-check";
import { judge, productOf } from "../interval/index.ts";
import { findTireSize } from "../tire-size/index.ts";
import type { Construction, TireSize } from "../tire-size/index.ts";
import { tiresMixedRecord } from "./record.ts";
import { resultMessages } from "../result-words/index.ts";

export type FittedTire = { readonly size?: string; readonly construction?: Construction };
export type TiresMixedInput = {
  readonly leftFront?: FittedTire;
  readonly rightFront?: FittedTire;
  readonly leftRear?: FittedTire;
  readonly rightRear?: FittedTire;
};

type Tire = {
  /** Its size as it was written, and as it is read. */
  readonly written: string | undefined;
  readonly size: TireSize | undefined;
  readonly construction: Construction | undefined;
};
type Axle = readonly [Tire, Tire];

/** Sizes of two systems are called equivalent where their diameters cannot be told apart by this share. */
const EQUIVALENT_SHARE = 0.03;

const tireOf = (fitted: FittedTire | undefined): Tire => {
  const size = fitted?.size === undefined ? undefined : findTireSize(fitted.size);
  return { written: fitted?.size, size, construction: fitted?.construction ?? size?.construction };
};

const tireText = (tire: FittedTire | undefined): string =>
  listed([
    tire?.size ?? resultMessages.say("size-not-known"),
    tire?.construction ?? resultMessages.say("construction-not-known"),
  ]);

const differ = <T>(a: T | undefined, b: T | undefined): boolean =>
  a !== undefined && b !== undefined && a !== b;

/** Whether two sizes that are not the same are one by a table of equivalents: advice, never a fault. */
const equivalent = (a: TireSize, b: TireSize): boolean => {
  const stated = a.diameter.standardUncertainty === 0 && b.diameter.standardUncertainty === 0;
  const ratio = productOf(1, [
    [a.diameter, 1],
    [b.diameter, -1],
  ]);
  return (
    !stated &&
    a.rim === b.rim &&
    judge(ratio, { low: 1 - EQUIVALENT_SHARE, high: 1 + EQUIVALENT_SHARE }) !== "breaks"
  );
};

const sizesOf = ([left, right]: Axle) => {
  if (left.size === undefined || right.size === undefined || left.size.key === right.size.key) return "same";
  return equivalent(left.size, right.size) ? "equivalent" : "differ";
};

const findMixture = (front: Axle, rear: Axle) => {
  const biasRear = rear.some(({ construction }) => construction === "bias" || construction === "bias-belted");
  if (biasRear && front.some(({ construction }) => construction === "radial"))
    return "radial-front-bias-rear";
  const axles = [front, rear];
  if (axles.some(([left, right]) => differ(left.construction, right.construction)))
    return "constructions-differ";
  return axles.some((axle) => sizesOf(axle) === "differ") ? "sizes-differ" : undefined;
};

/**
 * Tires mixed: one size and construction on an axle, and never radial tires in front of bias tires. Two writings
 * of one size count as the same; a size another system calls equivalent is left undecided.
 *
 * Source: common practice, no source (49 CFR 570.9 asks the same of an axle, from memory).
 *
 * @example
 * tiresMixed({ leftFront: { construction: "radial" }, rightRear: { construction: "bias" } }).reason
 * // "radial-front-bias-rear"
 */
export const tiresMixed = (input: TiresMixedInput): RuleResult => {
  const { leftFront, rightFront, leftRear, rightRear } = input;
  const [front, rear]: [Axle, Axle] = [
    [tireOf(leftFront), tireOf(rightFront)],
    [tireOf(leftRear), tireOf(rightRear)],
  ];
  const words = {
    leftFront: tireText(leftFront),
    rightFront: tireText(rightFront),
    leftRear: tireText(leftRear),
    rightRear: tireText(rightRear),
  };
  const mixture = findMixture(front, rear);
  if (mixture !== undefined) return tiresMixedRecord.answer(mixture, { words });
  const all = [...front, ...rear];
  if (all.some(({ written, size }) => written !== undefined && size === undefined))
    return tiresMixedRecord.answer("size-unreadable", { words });
  if (all.some(({ size, construction }) => size === undefined || construction === undefined)) {
    return tiresMixedRecord.answer("not-all-known", { words });
  }
  const advised = [front, rear].some((axle) => sizesOf(axle) === "equivalent");
  return tiresMixedRecord.answer(advised ? "equivalent-sizes" : "matched", { words });
};
