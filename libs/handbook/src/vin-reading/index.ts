import type { RuleResult } from "@evenhand/shared/cross-check";
import { hasRightCheckDigit } from "../check-digit/index.ts";
import { misreading, normalizeVin } from "../identifier-text/index.ts";
import { findOutsideReason } from "../vin-form/index.ts";
import type { Market } from "../vin-form/index.ts";
import { vinReadingRecord } from "./record.ts";

export type VinReadingInput = {
  readonly first: string;
  readonly second: string;
  readonly market: Market;
  readonly modelYear?: number;
};

/**
 * Which of two readings of a VIN is right, where they are one look-alike or one exchange of neighbors apart: the
 * one whose check digit passes. Where the two are farther apart this says nothing.
 *
 * Source: 49 CFR 565.15.
 *
 * @example
 * vinReading({ first: "0EVTL82633A007146", second: "0EVTL8Z633A007146", market: "north-america" }).reason
 * // "second-misread"
 */
export const vinReading = (input: VinReadingInput): RuleResult => {
  const [first, second] = [normalizeVin(input.first), normalizeVin(input.second)];
  const words = { first, second };
  const apart = misreading(first, second);
  if (apart === "same") return vinReadingRecord.answer("same", { words });
  if (apart === "other") return vinReadingRecord.answer("not-a-misreading", { words });
  if (findOutsideReason(input) !== undefined || first.length !== 17) {
    return vinReadingRecord.answer("outside-the-rule", { words });
  }
  const [firstPasses, secondPasses] = [hasRightCheckDigit(first), hasRightCheckDigit(second)];
  if (firstPasses === secondPasses) {
    return vinReadingRecord.answer(firstPasses ? "both-pass" : "neither-passes", { words });
  }
  return firstPasses
    ? vinReadingRecord.answer("second-misread", { words: { ...words, right: first, wrong: second } })
    : vinReadingRecord.answer("first-misread", { words: { ...words, right: second, wrong: first } });
};
