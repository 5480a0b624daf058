import type { Answer } from "@evenhand/shared/answer";
import type { Item } from "@evenhand/shared/sheet";
import { callOf } from "@evenhand/sheet/call";
import { isBadCall } from "@evenhand/shared/severity";
import { placesOf } from "../find-places/index.ts";
import type { Places } from "../find-places/index.ts";
import { wordsOf } from "../cell-parts/index.ts";
import { itemsNamed } from "../item-names/index.ts";
import type { Candidate } from "../item-names/index.ts";
import { labelOf } from "../label/index.ts";
import type { Label } from "../label/index.ts";
import { outcomeOf } from "../outcome-words/index.ts";
import type { Claim } from "../table-claims/index.ts";
import type { Reading } from "./reading.ts";

export const isBad = (answer: Answer, item: Item, reading: Reading): boolean => {
  if (answer.kind === "faults") return answer.found.length > 0;
  if (answer.kind === "working") return answer.value === "no" || answer.value === "intermittent";
  if (answer.kind !== "choice" && answer.kind !== "presence") return false;
  return isBadCall(callOf(answer, item, { faultKinds: reading.faultKinds }));
};

const placed = (claim: Claim, candidate: Candidate, reading: Reading, more: readonly Label[]): Places => {
  const context = { at: candidate.at, form: reading.form, rightHandDrive: reading.rightHandDrive };
  const places = placesOf(reading.sheet, candidate.item, [...claim.where, ...more], context);
  if (claim.except === undefined) return places;
  const excepted = new Set(
    claim.except.flatMap(
      (place) => placesOf(reading.sheet, candidate.item, [...claim.where, place], context).positions,
    ),
  );
  const positions = places.positions.filter((position) => !excepted.has(position));
  return positions.length === places.positions.length
    ? { positions: [], how: "said" }
    : { positions, how: "said" };
};

/** Places that are parts with names of their own. */
const SAID_IN_WORDS: ReadonlySet<string> = new Set(["leak-sources", "exhaust-parts"]);

/** How it leaks names no part. */
const LEAKS = /\b(?:drip|weep|leak|seep|blow)(?:s|ing|ping|y)?\b/gi;

/** `Engine oil leaks | rear main and sump, dripping` names in its answer where it leaks. */
const sourcesIn = (claim: Claim, { item, at }: Candidate, reading: Reading): readonly string[] => {
  if (!SAID_IN_WORDS.has(item.positions ?? "") || at !== undefined || claim.value.numeric) return [];
  const parts = `${claim.value.text}, ${claim.note}`.split(/\s*(?:[,;&/]|\band\b|\bfrom\b|\bat\b)\s*/i);
  return [
    ...new Set(
      parts.flatMap((part) => {
        const [named] = itemsNamed(reading.sheet, labelOf(wordsOf(part.replaceAll(LEAKS, " "))), []).filter(
          (one) => one.item.id === item.id,
        );
        return named?.at !== undefined && named.fit > 0.5 ? named.at : [];
      }),
    ),
  ];
};

const sideOf = (labels: readonly Label[]): string | undefined => {
  const sides = (["left", "right"] as const).filter((side) => labels.some(({ places }) => places.has(side)));
  return sides.length === 1 ? sides[0] : undefined;
};

/** `R dampers | n/s wet`: a name that seems to say right beside words that say left may mean the rear. */
const contradicts = (where: readonly Label[], words: Label): boolean => {
  const [named, said] = [sideOf(where), sideOf([words])];
  return named !== undefined && said !== undefined && named !== said;
};

const isWorn = (answer: Answer): boolean =>
  answer.kind === "grade" &&
  answer.scale === "house" &&
  ["spent", "heavy-wear"].includes(String(answer.value));

/** `Decent, orange peel on hood` is not said of every panel. */
const unlessOfSome = (
  claim: Claim,
  candidate: Candidate,
  reading: Reading,
  { places, words }: { readonly places: Places; readonly words: Label },
): Places => {
  if (places.how !== "all" || claim.value.outcome !== undefined || words.all) return places;
  const named = placed(claim, candidate, reading, [labelOf(claim.value.text)]);
  const { length } = named.positions;
  if (length === 0 || length === places.positions.length) return places;
  // `Misting rear` says of what is in the rear, by an answer of its own.
  return candidate.item.answer === "choice" ? { ...named, how: "said" } : { positions: [], how: "said" };
};

/** Where what is bad or measured is, by the words of the answer and the note. */
const narrowedBy = (words: Label, places: Places, placedBy: (words: Label) => Places): Places => {
  const narrowed = placedBy(words);
  if (narrowed.positions.length > 0 && narrowed.positions.length < places.positions.length)
    return { ...narrowed, how: narrowed.positions.length === 1 || words.all ? "said" : "some" };
  return words.all ? { ...places, how: "said" } : places;
};

/** `One jammed` is not said of each. */
const OF_SOME = /\b(?:one|a couple|some|two|several|a few)\b(?!\s+(?:speed|piece|year)s?\b)/i;

/** Where the name alone says it is; “Do all lights work?” answered with no is not said of each. */
const namedPlaces = (claim: Claim, candidate: Candidate, reading: Reading, bad: boolean): Places => {
  const named = placed(claim, candidate, reading, []);
  const ofAll = claim.where.some(({ all, others }) => all && !others);
  return bad && ofAll && named.positions.length > 2 ? { ...named, how: "all" } : named;
};

/** `Shocks | Attention | left rear misting`: what the sheet marks as bad is where its remark says, though it be no fault to us. */
export const isMarkedBad = ({ value }: Claim, answer: Answer): boolean =>
  answer.kind === "choice" && value.outcome?.says === "bad";

/** Where the name does not say it, what is bad is where its own words or the note say (`Brake lights: no, LH out`). */
export const withNote = (claim: Claim, candidate: Candidate, answer: Answer, reading: Reading): Places => {
  const bad = isBad(answer, candidate.item, reading);
  const places = namedPlaces(claim, candidate, reading, bad);
  const source = bad ? sourcesIn(claim, candidate, reading) : [];
  if (source.length > 0) return { positions: source, how: "said" };
  if (places.how === "said") return places;
  const { text, numeric } = claim.value;
  // `Pass` is no passenger.
  const own = numeric || answer.kind === "code" || outcomeOf(text) !== undefined ? "" : text;
  const ownWords = labelOf(own);
  const words = ownWords.places.size > 0 ? ownWords : labelOf(`${own} ${claim.note}`);
  const reads = answer.kind === "reading" || answer.kind === "code";
  if (!bad && !isMarkedBad(claim, answer) && !isWorn(answer) && !reads)
    return unlessOfSome(claim, candidate, reading, { places, words });
  if (contradicts(claim.where, words)) return { positions: [], how: "said" };
  if (isWorn(answer) && places.how === "all" && OF_SOME.test(`${own} ${claim.note}`))
    return { positions: [], how: "said" };
  return narrowedBy(words, places, (more) => placed(claim, candidate, reading, [more]));
};

/** Tires are bought in fours: size, make-up and age are of all where no place is said. */
const OF_ALL = /^wheels\.tire-(?:size|construction|age)$/;

/** What one look finds bad is not bad everywhere, and one figure is not of all places. */
export const canBeAll = (answer: Answer, item: Item, reading: Reading): boolean =>
  (item.id === "wheels.tire-size" || (answer.kind !== "reading" && answer.kind !== "code")) &&
  (OF_ALL.test(item.id) || !isBad(answer, item, reading));

/** `11.8 / 11.9 mm` of two discs says not which is which. */
export const leavesOpen = (answer: Answer, { positions }: Places): boolean =>
  positions.length > 1 && answer.kind === "reading" && answer.values.length > 1;
