/** Square, one row and column a category. */
export type Matrix = readonly (readonly number[])[];

/**
 * How much a pair of categories counts as agreement, 1 being full:
 *
 * - `unweighted`: 1 for the same category, else 0
 * - `linear`: 1 − |i − j|/(q − 1) (Cicchetti and Allison 1971)
 * - `quadratic`: 1 − (i − j)²/(q − 1)² (Fleiss and Cohen 1973)
 * - a matrix of one's own, of agreement (1 is full) or of disagreement (0 is none)
 */
export type AgreementWeights =
  "unweighted" | "linear" | "quadratic" | { readonly agreement: Matrix } | { readonly disagreement: Matrix };

const spread = (categories: number, weight: (share: number) => number): Matrix =>
  Array.from({ length: categories }, (_, i) =>
    Array.from({ length: categories }, (_unused, j) =>
      i === j ? 1 : weight(Math.abs(i - j) / (categories - 1)),
    ),
  );

const SPREADS = {
  unweighted: () => 0,
  linear: (share: number) => 1 - share,
  quadratic: (share: number) => 1 - share ** 2,
};

type Kept = readonly [kind: keyof typeof SPREADS, categories: number, made: Matrix];

/** By the kind and the number of categories, of which they are a function alone; grades of one scale are asked for again and again. */
const kept: Kept[] = [];
const MOST_KEPT = 64;

const spreadOf = (kind: keyof typeof SPREADS, categories: number): Matrix => {
  for (const [ofKind, ofSize, made] of kept) if (ofKind === kind && ofSize === categories) return made;
  const made = spread(categories, SPREADS[kind]);
  if (kept.length < MOST_KEPT) kept.push([kind, categories, made]);
  return made;
};

const checked = (matrix: Matrix, categories: number): Matrix => {
  if (matrix.length !== categories || matrix.some((row) => row.length !== categories)) {
    throw new RangeError(`The weights must be ${categories} by ${categories}.`);
  }
  return matrix;
};

/** Disagreement v becomes agreement 1 − v/max: kappa is the same, for it is unchanged by such a scaling. */
const fromDisagreement = (matrix: Matrix): Matrix => {
  const most = Math.max(...matrix.flat());
  if (!(most > 0)) throw new RangeError("Weights of disagreement must hold one above 0.");
  return matrix.map((row) => row.map((value) => 1 - value / most));
};

/**
 * The weights as a matrix of agreement.
 *
 * @param categories how many there are
 * @throws {RangeError} when a matrix has another size, or one of disagreement nowhere disagrees
 * @example agreementWeights("linear", 3) // [[1, 0.5, 0], [0.5, 1, 0.5], [0, 0.5, 1]]
 */
export const agreementWeights = (weights: AgreementWeights, categories: number): Matrix => {
  if (typeof weights === "string") return spreadOf(weights, categories);
  if ("agreement" in weights) return checked(weights.agreement, categories);
  return fromDisagreement(checked(weights.disagreement, categories));
};
