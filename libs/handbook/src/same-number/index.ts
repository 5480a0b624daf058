import { listed } from "@evenhand/message/listed";
import type { RuleResult } from "@evenhand/shared/cross-check";
import { misreadingOfNormalized, normalizeVin } from "../identifier-text/index.ts";
import type { Misreading } from "../identifier-text/index.ts";
import { figure } from "../rule-result/index.ts";
import { sameNumberRecord } from "./record.ts";
import { valueOf } from "../result-words/index.ts";

/** A number and where it was read: title, plate, stamping, photograph. */
export type PlacedNumber = { readonly place: string; readonly number: string };

/** Every number read. */
export type SameNumberInput = readonly PlacedNumber[];

/** A number as it is compared, and where it was read. */
type Normalized = { readonly place: string; readonly number: string };
type Pair = { readonly left: Normalized; readonly right: Normalized; readonly apart: Misreading };

const pairsOf = (numbers: readonly Normalized[]): Pair[] => {
  const pairs: Pair[] = [];
  for (const [index, left] of numbers.entries()) {
    for (const right of numbers.slice(index + 1))
      pairs.push({ left, right, apart: misreadingOfNormalized(left.number, right.number) });
  }
  return pairs;
};

const say = (pairs: readonly Pair[]): string[] =>
  pairs.map(({ left, right }) => listed([left, right].map(({ place, number }) => valueOf(place, number))));

/** Numbers that were read by both people, or at two places. */
const confirmed = (numbers: readonly Normalized[]): ReadonlySet<string> => {
  const [met, twice] = [new Set<string>(), new Set<string>()];
  for (const { number } of numbers) (met.has(number) ? twice : met).add(number);
  return twice;
};

const isConfirmed = ({ left, right }: Pair, twice: ReadonlySet<string>): boolean =>
  twice.has(left.number) && twice.has(right.number);

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
  const normalized = numbers.map(({ place, number }) => ({ place, number: normalizeVin(number) }));
  const pairs = pairsOf(normalized);
  const different = pairs.filter(({ apart }) => apart === "other");
  if (different.length > 0) {
    const twice = confirmed(normalized);
    const reason = different.some((pair) => isConfirmed(pair, twice)) ? "differ" : "read-again";
    return sameNumberRecord.answer(reason, { figures, alternatives: say(different) });
  }
  const misread = pairs.filter(({ apart }) => apart !== "same");
  if (misread.length > 0)
    return sameNumberRecord.answer("probably-misread", { figures, alternatives: say(misread) });
  return sameNumberRecord.answer("all-equal", {
    figures,
    words: { number: normalized[0]?.number ?? "" },
  });
};
