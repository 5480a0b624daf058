import type { RuleResult } from "@evenhand/shared/cross-check";
import { misreading, normalizeNumber, normalizeVin } from "../identifier-text/index.ts";
import { numberEndsAlikeRecord } from "./record.ts";

export type NumberEndsAlikeInput = {
  readonly unit: "engine" | "gearbox";
  readonly stamp: string;
  readonly chassisNumber: string;
  /** The unit is said to have come with the car. */
  readonly saidToMatch: boolean;
  /** Both people read the stamp, or it was read twice. */
  readonly readTwice: boolean;
};

/** Serial numbers have at least this many digits. */
const LEAST = 4;
const MOST = 6;

/** The characters from the last run of digits on, as long as it may be: look-alike letters count as digits. */
const ending = (number: string): string => /[\dOISBZ]*$/.exec(number)?.[0] ?? "";

/**
 * The stamp on engine or gearbox against the last digits of the chassis number, where the maker's way is not entered. It breaks
 * only where the numbers are said to match and the stamp was read by both people, or twice.
 *
 * Source: common practice, no source.
 *
 * @example
 * numberEndsAlike({ unit: "engine", stamp: "R67 20871", chassisNumber: "TM467R20871", saidToMatch: true, readTwice: false }).reason
 * // "alike"
 */
export const numberEndsAlike = (input: NumberEndsAlikeInput): RuleResult => {
  const { unit, saidToMatch, readTwice } = input;
  const [stamp, number] = [normalizeNumber(input.stamp), normalizeVin(input.chassisNumber)];
  const detail = { words: { unit, stamp, number } };
  const length = Math.min(MOST, ending(stamp).length, ending(number).length);
  if (length < LEAST) return numberEndsAlikeRecord.answer("too-short", detail);
  const apart = misreading(stamp.slice(-length), number.slice(-length));
  if (apart === "same") return numberEndsAlikeRecord.answer("alike", detail);
  if (apart !== "other") return numberEndsAlikeRecord.answer("probably-misread", detail);
  if (!saidToMatch) return numberEndsAlikeRecord.answer("not-alike", detail);
  return numberEndsAlikeRecord.answer(readTwice ? "said-to-match" : "read-again", detail);
};
