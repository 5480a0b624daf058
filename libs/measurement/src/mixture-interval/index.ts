import { ROUNDING_SHARE, classifyInterval } from "../equivalence/index.ts";
import { normalCdf, normalQuantile } from "../normal-distribution/index.ts";
import type { Ladder, PairScatter } from "../over-dispersion/index.ts";

/** A difference as the interval rule has it; all in one unit. */
export type DeclaredInterval = {
  readonly difference: number;
  readonly standardUncertainty: number;
  /** U = k·u, as declared. */
  readonly expandedUncertainty: number;
  readonly delta: number;
};

/** What an interval leaves out. */
const LEFT_OUT = 0.05;
/** What weights that add up to 1 may miss it by. */
const ROUNDING = 1e-12;
const NORMAL_FACTOR = normalQuantile(1 - LEFT_OUT / 2);

type Declared = Omit<DeclaredInterval, "difference">;

/** U of one rung: the declared factor k kept, u as wide as the rung has it. */
const expandedOn = (
  { standardUncertainty: u, expandedUncertainty, delta }: Declared,
  noise: number,
  dark: number,
): number => {
  if (dark === 0) return noise * expandedUncertainty;
  const factor = u === 0 ? NORMAL_FACTOR : expandedUncertainty / u;
  return factor * Math.sqrt((noise * u) ** 2 + (dark * delta) ** 2);
};

/** Whether more of a ladder's errors lie beyond ±distance than an interval leaves out; stops as soon as no rung can change it. */
const isExceeded = (distance: number, declared: Declared, ladder: Ladder): boolean => {
  let share = 0;
  let rest = 1;
  for (const { noise, dark, weight } of ladder) {
    const expanded = expandedOn(declared, noise, dark);
    if (expanded > 0) share += weight * 2 * normalCdf((-NORMAL_FACTOR * distance) / expanded);
    rest -= weight;
    if (share > LEFT_OUT) return true;
    if (share + rest <= LEFT_OUT - ROUNDING) return false;
  }
  return false;
};

/** Halvings after which an interval between the narrowest and the widest rung is as exact as a number can be. */
const HALVINGS = 60;

const expandedOver = (declared: Declared, ladder: Ladder): number => {
  const plausible = ladder.filter(({ weight }) => weight > 0);
  const sizes = plausible.map(({ noise, dark }) => expandedOn(declared, noise, dark));
  let [low, high] = [Math.min(...sizes), Math.max(...sizes)];
  for (let halving = 0; halving < HALVINGS && low < high; halving += 1) {
    const middle = (low + high) / 2;
    if (isExceeded(middle, declared, ladder)) low = middle;
    else high = middle;
  }
  return high;
};

/**
 * U of a reading as wide as this pair really scatters: ±U holds 95 % of the mixture of its rungs, Σ weight·N(0; U_rung/1.96), each rung
 * with the factor k of the declared U (Toman and Possolo 2009 for intervals from a mixture). The wider of the two explanations counts.
 * As declared it is the declared U, to the last digit.
 *
 * @example
 * mixtureExpandedUncertainty({ standardUncertainty: 1, expandedUncertainty: 1.96, delta: 4 }, AS_DECLARED) // 1.96
 * @example
 * mixtureExpandedUncertainty({ standardUncertainty: 1, expandedUncertainty: 1.96, delta: 4 }, {
 *   noisier: [{ noise: 1, dark: 0, weight: 0.5 }, { noise: 2, dark: 0, weight: 0.5 }],
 *   darker: [{ noise: 1, dark: 0, weight: 1 }],
 * }) // 3.299…
 */
export const mixtureExpandedUncertainty = (
  declared: Omit<DeclaredInterval, "difference">,
  { noisier, darker }: PairScatter,
): number => Math.max(expandedOver(declared, noisier), expandedOver(declared, darker));

/**
 * Whether an agree or a differ stands only if both people scatter as little as they declared: the same interval rule, with the
 * mixture's U, says something milder. What is neither is not asked. The rule itself is never changed by it.
 *
 * The mixture's U is not worked out for it: |Δ| + U ≤ δ is the same as "beyond δ − |Δ| lie at most 5 %".
 *
 * @throws {RangeError} when Δ is not a number, or U or δ is negative
 * @example
 * isOnlyAsDeclared({ difference: 2, standardUncertainty: 1, expandedUncertainty: 1.96, delta: 4 }, {
 *   noisier: [{ noise: 1, dark: 0, weight: 0.5 }, { noise: 2, dark: 0, weight: 0.5 }],
 *   darker: [{ noise: 1, dark: 0, weight: 1 }],
 * }) // true
 */
export const isOnlyAsDeclared = (interval: DeclaredInterval, { noisier, darker }: PairScatter): boolean => {
  const { difference, expandedUncertainty, delta } = interval;
  const outcome = classifyInterval(difference, expandedUncertainty, delta);
  if (outcome !== "agree" && outcome !== "differ") return false;
  const rounding = ROUNDING_SHARE * delta;
  const within = delta + rounding - Math.abs(difference);
  const distance = outcome === "agree" ? within : -within;
  return [noisier, darker].some((ladder) => ladder.length > 1 && isExceeded(distance, interval, ladder));
};
