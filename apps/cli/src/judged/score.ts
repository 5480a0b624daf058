import type { Word } from "./said.ts";

/** One judged place: what one or two judges want said of it. */
export type Wanted = {
  readonly item: string;
  readonly position: string;
  readonly kind: string | undefined;
  readonly words: readonly Word[];
  readonly severity: string;
};

const TROUBLE: ReadonlySet<Word> = new Set([
  "differ",
  "contradicted",
  "found-bad-unmentioned",
  "found-no-yardstick",
  "agreed-fault",
  "unseen-ask",
]);
const SOOTHING: ReadonlySet<Word> = new Set(["agree", "not-contradicted", "sound", "nothing"]);
const INNOCENT: ReadonlySet<Word> = new Set([
  "agree",
  "not-contradicted",
  "sound",
  "agreed-fault",
  "not-comparable",
  "not-fitted",
  "circumstance",
]);
const CHARGING: ReadonlySet<Word> = new Set(["doubtful", "differ", "contradicted", "found-bad-unmentioned"]);
const GRAVE: ReadonlySet<string> = new Set(["stop", "kills", "price"]);

const isOneOf = (a: Word, b: Word, pair: readonly [Word, Word]): boolean =>
  a !== b && pair.includes(a) && pair.includes(b);

/** No line and a line nobody is shown are the same to who reads. */
const isSame = (wanted: Word, said: Word): boolean =>
  wanted === said ||
  (wanted === "circumstance" && said === "nothing") ||
  (wanted === "not-fitted" && (said === "nothing" || said === "agree"));

/**
 * Whether what was said is as good as what is wanted: the same word, agree for not contradicted, differ for contradicted, and
 * doubtful for differ where it is a trifle.
 *
 * @example isNear("agree", "not-contradicted", "-") // true
 */
export const isNear = (wanted: Word, said: Word, severity: string): boolean =>
  isSame(wanted, said) ||
  isOneOf(wanted, said, ["agree", "not-contradicted"]) ||
  isOneOf(wanted, said, ["differ", "contradicted"]) ||
  (severity === "trifle" && isOneOf(wanted, said, ["doubtful", "differ"]));

/** Trouble is wanted, and it soothes. */
export const isComfort = (wanted: Word, said: Word): boolean =>
  (TROUBLE.has(wanted) && SOOTHING.has(said)) ||
  (wanted === "doubtful" && (said === "agree" || said === "sound"));

/** Nobody is to be blamed, and it blames. */
export const isCharge = (wanted: Word, said: Word): boolean => INNOCENT.has(wanted) && CHARGING.has(said);

export const FLAGS = ["exact", "near", "near-either", "comfort", "grave", "charge", "hard"] as const;
export type Flag = (typeof FLAGS)[number];

/**
 * What is to be said of one judged line. Exact and near go by the first judge; comfort counts where every judge wants trouble, a
 * charge where none of them charges.
 *
 * @example flagsOf({ item, position, kind: undefined, words: ["agree"], severity: "-" }, "differ") // ["charge", "hard"]
 */
export const flagsOf = ({ words, severity }: Wanted, said: Word): Flag[] => {
  const [first = "nothing"] = words;
  const flags: Flag[] = [];
  if (isSame(first, said)) flags.push("exact");
  if (isNear(first, said, severity)) flags.push("near");
  if (words.some((word) => isNear(word, said, severity))) flags.push("near-either");
  if (words.every((word) => isComfort(word, said))) {
    flags.push("comfort");
    if (GRAVE.has(severity)) flags.push("grave");
  }
  if (words.every((word) => isCharge(word, said))) {
    flags.push("charge");
    if (said !== "doubtful") flags.push("hard");
  }
  return flags;
};
