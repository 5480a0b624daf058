import type { RuleResult } from "@evenhand/shared/cross-check";
import { normalizeVin } from "../identifier-text/index.ts";
import { figure } from "../rule-result/index.ts";
import { findOutsideReason } from "../vin-form/index.ts";
import type { Market } from "../vin-form/index.ts";
import { vinYearRecord } from "./record.ts";

/** Year characters from 1980 on; I, O, Q, U, Z and 0 are never used (49 CFR 565.15 table VII). */
const YEAR_CHARACTERS = "ABCDEFGHJKLMNPRSTVWXY123456789";
const FIRST_YEAR = 1980;

/**
 * The model years a VIN's tenth character can mean, from 1980 to 2039. For cars, multipurpose vehicles and
 * light trucks position 7 tells the cycle: a digit to 2009, a letter from 2010 (49 CFR 565.15(b), from memory).
 *
 * @param vin 17 characters, capitals
 * @param kind `"other"` for heavy vehicles, whose position 7 tells nothing
 * @returns no year where the character is none
 * @example vinYears("1M8GDM9AXKP042788", "car") // [1989]
 */
export const vinYears = (vin: string, kind: "car" | "other"): number[] => {
  const index = YEAR_CHARACTERS.indexOf(vin[9] ?? " ");
  if (index < 0) return [];
  const early = FIRST_YEAR + index;
  const late = early + YEAR_CHARACTERS.length;
  if (kind === "other") return [early, late];
  return [/\d/.test(vin[6] ?? "") ? early : late];
};

export type VinYearInput = {
  readonly vin: string;
  readonly market: Market;
  readonly kind: "car" | "other";
  readonly claimedYear: number;
  /** One person read it, once: what is wrong with it may be the reading. */
  readonly readOnce?: boolean;
};

/**
 * Model year in the VIN against the one claimed. A number that was read once is to be read again before anything is made of it.
 *
 * Source: 49 CFR 565.15 (position 10, cycle by position 7).
 *
 * @example
 * vinYear({ vin: "0EVTL82633A007146", market: "north-america", kind: "car", claimedYear: 2003 }).reason
 * // "same-year"
 */
export const vinYear = (input: VinYearInput): RuleResult => {
  const vin = normalizeVin(input.vin);
  const figures = { claimed: figure(input.claimedYear, "a") };
  // A VIN of 17 characters carries a year even where the claim says the car is too old to have one.
  const modelYear = vin.length === 17 ? undefined : input.claimedYear;
  const outside = findOutsideReason({ market: input.market, modelYear });
  if (outside !== undefined) return vinYearRecord.answer(outside, { words: { vin }, figures });
  if (vin.length !== 17) return vinYearRecord.answer("not-seventeen", { words: { vin }, figures });
  const years = vinYears(vin, input.kind);
  const detail = { words: { vin, character: vin[9] ?? "" }, figures, alternatives: years.map(String) };
  if (!years.includes(input.claimedYear)) {
    if (input.readOnce === true) return vinYearRecord.answer("read-again", detail);
    return vinYearRecord.answer(years.length === 0 ? "year-character" : "other-year", detail);
  }
  return vinYearRecord.answer(years.length === 1 ? "same-year" : "either-cycle", detail);
};
