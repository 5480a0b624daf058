import type { Entry, ReadingFigures } from "@evenhand/shared/comparison";
import { isBadCall } from "@evenhand/shared/severity";
import { chanceWorse, inThree, pairChance, shareOff } from "@evenhand/measurement/chance-off";
import type { PairChance, ShareOff } from "@evenhand/measurement/chance-off";
import { areEnough, AS_DECLARED } from "@evenhand/measurement/over-dispersion";
import type { Apart, PairScatter } from "@evenhand/measurement/over-dispersion";
import type { ReadingSpec } from "@evenhand/shared/sheet";
import { worseBy, worseWay } from "../interval-figures/index.ts";
import { asTaken, leftOf } from "../use-allowed/index.ts";

/** What is in the order and costs by its figures; what is merely not settled costs by its owner's own probability. */
const OPEN: ReadonlySet<string> = new Set(["doubtful", "differ"]);

/**
 * Past a limit or an alarm, called bad, or brought down by a rule: what is wrong with it is not how far it lies from what was stated, and
 * a worn-out part does not get cheaper because the statement nearly admitted it.
 */
const isBadByItself = ({ calls, marks }: Entry): boolean =>
  isBadCall(calls.b) || marks.includes("over-limit") || marks.includes("by-figures");

/** Whether an entry is a reading that is not settled, and not bad by itself. */
export const isOpenReading = (entry: Entry): boolean =>
  entry.figures?.of === "reading" &&
  entry.atom.of === "answer" &&
  OPEN.has(entry.outcome) &&
  !isBadByItself(entry);

const BEFORE_ANY: ShareOff = Object.freeze(shareOff([], AS_DECLARED));

/**
 * What the chances of a pair's open readings are worked out with. Of fewer than ten whole witnesses nothing is read: then readings are off
 * as often as one would think before any was read, every share from one in 200 to one in two as plausible as the next, one in eight on
 * average. Two or three readings would only echo themselves, and a half would say that every second statement is false.
 *
 * @param readings the witnesses that `pairScatter` was given
 * @example chancesOf([], AS_DECLARED).shares.length // 7
 */
export const chancesOf = (readings: readonly Apart[], people: PairScatter): PairChance => {
  if (!areEnough(readings)) return pairChance(people, BEFORE_ANY);
  const three = inThree(people);
  // Where only equality is right, nothing is off by more than what matters.
  const telling = readings.filter(({ delta }) => delta > 0);
  return pairChance(three, shareOff(telling, three));
};

/**
 * The chance that an open reading is worse than stated by more than what matters; where nobody knows which side is the worse one, that it
 * is off by more, either way. It is of what is left after the use allowed, and never more than P(worse by anything): so being found past a
 * limit, which leaves that one standing, never makes a thing cheaper.
 *
 * @param figures of an entry that `isOpenReading`
 * @returns `undefined` where there is no uncertainty, or no difference that matters, to reckon with
 * @example openChance(entry.figures, spec, chancesOf(readings, people)) // 0.04…
 */
export const openChance = (
  figures: ReadingFigures,
  spec: ReadingSpec,
  pair: PairChance,
): number | undefined => {
  const { standardUncertainty, delta, probabilityWorse } = figures;
  if (!(standardUncertainty > 0 && delta > 0)) return undefined;
  const difference = leftOf(figures);
  const { a, b } = asTaken(figures);
  const worse = worseBy({ a, b, difference }, worseWay(spec));
  const reading = { foundBetter: 0 - (worse ?? difference), standardUncertainty, delta };
  const chance = chanceWorse(reading, pair);
  if (worse !== undefined) return Math.min(probabilityWorse, chance);
  return Math.min(probabilityWorse, chance + chanceWorse({ ...reading, foundBetter: difference }, pair));
};
