import type { Statistic } from "@evenhand/shared/comparison";
import { LEAST_ITEMS } from "@evenhand/measurement/agreement";
import type { Agreement } from "@evenhand/measurement/agreement";
import type { HodgesLehmann } from "@evenhand/measurement/hodges-lehmann";
import { coverageFactor } from "@evenhand/measurement/student-factor";
import { mean, sampleStandardDeviation } from "@evenhand/measurement/type-a";

/** Too few items to say. */
export const tooFew = (n: number, needed: number): Statistic => ({ state: "too-few", n, needed });

/**
 * A coefficient of agreement as a report gives it. Where every answer is the same grade nothing can be told from
 * chance, and at least one more item, otherwise graded, is needed.
 *
 * @example statisticOf(observedAgreement(counts)) // { state: "known", n: 24, estimate: 0.83, … }
 */
export const statisticOf = (agreement: Agreement): Statistic => {
  if (agreement.kind === "tooFew") return tooFew(agreement.items, agreement.least);
  if (agreement.kind === "noVariation") return tooFew(agreement.items, agreement.items + 1);
  const { items, coefficient, standardError, low, high } = agreement;
  return { state: "known", n: items, estimate: coefficient, standardError, low, high };
};

/**
 * A mean with Student's interval; ten items are the least.
 *
 * @example meanStatistic([]) // { state: "too-few", n: 0, needed: 10 }
 */
export const meanStatistic = (values: readonly number[]): Statistic => {
  const n = values.length;
  if (n < LEAST_ITEMS) return tooFew(n, LEAST_ITEMS);
  const estimate = mean(values);
  const standardError = sampleStandardDeviation(values) / Math.sqrt(n);
  const reach = coverageFactor(n - 1) * standardError;
  return { state: "known", n, estimate, standardError, low: estimate - reach, high: estimate + reach };
};

/**
 * A Hodges–Lehmann shift with its interval; ten items are the least. It has no standard error of its own.
 *
 * @example shiftStatistic({ kind: "tooFew", items: 3, least: 6 }) // { state: "too-few", n: 3, needed: 10 }
 */
export const shiftStatistic = (shift: HodgesLehmann): Statistic =>
  shift.kind === "tooFew" || shift.items < LEAST_ITEMS
    ? tooFew(shift.items, LEAST_ITEMS)
    : {
        state: "known",
        n: shift.items,
        estimate: shift.shift,
        standardError: null,
        low: shift.low,
        high: shift.high,
      };
