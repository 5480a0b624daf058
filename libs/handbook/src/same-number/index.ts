import { listed } from "@evenhand/message/listed";
import type { RuleResult } from "@evenhand/shared/cross-check";
import { misreading, normalizeVin } from "../identifier-text/index.ts";
import { figure } from "../rule-result/index.ts";
import { sameNumberRecord } from "./record.ts";
import { valueOf } from "../result-words/index.ts";

/** A number and where it was read: title, plate, stamping, photograph. */
export type PlacedNumber = { readonly place: string; readonly number: string };

/** Every number read. */
export type SameNumberInput = readonly PlacedNumber[];

type Pair = { readonly left: PlacedNumber; readonly right: PlacedNumber };

const pairsOf = (numbers: readonly PlacedNumber[]): Pair[] =>
  numbers.flatMap((left, index) => numbers.slice(index + 1).map((right) => ({ left, right })));

const say = (pairs: readonly Pair[]): string[] =>
  pairs.map(({ left, right }) =>
    listed([left, right].map(({ place, number }) => valueOf(place, normalizeVin(number)))),
  );

/** Numbers that were read by both people, or at two places. */
const confirmed = (numbers: readonly PlacedNumber[]): ReadonlySet<string> => {
  const groups = Map.groupBy(numbers, ({ number }) => normalizeVin(number));
  return new Set([...groups].flatMap(([number, readings]) => (readings.length > 1 ? [number] : [])));
};

const isConfirmed = ({ left, right }: Pair, twice: ReadonlySet<string>): boolean =>
  twice.has(normalizeVin(left.number)) && twice.has(normalizeVin(right.number));

/**
 * The same number everywhere: every pair is set against each other. A pair that is one look-alike or one exchange
 * of neighbors apart is probably misread and breaks nothing; nor does a number that stands alone, read once: it is to be read
 * again.
 *
 * Source: arithmetic on the figures read.
 *
 * @example
 * sameNumber([{ place: "title", number: "20 875" }, { place: "plate", number: "20875" }]).reason // "all-equal"
 */
export const sameNumber = (numbers: readonly PlacedNumber[]): RuleResult => {
  const figures = { places: figure(numbers.length) };
  if (numbers.length < 2) return sameNumberRecord.answer("too-few", { figures });
  const pairs = pairsOf(numbers).map((pair) => ({
    ...pair,
    apart: misreading(pair.left.number, pair.right.number),
  }));
  const different = pairs.filter(({ apart }) => apart === "other");
  if (different.length > 0) {
    const twice = confirmed(numbers);
    const reason = different.some((pair) => isConfirmed(pair, twice)) ? "differ" : "read-again";
    return sameNumberRecord.answer(reason, { figures, alternatives: say(different) });
  }
  const misread = pairs.filter(({ apart }) => apart !== "same");
  if (misread.length > 0)
    return sameNumberRecord.answer("probably-misread", { figures, alternatives: say(misread) });
  return sameNumberRecord.answer("all-equal", {
    figures,
    words: { number: normalizeVin(numbers[0]?.number ?? "") },
  });
};
