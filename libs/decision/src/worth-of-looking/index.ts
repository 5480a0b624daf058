import { type ReadingAgainst, readingTells, type Told } from "../worth-of-reading/index.ts";

/** Something a look would decide: with this probability it costs so much to put right, in any one unit of money; else nothing. */
export type Look = {
  readonly id: string;
  readonly probability: number;
  /** What it costs on the mean where it falls due: looking tells whether, not how dear the repair will be. */
  readonly mean: number;
  readonly minutes: number;
  /** It can stop the money or hurt somebody: looked at first, whatever it is worth. */
  readonly first: boolean;
  /** Where it is read with an instrument: how far off what is known and the reading may be. Without it looking tells for certain. */
  readonly reading?: Omit<ReadingAgainst, "probability">;
};

/** Of more, those that could move the decision most are weighed against each other: 2 to the power of this many cases. */
const MOST_WEIGHED = 12;

const expected = ({ probability, mean }: Look): number => probability * mean;

const toldBy = ({ probability, reading }: Look): Told =>
  readingTells({ probability, ...(reading ?? { spread: 1, uncertainty: 0 }) });

/** Every sum that may be expected once the looks have told, with its probability. */
const sumsOf = (looks: readonly Look[]): ReadonlyMap<number, number> => {
  let sums = new Map([[0, 1]]);
  for (const look of looks) {
    const { says, ifSaid, ifNot } = toldBy(look);
    const next = new Map<number, number>();
    const add = (sum: number, share: number): void => void next.set(sum, (next.get(sum) ?? 0) + share);
    for (const [sum, share] of sums) {
      add(sum + ifNot * look.mean, share * (1 - says));
      add(sum + ifSaid * look.mean, share * says);
    }
    sums = next;
  }
  return sums;
};

/**
 * Expected value of information on some of the things in doubt, looked at together: what a buyer who goes on only while
 * something is left gains by what looking tells first. E[max(0, left given what was told)] − max(0, left on the mean). Never less than
 * nothing; that of perfect information where looking tells for certain, less where an instrument may be off. The things are taken
 * as independent.
 *
 * Source: H. Raiffa and R. Schlaifer, Applied Statistical Decision Theory (1961), ch. 4; from memory.
 *
 * @param room what the buyer would still spend on putting right, before any of it
 * @param all everything in doubt; what is not among `seen` stays at its mean
 * @example worthOfSeeing(100, [{ id: "a", probability: 0.5, mean: 240, minutes: 5, first: false }], new Set(["a"])) // 50
 */
export function worthOfSeeing(room: number, all: readonly Look[], seen: ReadonlySet<string>): number {
  const left = all.filter(({ id }) => !seen.has(id)).reduce((rest, look) => rest - expected(look), room);
  const before = Math.max(
    0,
    all.reduce((rest, look) => rest - expected(look), room),
  );
  let after = 0;
  for (const [sum, share] of sumsOf(all.filter(({ id }) => seen.has(id))))
    after += share * Math.max(0, left - sum);
  // Less a rounding of the sums.
  return Math.max(0, after - before);
}

/**
 * Variance of what is expected to fall due, as looking moves it: what a large set of looks is worth rests on the sum of these alone.
 *
 * @example varianceTold({ id: "a", probability: 0.5, mean: 240, minutes: 5, first: false }) // 14400
 */
export function varianceTold(look: Look): number {
  const { says, ifSaid, ifNot } = toldBy(look);
  return says * (1 - says) * ((ifSaid - ifNot) * look.mean) ** 2;
}

const spreadAMinute = (look: Look): number => varianceTold(look) / look.minutes;

/**
 * The order in which to look: what can stop the money or hurt somebody first, then what the set loses most by leaving out, a minute.
 * Worked from all of them together backward, since things may be worth nothing each and decide together.
 */
function ordered<L extends Look>(room: number, all: readonly L[], weighed: readonly L[]): L[] {
  const order: L[] = [];
  let rest = [...weighed];
  while (rest.length > 0) {
    const whole = worthOfSeeing(room, all, new Set(rest.map(({ id }) => id)));
    const losses = rest.map((look) => {
      const others = new Set(rest.filter((one) => one !== look).map(({ id }) => id));
      return { look, loss: (whole - worthOfSeeing(room, all, others)) / look.minutes };
    });
    const [least] = losses.toSorted(
      (a, b) => a.loss - b.loss || spreadAMinute(a.look) - spreadAMinute(b.look),
    );
    if (least === undefined) break;
    order.unshift(least.look);
    rest = rest.filter((one) => one !== least.look);
  }
  return order.toSorted((a, b) => Number(b.first) - Number(a.first));
}

/**
 * What another look would be worth: at most this much, were everything weighed seen, and in which order to look. Arithmetic on the
 * buyer's own figures, never a valuation; for what is certain or costs nothing no look is worth anything.
 *
 * @param room what the buyer would still spend on putting right, before any of it; in the unit of the means
 * @example worthOfLooking(100, []) // { together: 0, order: [] }
 */
export function worthOfLooking<L extends Look>(
  room: number,
  looks: readonly L[],
): { readonly together: number; readonly order: readonly L[] } {
  const open = looks.filter(({ probability, mean }) => probability > 0 && probability < 1 && mean > 0);
  const certain = looks.filter((look) => !open.includes(look)).reduce((sum, look) => sum + expected(look), 0);
  const weighed = open
    .toSorted((a, b) => Number(b.first) - Number(a.first) || spreadAMinute(b) - spreadAMinute(a))
    .slice(0, MOST_WEIGHED);
  const left = room - certain;
  return {
    together: worthOfSeeing(left, open, new Set(weighed.map(({ id }) => id))),
    order: ordered(left, open, weighed),
  };
}
