import { LEAST_ITEMS, agreementFrom } from "../agreement/index.ts";
import type { Agreement, AgreementOptions } from "../agreement/index.ts";
import { proportions, sumOverCells } from "../agreement/table.ts";
import { agreementWeights } from "../agreement-weights/index.ts";
import type { AgreementWeights, Matrix } from "../agreement-weights/index.ts";
import { wilsonInterval } from "../proportion-interval/index.ts";

export type ObservedAgreementOptions = AgreementOptions & { readonly weights?: AgreementWeights };

/** On how many items both chose the same: counted, for a share times the number of items may come out above them all. */
const agreed = (counts: Matrix): number => counts.reduce((total, row, i) => total + (row[i] ?? 0), 0);

/**
 * Share of items on which two people agree, nothing taken off for chance. Unweighted, its interval is Wilson's;
 * weighted, it is the mean weight ± Student's factor times its standard error.
 *
 * @param counts one row a category of the first person, one column a category of the second
 * @returns `tooFew` under ten items unless `least` says otherwise
 * @throws {RangeError} when the table is not square or holds a negative count
 * @example
 * observedAgreement([[20, 5], [10, 15]]) // { kind: "estimated", coefficient: 0.7, low: 0.562…, … }
 */
export const observedAgreement = (counts: Matrix, options: ObservedAgreementOptions = {}): Agreement => {
  const { weights: chosen = "unweighted", confidence = 0.95, least = LEAST_ITEMS } = options;
  const { items, cells } = proportions(counts);
  if (items < least) return { kind: "tooFew", items, least };
  const weights = agreementWeights(chosen, counts.length);
  const observed = sumOverCells(cells, (cell, i, j) => cell * (weights[i]?.[j] ?? 0));
  const squares = sumOverCells(cells, (cell, i, j) => cell * ((weights[i]?.[j] ?? 0) - observed) ** 2);
  const figures = {
    coefficient: observed,
    standardError: Math.sqrt(squares / (items - 1)),
    observed,
    expected: 0,
    items,
  };
  const estimated = agreementFrom(figures, confidence, items - 1);
  if (chosen !== "unweighted") return { ...estimated, low: Math.max(0, estimated.low) };
  return { ...estimated, ...wilsonInterval(agreed(counts), items, confidence) };
};
