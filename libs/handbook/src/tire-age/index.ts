import { listed } from "@evenhand/message/listed";
import type { FirmLimits, RuleResult, Verdict } from "@evenhand/shared/cross-check";
import { dateText, DAYS_A_YEAR, yearOf } from "../day/index.ts";
import type { DateSet } from "../day/index.ts";
import { judgeSpan } from "../interval/index.ts";
import type { Span } from "../interval/index.ts";
import { endsInDate, tireDate } from "../tire-identification/index.ts";
import { tireAgeRecord } from "./record.ts";

export type TireAgeInput = { readonly number: string; readonly visit: number };

const agesOf = (dates: DateSet, visit: number): Span[] =>
  dates.map(({ first, last }) => ({
    low: (visit - last) / DAYS_A_YEAR,
    high: (visit - first) / DAYS_A_YEAR,
  }));

const reasonOf = (ages: readonly Span[], caution: number, replace: number) => {
  /** Ages at the limit itself are not under it. */
  const under = (limit: number): Verdict => {
    if (ages.every(({ high }) => high < limit)) return "holds";
    return ages.every((age) => judgeSpan(age, { low: limit }) === "holds") ? "breaks" : "cannot-tell";
  };
  if (under(replace) === "breaks") return "replace-age";
  if (under(caution) === "breaks") return "caution-age";
  return under(caution) === "holds" ? "young" : "some-readings";
};

/**
 * Age of a tire on the day of the visit, by its identification number, over every date the number can mean.
 * From the caution age on the rule breaks; the reason says which age was reached for certain.
 *
 * Source: 49 CFR 574.5 for the code; the ages are common practice, no source.
 *
 * @param input.visit day number of the visit
 * @example tireAge({ number: "2501", visit: dayOf(2026, 5, 4) }).reason // "replace-age"
 */
export const tireAge = ({ number, visit }: TireAgeInput, firm: FirmLimits = {}): RuleResult => {
  const [caution, replace] = [
    tireAgeRecord.limit("tire-age.caution-years", firm),
    tireAgeRecord.limit("tire-age.replace-years", firm),
  ];
  const limits = [caution, replace];
  const { dates } = tireDate(number, visit);
  const words = {
    number,
    made: dateText(dates),
    years: listed(
      dates.map(({ first }) => String(yearOf(first))),
      "or",
    ),
  };
  if (dates.length === 0) {
    return tireAgeRecord.answer(endsInDate(number) ? "after-the-visit" : "not-a-date", {
      words: { number },
      limits,
    });
  }
  const ages = agesOf(dates, visit);
  const age = {
    low: Math.min(...ages.map(({ low }) => low)),
    high: Math.max(...ages.map(({ high }) => high)),
    unit: "a",
  };
  return tireAgeRecord.answer(reasonOf(ages, caution.value, replace.value), {
    words,
    ranges: { age },
    limits,
    alternatives: dates.length > 1 ? dates.map(({ first }) => String(yearOf(first))) : [],
  });
};
