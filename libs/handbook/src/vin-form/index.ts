import type { RuleResult } from "@evenhand/shared/cross-check";
import { findCheckDigit, findWeightedSum } from "../check-digit/index.ts";
import { normalizeNumber } from "../identifier-text/index.ts";
import { figure } from "../rule-result/index.ts";
import { vinFormRecord } from "./record.ts";

export type Market = "north-america" | "other" | "unknown";

export type VinFormInput = {
  readonly vin: string;
  readonly market: Market;
  /** Model year, where it is known from elsewhere. */
  readonly modelYear?: number;
  /** One person read it, once: what is wrong with it may be the reading. */
  readonly readOnce?: boolean;
};

type Fault = "length" | "characters" | "check-digit";

/**
 * Why 49 CFR 565 says nothing of a number, if so: before 1981, or not built for North America, or not known to be.
 */
export const findOutsideReason = ({ market, modelYear }: Pick<VinFormInput, "market" | "modelYear">) => {
  if (modelYear !== undefined && modelYear < vinFormRecord.limit("vin.first-year").value)
    return "before-1981";
  if (market === "other") return "other-market";
  return market === "unknown" ? "market-unknown" : undefined;
};

/**
 * VIN form and check digit. Only numbers of cars built for North America from 1981 on are judged; where the
 * year is not known, a number that is not of 17 characters is not judged either. A number that was read once is to be read again
 * before anything is made of it.
 *
 * Source: 49 CFR 565.15 (characters, weights, remainder on division by 11).
 *
 * @example vinForm({ vin: "1G4AH59H45G118341", market: "north-america", modelYear: 2005 }).reason // "passes"
 */
export const vinForm = (input: VinFormInput): RuleResult => {
  const vin = normalizeNumber(input.vin);
  const words: Record<string, string> = { vin };
  const outside = findOutsideReason(input);
  if (outside !== undefined) return vinFormRecord.answer(outside, { words });
  const figures = { length: figure(vin.length) };
  const fault = (reason: Fault) => (input.readOnce === true ? "read-again" : reason);
  if (vin.length !== 17) {
    const reason = input.modelYear === undefined ? "year-unknown" : fault("length");
    return vinFormRecord.answer(reason, { words, figures });
  }
  const [sum, expected] = [findWeightedSum(vin), findCheckDigit(vin)];
  if (sum === undefined || expected === undefined) {
    return vinFormRecord.answer(fault("characters"), {
      words: { ...words, wrong: vin.replaceAll(/[A-HJ-NPR-Z0-9]/g, "") },
      figures,
    });
  }
  const carried = vin[8] ?? "";
  return vinFormRecord.answer(carried === expected ? "passes" : fault("check-digit"), {
    words: { ...words, carried, expected },
    figures: { ...figures, weightedSum: figure(sum) },
  });
};
