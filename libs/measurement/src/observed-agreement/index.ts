import { LEAST_ITEMS } from "../agreement/index.ts";
import type { Agreement, AgreementOptions } from "../agreement/index.ts";
import { proportions, sumOverCells } from "../agreement/table.ts";
import { agreementWeights } from "../agreement-weights/index.ts";
import type { AgreementWeights, Matrix } from "../agreement-weights/index.ts";
import { wilsonInterval } from "../proportion-interval/index.ts";

export type ObservedAgreementOptions = AgreementOptions & { readonly weights?: AgreementWeights };

/**
 * Share of items on which two people agree, nothing taken off for chance, with Wilson's interval. Weighted, the share is
 * the mean weight, and the interval if anything too wide: no mean of values between 0 and 1 scatters more than a share.
 *
 * @param counts one row a category of the first person, one column a category of the second
 * @returns `tooFew` under ten items unless `least` says otherwise
 * @throws {RangeError} when the table is not square, holds a negative count, or a weight is over 1
 * @example
 * observedAgreement([[20, 5], [10, 15]]) // { kind: "estimated", coefficient: 0.7, low: 0.562…, … }
 */
export const observedAgreement = (counts: Matrix, options: ObservedAgreementOptions = {}): Agreement => {
  const { weights: chosen = "unweighted", confidence = 0.95, least = LEAST_ITEMS } = options;
  const { items, cells } = proportions(counts);
  if (items < least) return { kind: "tooFew", items, least };
  const weights = agreementWeights(chosen, counts.length);
  // Counted, for a share times the number of items may come out above them all.
  const agreed = sumOverCells(counts, (count, i, j) => count * (weights[i]?.[j] ?? 0));
  const observed = agreed / items;
  const squares = sumOverCells(cells, (cell, i, j) => cell * ((weights[i]?.[j] ?? 0) - observed) ** 2);
  return {
    kind: "estimated",
    coefficient: observed,
    standardError: Math.sqrt(squares / (items - 1)),
    ...wilsonInterval(agreed, items, confidence),
    observed,
    expected: 0,
    items,
  };
};
