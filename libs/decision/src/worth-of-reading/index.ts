import { normalCdf, normalDensity, normalQuantile } from "@evenhand/measurement/normal-distribution";

/**
 * Unit normal loss integral L(z): the mean of max(0, X − z) of a standard normal X, φ(z) − z·(1 − Φ(z)).
 *
 * Source: H. Raiffa and R. Schlaifer, Applied Statistical Decision Theory (1961), 11.2 (there G); from memory.
 *
 * @example unitNormalLoss(0) // 0.398942280401…
 */
export const unitNormalLoss = (z: number): number => Math.max(0, normalDensity(z) - z * normalCdf(-z));

/** What is left to whoever goes on, as it is known before looking, and how well the look would tell it; all in one unit. */
export type NormalLook = {
  /** On the mean; under 0 whoever goes on loses. */
  readonly left: number;
  /** Standard deviation of what is left. */
  readonly spread: number;
  /** Standard uncertainty of the look. 0 tells the truth. */
  readonly uncertainty: number;
};

/**
 * Standard deviation of the mean as it will be after the look: σ²/√(σ² + u²). It is σ for a look that tells the truth, and 0 for one
 * that tells nothing.
 *
 * @example spreadAfter({ spread: 3, uncertainty: 4 }) // 1.8
 */
export const spreadAfter = ({ spread, uncertainty }: Omit<NormalLook, "left">): number =>
  spread === 0 ? 0 : spread / Math.hypot(1, uncertainty / spread);

/**
 * Expected value of sample information where two acts are open, to go on and gain what is left or to leave and gain nothing, what is
 * left is normal, and the look is off by a normal error: s·L(|m|/s) with s the spread of the mean after the look. Never above what
 * knowing the truth is worth (`uncertainty: 0`), and nothing for a look that tells nothing.
 *
 * Source: H. Raiffa and R. Schlaifer, Applied Statistical Decision Theory (1961), 5.4 and 11.2, from memory; the same two-act linear
 * problem: J. M. Keisler, Additivity of Information Value in Two-Act Linear Loss Decisions with Normal Priors, Risk Analysis 25 (2005).
 *
 * @example evsi({ left: 0, spread: 1, uncertainty: 0 }) // 0.398942280401…
 */
export const evsi = ({ left, ...look }: NormalLook): number => {
  const spread = spreadAfter(look);
  return spread === 0 ? 0 : spread * unitNormalLoss(Math.abs(left) / spread);
};

/** A reading against a limit: the chance that the truth is past it, and how far off what is known and the reading may be, in one unit. */
export type ReadingAgainst = {
  readonly probability: number;
  /** Standard uncertainty of what is known now. */
  readonly spread: number;
  /** Standard uncertainty of the reading. */
  readonly uncertainty: number;
};

/** What a look can say, and what is to be believed then. */
export type Told = {
  /** Probability that it says past the limit. */
  readonly says: number;
  /** Probability that it is so, where the look says so, and where it does not. */
  readonly ifSaid: number;
  readonly ifNot: number;
};

const STEPS = 64;
/** Nearer to never or always than this there is nothing left to tell. */
const NOTHING_OPEN = 1e-9;

/**
 * P(X > h, Y > k) of two standard normal variables of correlation ρ:
 * Φ(−h)Φ(−k) + 1/2π ∫₀^arcsin ρ exp(−(h² + k² − 2hk sin θ)/(2 cos² θ)) dθ, by Simpson's rule.
 *
 * Source: R. L. Plackett, A reduction formula for normal multivariate integrals, Biometrika 41 (1954); from memory.
 */
function bothAbove(h: number, k: number, correlation: number): number {
  const end = Math.asin(correlation);
  const at = (theta: number): number => {
    const [sin, cos] = [Math.sin(theta), Math.cos(theta)];
    // At ρ = 1 the integrand goes to exp(−h²/2) where h = k, and to 0 elsewhere.
    if (cos < 1e-9) return h === k ? Math.exp((-h * h) / 2) : 0;
    return Math.exp(-(h * h + k * k - 2 * h * k * sin) / (2 * cos * cos));
  };
  let sum = at(0) + at(end);
  for (let step = 1; step < STEPS; step += 1) sum += (step % 2 === 1 ? 4 : 2) * at((end * step) / STEPS);
  return normalCdf(-h) * normalCdf(-k) + ((end / STEPS / 3) * sum) / (2 * Math.PI);
}

const TRUTH = (probability: number): Told => ({ says: probability, ifSaid: 1, ifNot: 0 });

/**
 * What a reading of stated uncertainty can tell of a limit: it says past the limit where it reads so, and the truth is then past it
 * with a probability, no longer for certain. What is known before is normal and lies past the limit with the given probability.
 * A reading without uncertainty tells the truth; one that is far coarser than what is known tells nothing: both beliefs stay what
 * they were. On the mean nothing changes: says · ifSaid + (1 − says) · ifNot is the probability before.
 *
 * @example readingTells({ probability: 0.5, spread: 1, uncertainty: 1 }) // { says: 0.5, ifSaid: 0.75, ifNot: 0.25 }
 */
export function readingTells({ probability, spread, uncertainty }: ReadingAgainst): Told {
  if (Math.min(probability, 1 - probability) < NOTHING_OPEN || uncertainty === 0) return TRUTH(probability);
  const correlation = spread / Math.hypot(spread, uncertainty);
  const limit = -normalQuantile(probability);
  const read = limit * correlation;
  const says = normalCdf(-read);
  const both = Math.min(bothAbove(limit, read, correlation), says, probability);
  return { says, ifSaid: both / says, ifNot: Math.max(0, (probability - both) / (1 - says)) };
}
