import { SEVERITIES, severityRank } from "@evenhand/shared/severity";
import type { Ruling } from "../define-rule/index.ts";

/** One place, whoever read it. */
const isSameFact = (one: Ruling, other: Ruling): boolean => {
  const [place, otherPlace] = [one.reads[0], other.reads[0]];
  return place?.position === otherPlace?.position && place?.item === otherPlace?.item;
};

const isSameAnswer = (one: Ruling, other: Ruling): boolean =>
  one.result.reason === other.result.reason && one.claim?.item === other.claim?.item;

const rankOf = ({ result: { severity } }: Ruling): number =>
  severity === null ? SEVERITIES.length : severityRank(severity);

const isDecided = ({ result }: Ruling): boolean => result.verdict !== "cannot-tell";

/** The gravest of what stays undecided; of two as grave the later one, which reads both reports. */
const gravest = (undecided: readonly Ruling[]): readonly Ruling[] => {
  let [worst] = undecided;
  for (const ruling of undecided) if (worst !== undefined && rankOf(ruling) <= rankOf(worst)) worst = ruling;
  return worst === undefined ? [] : [worst];
};

/** Of rulings about one place: of those that answer the same the last; what cannot be told gives way to what can. */
const lastOfEach = (same: readonly Ruling[]): readonly Ruling[] => {
  if (same.length < 2) return same;
  const decided = same.filter(isDecided);
  if (decided.length === 0) return gravest(same);
  const firsts = decided.filter((one) => decided.find((other) => isSameAnswer(other, one)) === one);
  return firsts.map((one) => decided.findLast((other) => isSameAnswer(other, one)) ?? one);
};

/** Where the first ruling about the place of one stands. */
const firstOf = (ruling: Ruling, rulings: readonly Ruling[]): number => {
  let first = 0;
  while (first < rulings.length && !isSameFactAt(rulings, first, ruling)) first += 1;
  return first;
};

const isSameFactAt = (rulings: readonly Ruling[], at: number, other: Ruling): boolean => {
  const one = rulings[at];
  return one !== undefined && isSameFact(one, other);
};

/** Rulings about each place, in the order of the places; nothing where no two are about one. */
const byFact = (rulings: readonly Ruling[]): readonly (readonly Ruling[])[] | undefined => {
  const facts = new Map<number, Ruling[]>();
  for (const [at, ruling] of rulings.entries()) {
    const first = firstOf(ruling, rulings);
    if (first === at) facts.set(at, [ruling]);
    else facts.get(first)?.push(ruling);
  }
  return facts.size === rulings.length ? undefined : [...facts.values()];
};

/**
 * One rule and one fact is one line, whoever's readings agree: of rulings that answer the same about one place the last stands,
 * which tests one's claim by the other's readings; what cannot be told gives way to what can.
 *
 * @param rulings of one rule, in the order of the views
 */
export const onePerFact = (rulings: readonly Ruling[]): readonly Ruling[] => {
  if (rulings.length < 2) return rulings;
  const facts = byFact(rulings);
  if (facts === undefined) return rulings;
  const standing: Ruling[] = [];
  for (const same of facts) standing.push(...lastOfEach(same));
  return standing;
};
