import { LEAST_ITEMS, agreementFrom, tooAlike } from "../agreement/index.ts";
import type { Agreement, AgreementOptions, EstimatedAgreement } from "../agreement/index.ts";
import type { ChanceInterval } from "../agreement/chance-interval.ts";
import { contributions, proportions, sumOfProducts } from "../agreement/table.ts";
import type { Proportions } from "../agreement/table.ts";
import { agreementWeights } from "../agreement-weights/index.ts";
import type { AgreementWeights, Matrix } from "../agreement-weights/index.ts";

export type CohenKappaOptions = AgreementOptions & { readonly weights?: AgreementWeights };

/** With the standard error to be used when asking whether agreement is no better than chance. */
export type EstimatedKappa = EstimatedAgreement & { readonly nullStandardError: number; readonly z: number };

export type CohenKappa = EstimatedKappa | Exclude<Agreement, EstimatedAgreement>;

const at = (values: readonly number[] | undefined, index: number): number => values?.[index] ?? 0;

/** For each pair, the weight a row's category has on average and a column's category has, added up. */
const marginalWeights = ({ rows, columns }: Proportions, weights: Matrix): number[][] => {
  const ofRow = weights.map((row) => row.reduce((total, weight, j) => total + weight * at(columns, j), 0));
  const ofColumn = columns.map((_, j) =>
    weights.reduce((total, row, i) => total + at(row, j) * at(rows, i), 0),
  );
  return ofRow.map((one) => ofColumn.map((other) => one + other));
};

/** Agreement that chance would give with each person's own shares. */
const expectedOf = ({ rows, columns }: Proportions, weights: Matrix): number => {
  let expected = 0;
  for (let i = 0; i < weights.length; i += 1) {
    for (let j = 0; j < columns.length; j += 1) expected += at(weights[i], j) * at(rows, i) * at(columns, j);
  }
  return expected;
};

/** Standard errors of Fleiss, Cohen and Everitt (1969), equations 8 (null) and 13 (asymptotic), numbers from memory. */
const standardErrors = (
  { cells, rows, columns, items }: Proportions,
  weights: Matrix,
  marginal: Matrix,
  { kappa, expected }: { readonly kappa: number; readonly expected: number },
) => {
  let [seen, byChance] = [0, 0];
  for (let i = 0; i < cells.length; i += 1) {
    for (let j = 0; j < cells.length; j += 1) {
      const weight = at(weights[i], j);
      const both = at(marginal[i], j);
      seen += at(cells[i], j) * (weight - both * (1 - kappa)) ** 2;
      byChance += at(rows, i) * at(columns, j) * (weight - both) ** 2;
    }
  }
  const scale = 1 / (items * (1 - expected) ** 2);
  // Full agreement leaves nothing but rounding, which must not come out below 0.
  return {
    standardError: Math.sqrt(scale * Math.max(0, seen - (kappa - expected * (1 - kappa)) ** 2)),
    nullStandardError: Math.sqrt(scale * Math.max(0, byChance - expected ** 2)),
  };
};

/** What the interval is made of: chance answers with each person's own shares. */
const intervalOf = (
  table: Proportions,
  weights: Matrix,
  marginal: Matrix,
  expected: number,
): ChanceInterval => {
  const chance = marginal.map((row) => row.map((both) => -both));
  const counts = table.cells.map((row) => row.map((cell) => cell * table.items));
  const shares = table.rows.map((row) => table.columns.map((column) => row * column));
  return {
    items: contributions(counts, weights, chance),
    atChance: contributions(shares, weights, chance),
    expectedDisagreement: 1 - expected,
    degreesOfFreedom: table.items - 1,
  };
};

/**
 * Cohen's kappa of two people over the same items: agreement beyond what their own shares would give by
 * chance, (p_o − p_e)/(1 − p_e), unweighted (Cohen 1960) or weighted (Cohen 1968). Its asymptotic standard
 * error and the one under no agreement are those of Fleiss, Cohen and Everitt (1969); the interval is `chanceInterval`'s,
 * since kappa ± 1.96 standard errors holds the true kappa of ten items in about three cases of four only.
 *
 * @param counts one row a category of the first person, one column a category of the second
 * @returns `tooFew` under ten items unless `least` says otherwise, or where they are too much alike; `noVariation` when
 *   chance agrees fully
 * @throws {RangeError} when the table is not square or holds a negative count
 * @example
 * cohenKappa([[20, 5], [10, 15]]) // { kind: "estimated", coefficient: 0.4, standardError: 0.1269…, … }
 */
export const cohenKappa = (counts: Matrix, options: CohenKappaOptions = {}): CohenKappa => {
  const { weights: chosen = "unweighted", confidence = 0.95, least = LEAST_ITEMS } = options;
  const table = proportions(counts);
  const { cells, rows, columns, items } = table;
  if (items < least) return { kind: "tooFew", items, least };
  const weights = agreementWeights(chosen, counts.length);
  const observed = sumOfProducts(cells, weights);
  const expected = expectedOf(table, weights);
  if (1 - expected < 1e-12) return { kind: "noVariation", items };
  const chance = 1 - rows.reduce((total, row, i) => total + row * at(columns, i), 0);
  const alike = tooAlike(items, chance, least);
  if (alike !== undefined) return alike;
  const kappa = (observed - expected) / (1 - expected);
  const marginal = marginalWeights(table, weights);
  const { standardError, nullStandardError } = standardErrors(table, weights, marginal, { kappa, expected });
  const figures = { coefficient: kappa, standardError, observed, expected, items };
  const estimated = agreementFrom(figures, intervalOf(table, weights, marginal, expected), confidence);
  return { ...estimated, nullStandardError, z: kappa / nullStandardError };
};
