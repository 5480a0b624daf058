import { betaQuantile } from "../beta-distribution/index.ts";
import { normalQuantile } from "../normal-distribution/index.ts";

export type Interval = { readonly low: number; readonly high: number };

const check = (successes: number, trials: number): void => {
  if (!(trials > 0)) throw new RangeError(`A share needs at least one trial: ${trials}`);
  if (!(successes >= 0 && successes <= trials)) {
    throw new RangeError(`Successes must be 0 to ${trials}: ${successes}`);
  }
};

/**
 * Wilson's score interval for a share (Wilson 1927): the shares a normal test would not reject.
 *
 * @throws {RangeError} without trials or with more successes than trials
 * @example wilsonInterval(4, 20) // { low: 0.0806576625797981, high: 0.4160174322518935 }
 */
export const wilsonInterval = (successes: number, trials: number, confidence = 0.95): Interval => {
  check(successes, trials);
  const z2 = normalQuantile((1 + confidence) / 2) ** 2;
  const share = successes / trials;
  const center = (share + z2 / (2 * trials)) / (1 + z2 / trials);
  const reach = Math.sqrt(z2 * ((share * (1 - share)) / trials + z2 / (4 * trials ** 2))) / (1 + z2 / trials);
  return {
    low: successes === 0 ? 0 : center - reach,
    high: successes === trials ? 1 : center + reach,
  };
};

/**
 * Jeffreys' interval: quantiles of Beta(x + ½, n − x + ½), with the end that is a success or failure
 * throughout set to 0 or 1 (Brown, Cai and DasGupta 2001).
 *
 * @throws {RangeError} without trials or with more successes than trials
 * @example jeffreysInterval(4, 20) // { low: 0.0715…, high: 0.4082… }
 */
export const jeffreysInterval = (successes: number, trials: number, confidence = 0.95): Interval => {
  check(successes, trials);
  const tail = (1 - confidence) / 2;
  const [alpha, beta] = [successes + 0.5, trials - successes + 0.5];
  return {
    low: successes === 0 ? 0 : betaQuantile(tail, alpha, beta),
    high: successes === trials ? 1 : betaQuantile(1 - tail, alpha, beta),
  };
};

/**
 * Clopper and Pearson's exact interval (1934): never holds the true share less often than stated, mostly more.
 *
 * @throws {RangeError} without trials or with more successes than trials
 * @example clopperPearsonInterval(4, 20) // { low: 0.0573…, high: 0.4366… }
 */
export const clopperPearsonInterval = (successes: number, trials: number, confidence = 0.95): Interval => {
  check(successes, trials);
  const tail = (1 - confidence) / 2;
  return {
    low: successes === 0 ? 0 : betaQuantile(tail, successes, trials - successes + 1),
    high: successes === trials ? 1 : betaQuantile(1 - tail, successes + 1, trials - successes),
  };
};
