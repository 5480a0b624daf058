import { coverageFactor } from "../student-factor/index.ts";

/** What one kind of item adds to a coefficient 1 − D/E of agreement. */
export type Contribution = {
  /** How many items are of this kind; may be a fraction. */
  readonly weight: number;
  /** How far the answers to it are apart; its mean over all items is D. */
  readonly disagreement: number;
  /** How E moves with one more such item, up to a constant. */
  readonly chance: number;
};

/** Fisher's scale above 0, where a coefficient leans toward 1; plain below, where a weighted one may pass −1. */
const toScale = (coefficient: number): number => (coefficient > 0 ? Math.atanh(coefficient) : coefficient);
const fromScale = (value: number): number => (value > 0 ? Math.tanh(value) : value);
const slopeOf = (coefficient: number): number => (coefficient > 0 ? 1 / (1 - coefficient ** 2) : 1);

/** Less is no disagreement. */
const ROUNDING = 1e-12;

export type ChanceInterval = {
  readonly items: readonly Contribution[];
  /** Items as chance alone would answer them; their weights add up to 1. */
  readonly atChance: readonly Contribution[];
  /** E: the disagreement chance would give. */
  readonly expectedDisagreement: number;
  /** Of Student's factor; `Infinity` for the normal one. */
  readonly degreesOfFreedom: number;
};

/** Some contributions and others behind them: one list, without making it. */
type Lists = readonly [readonly Contribution[], readonly Contribution[]];

const NO_MORE: readonly Contribution[] = [];

const meanDisagreement = (lists: Lists): number => {
  let [total, weights] = [0, 0];
  for (const list of lists) {
    for (const { weight, disagreement } of list) {
      total += weight * disagreement;
      weights += weight;
    }
  }
  return total / weights;
};

/** How 1 − D/E moves with one more item. */
const moveOf = ({ chance, disagreement }: Contribution, ratio: number, expectedDisagreement: number) =>
  (ratio * chance - disagreement) / expectedDisagreement;

const varianceOver = (lists: Lists, disagreement: number, expectedDisagreement: number): number => {
  const ratio = disagreement / expectedDisagreement;
  let [total, weights] = [0, 0];
  for (const list of lists) {
    for (const one of list) {
      total += one.weight * moveOf(one, ratio, expectedDisagreement);
      weights += one.weight;
    }
  }
  const center = total / weights;
  let squares = 0;
  for (const list of lists) {
    for (const one of list) squares += one.weight * (moveOf(one, ratio, expectedDisagreement) - center) ** 2;
  }
  return squares / weights;
};

/** Variance over the items of how 1 − D/E moves with each of them (linearization). */
export const varianceOfMoves = (
  list: readonly Contribution[],
  disagreement: number,
  expectedDisagreement: number,
): number => varianceOver([list, NO_MORE], disagreement, expectedDisagreement);

/**
 * The least coefficient that leaves nobody disagreeing on n items a chance of half of 1 − confidence: the greatest share
 * of disagreements, 1 − tail^(1/n) (Clopper and Pearson 1934), each as far apart as disagreements by chance are.
 */
const lowestAtFullAgreement = (
  { atChance, expectedDisagreement }: ChanceInterval,
  items: number,
  confidence: number,
): number => {
  const apart = atChance.filter(({ disagreement }) => disagreement > 0);
  const share = 1 - ((1 - confidence) / 2) ** (1 / items);
  // Where even chance never disagrees, nothing says how far apart two answers would be: as far as can be.
  const each = apart.length === 0 ? 1 : meanDisagreement([apart, NO_MORE]);
  return 1 - (share * each) / expectedDisagreement;
};

/**
 * The interval of a coefficient of agreement: one more item is added, answered at chance, and the interval is laid on
 * Fisher's scale, artanh c ± k·s/(1 − c²), plain below 0. The item at chance keeps full agreement from claiming that nobody ever errs (as
 * successes and failures added do for a share: Agresti and Coull 1998), and Fisher's scale follows the lean of the
 * coefficient near 1; full agreement itself has the exact lower end of a share. The way they are put together is our own,
 * and so is the choice of k: Student's for kappa, whose two sets of shares cost more, normal for coefficients that pool
 * them. chance-interval.test.ts tries by simulation how often the true coefficient is held: over six kinds of pair (three
 * spreads of the grades, two ways of keenness) on average between 93 and 97 % at 10, 20 and 50 items, and in none under 86 %.
 *
 * @param confidence the share of such intervals that would hold the true coefficient
 * @example
 * // Ten items in two grades, all agreed; by chance half of them would not be.
 * chanceInterval({ items: [{ weight: 10, disagreement: 0, chance: 0 }],
 *   atChance: [{ weight: 0.5, disagreement: 0, chance: 0 }, { weight: 0.5, disagreement: 1, chance: 0 }],
 *   expectedDisagreement: 0.5, degreesOfFreedom: 9 }, 0.95).low // 0.383…
 */
export const chanceInterval = (
  interval: ChanceInterval,
  confidence: number,
): { readonly low: number; readonly high: number } => {
  const { items, atChance, expectedDisagreement } = interval;
  const count = items.reduce((total, { weight }) => total + weight, 0);
  if (items.every(({ disagreement }) => Math.abs(disagreement) < ROUNDING)) {
    return { low: lowestAtFullAgreement(interval, count, confidence), high: 1 };
  }
  const all: Lists = [items, atChance];
  const disagreement = meanDisagreement(all);
  const coefficient = 1 - disagreement / expectedDisagreement;
  const variance = varianceOver(all, disagreement, expectedDisagreement) / (count - 1);
  const factor = coverageFactor(interval.degreesOfFreedom, confidence);
  const reach = factor * Math.sqrt(variance) * slopeOf(coefficient);
  const middle = toScale(coefficient);
  return { low: fromScale(middle - reach), high: fromScale(middle + reach) };
};
