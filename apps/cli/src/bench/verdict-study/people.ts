import type { AnswerOf } from "@evenhand/shared/answer";
import type { ReadingSpec } from "@evenhand/shared/sheet";
import { normalDeviate } from "@evenhand/measurement/random";
import type { Random } from "@evenhand/measurement/random";

/** How a simulated person departs from what the model declares. */
export type Person = {
  /** Everything that errs, over what is declared: 1 is as declared. */
  readonly noise: number;
  /** What is added to every reading toward the better side, as a share of δ. */
  readonly shade: number;
  /** Standard deviation of an error all of a person's readings share because they were taken elsewhere, as a share of δ. */
  readonly elsewhere: number;
};

export const honest: Person = { noise: 1, shade: 0, elsewhere: 0 };

/** The value a reading item has on an ordinary sound car. */
export const typicalOf = ({ typical, plausible }: ReadingSpec): number =>
  typical ?? (plausible[0] + plausible[1]) / 2;

const towardBetter = ({ betterIs }: ReadingSpec): number => (betterIs === "lower" ? -1 : 1);

const roundTo = (value: number, step: number): number =>
  step === 0 ? value : Math.round(value / step) * step;

/**
 * One person's readings of a true value with the item's ordinary instrument, as many as the sheet asks for: the
 * instrument's own error anywhere within its stated accuracy, placement by spot, scatter by reading or by spot, and the
 * indicator's step.
 */
export const readingsOf = (
  spec: ReadingSpec,
  truth: number,
  delta: number,
  { noise, shade, elsewhere }: Person,
  random: Random,
): AnswerOf<"reading"> => {
  const { accuracy, resolution } = spec.instrument;
  const { value, share, over } = spec.repeatability;
  const halfWidth = noise * (accuracy.absolute + accuracy.share * Math.abs(truth));
  const scatter = noise * Math.hypot(value, share * truth);
  const shared =
    truth +
    halfWidth * (2 * random() - 1) +
    shade * delta * towardBetter(spec) +
    elsewhere * delta * normalDeviate(random);
  const values: { value: number; spot: string }[] = [];
  for (let spot = 0; spot < spec.ask.spots; spot += 1) {
    const placement = over === "spots" ? 0 : noise * spec.placement * normalDeviate(random);
    const spread = over === "spots" ? scatter * normalDeviate(random) : 0;
    for (let reading = 0; reading < spec.ask.readings; reading += 1) {
      const repeat = over === "repeats" ? scatter * normalDeviate(random) : 0;
      values.push({ value: roundTo(shared + placement + spread + repeat, resolution), spot: `spot-${spot}` });
    }
  }
  return { kind: "reading", unit: spec.unit, values };
};

/**
 * The truth of the second car: so many δ off the first, to the worse side, or to the other where that is not
 * plausible. δ that is a share of the reading follows both values.
 */
export const truthAway = (spec: ReadingSpec, truth: number, deltas: number): number => {
  const { absolute, share } = spec.delta;
  const away = (sign: number): number => {
    const byShare = (deltas * share * truth) / (1 - (sign * deltas * share) / 2);
    return truth + sign * Math.max(deltas * absolute, byShare);
  };
  const worse = away(-towardBetter(spec));
  const [low, high] = spec.plausible;
  return worse >= low && worse <= high ? worse : away(towardBetter(spec));
};
