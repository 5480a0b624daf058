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
  const [first, second] = decided;
  if (first === undefined || second === undefined) return decided;
  // Two are by far the most frequent: each report's own readings agree on it.
  if (decided.length === 2) return isSameAnswer(second, first) ? [second] : decided;
  const firsts = decided.filter((one) => decided.find((other) => isSameAnswer(other, one)) === one);
  return firsts.map((one) => decided.findLast((other) => isSameAnswer(other, one)) ?? one);
};

/** Where the first ruling about the place of one stands. By index, here and below: it is asked of every rule. */
const firstOf = (ruling: Ruling, rulings: readonly Ruling[]): number => {
  for (let at = 0; at < rulings.length; at += 1) {
    const other = rulings[at];
    if (other !== undefined && isSameFact(other, ruling)) return at;
  }
  return -1;
};

/** The rulings about the place of one, itself among them. */
const aboutPlaceOf = (ruling: Ruling, rulings: readonly Ruling[]): readonly Ruling[] => {
  const same: Ruling[] = [];
  for (let at = 0; at < rulings.length; at += 1) {
    const other = rulings[at];
    if (other !== undefined && isSameFact(other, ruling)) same.push(other);
  }
  return same;
};

/**
 * One rule and one fact is one line, whoever's readings agree: of rulings that answer the same about one place the last stands,
 * which tests one's claim by the other's readings; what cannot be told gives way to what can.
 *
 * @param rulings of one rule, in the order of the views
 */
export const onePerFact = (rulings: readonly Ruling[]): readonly Ruling[] => {
  if (rulings.length < 2) return rulings;
  let standing: Ruling[] | undefined;
  for (let at = 0; at < rulings.length; at += 1) {
    const ruling = rulings[at];
    if (ruling === undefined || firstOf(ruling, rulings) !== at) continue;
    const same = aboutPlaceOf(ruling, rulings);
    if (same.length === rulings.length) return lastOfEach(same);
    standing = (standing ?? []).concat(lastOfEach(same));
  }
  return standing ?? rulings;
};
