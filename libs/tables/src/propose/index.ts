import type { Answer } from "@evenhand/shared/answer";
import type { GradeScale } from "@evenhand/shared/report";
import { lexiconVersion1 } from "@evenhand/lexicon/lexicon-version-1";
import type { Item } from "@evenhand/shared/sheet";
import { WORDS } from "../answer-of/grade.ts";
import { answerOf } from "../answer-of/index.ts";
import type { Places } from "../find-places/index.ts";
import { placesOf } from "../find-places/index.ts";
import { itemsNamed } from "../item-names/index.ts";
import type { Candidate } from "../item-names/index.ts";
import type { Outcome } from "../outcome-words/index.ts";
import { readValue } from "../read-value/index.ts";
import { speaksAgainst } from "../sensed-words/index.ts";
import type { Claim } from "../table-claims/index.ts";
import type { Proposal, Reading, RefusedBecause, Meant } from "./reading.ts";
import { canBeAll, isBad, isMarkedBad, leavesOpen, withNote } from "./where.ts";
import { fitOfRest } from "./fits.ts";
import { isOnScale, spokenOf } from "./spoken-of.ts";

const { marks } = lexiconVersion1;

/** What fits nearly as well may be meant as well. */
const CLOSE = 0.93;

/** Below this nothing is named. */
const LEAST_FIT = 0.38;

/** A name with words that mean something else is not of everything the item has: fog lamps are not all lamps. */
const WHOLE = 0.6;

/** A name of which less than half is understood must fit all the better for it. */
const [HALF, LEAST_IN_PART] = [0.5, 0.58];

/** `All ok except RR` is not said of all. */
const makesExceptions = (text: string): boolean =>
  /\b(?:except|apart from|other than)\b|\bbar (?:the|one)\b/i.test(text);

/** What one row says of a part's kind, history or faults is not said of each of seventeen panels. */
const MANY = 12;
const isOfParts = (item: Item, { positions }: Places, { where }: Claim): boolean =>
  positions.length >= MANY &&
  item.answer !== "grade" &&
  item.answer !== "working" &&
  !where.some(({ text, plural, all }) => plural || all || OF_BODY.test(text));

const OF_BODY = /\b(?:body|bodywork|paintwork|coachwork|exterior|shell)\b/i;

/** Of the driver's side or seat of a car whose wheel may be on either somebody says which it is. */
const ofUnknownSide = (
  { where, value, note }: Claim,
  { positions }: Places,
  { form, rightHandDrive }: Reading,
): boolean =>
  form === undefined &&
  rightHandDrive === undefined &&
  positions.some((position) => /^(?:left|right)\b/.test(position)) &&
  [...where.map(({ text }) => text), value.text, note].some((text) => OF_DRIVER.test(text));

const OF_DRIVER = /(?:^|[^A-Za-z])[DP]\s?\/\s?S\b|\b(?:driver|passenger)(?:'?s)?\b/i;

/** Whether two places are the left and the right one of something. */
const areSides = (positions: readonly string[]): boolean =>
  positions.every((position) => SIDE.test(position)) &&
  new Set(positions.map((position) => SIDE.exec(position)?.[0])).size === positions.length;

const SIDE = /\b(?:left|right)\b/;

/** `Rear dampers leaking` is said of two; one that is bad, or something at front and rear, is at one of them. */
const isPair = ({ positions }: Places, claim: Claim, answer: Answer, bad: boolean): boolean => {
  if (positions.length > 2) return false;
  if (answer.kind === "reading") return areSides(positions);
  return !bad || (areSides(positions) && [...claim.where, ...claim.names].some(({ plural }) => plural));
};

type Tried =
  | { readonly ok: true; readonly meant: Meant }
  | { readonly ok: false; readonly why: RefusedBecause; readonly fit: number; readonly item: string };

/** How far up its scale a mark must stand to be good, and down to be bad. */
const [GOOD_FROM, BAD_TO] = [0.6, 0.3];

const outcomeOfMark = (text: string, scale: GradeScale | undefined): Outcome | undefined => {
  const at = scale?.grades.findIndex(({ id }) => id === text.trim().toLowerCase()) ?? -1;
  const share = at / ((scale?.grades.length ?? 0) - 1);
  if (!(share >= 0)) return undefined;
  return share >= GOOD_FROM ? { says: "good" } : share <= BAD_TO ? { says: "bad" } : undefined;
};

/** A mark grades what has grades; of everything else it is no figure: what the remark says counts, and then how good the mark is. */
const unrated = (claim: Claim, item: Item, scale: GradeScale | undefined): Claim => {
  // `112 | um` under `Value`, ticked under `Good`: the figure is what is said.
  if (item.answer === "reading" && claim.value.numeric && !/\d/.test(claim.value.text)) return claim;
  if (
    (claim.rated !== true && !isOnScale(claim.value.text, scale) && !isOnScale(claim.value.text, WORDS)) ||
    item.answer === "grade"
  )
    return claim;
  const { numbers: _numbers, outcome: _outcome, ...value } = claim.value;
  const outcome = outcomeOfMark(
    value.text,
    isOnScale(value.text, scale) ? scale : claim.rated === true ? scale : WORDS,
  );
  const said = claim.note === "" ? undefined : readValue(claim.note, { comma: false });
  if (said !== undefined && outcome?.says !== "bad") return { ...claim, value: said };
  if (said !== undefined && said.outcome === undefined && outcome !== undefined)
    return { ...claim, value: { ...said, outcome } };
  return {
    ...claim,
    value: { ...value, text: "", numeric: false, ...(outcome === undefined ? {} : { outcome }) },
  };
};

const attempt = (said: Claim, candidate: Candidate, reading: Reading): Tried => {
  const { item } = candidate;
  const scale = said.scale ?? reading.scale;
  const claim = unrated(said, item, scale);
  const fit = candidate.fit * fitOfRest(claim, item, { scale, sections: reading.sections });
  const made = answerOf({
    item,
    value: claim.value,
    labels: claim.where,
    note: claim.note,
    unit: claim.unit,
    scale,
    faultKinds: reading.faultKinds,
  });
  if (!made.ok) return { ok: false, why: made.why, fit, item: item.id };
  if (candidate.share < HALF && fit < LEAST_IN_PART) return { ok: false, why: "no-item", fit, item: item.id };
  const places = withNote(claim, candidate, made.answer, reading);
  const everywhere =
    canBeAll(made.answer, item, reading) &&
    !(places.how === "all" && isOfParts(item, places, claim)) &&
    (places.how !== "all" || candidate.share >= WHOLE);
  if (
    places.positions.length === 0 ||
    leavesOpen(made.answer, places) ||
    (places.how === "all" && !everywhere) ||
    (places.how === "some" &&
      !everywhere &&
      !isPair(places, claim, made.answer, isBad(made.answer, item, reading)))
  )
    return { ok: false, why: "no-place", fit, item: item.id };
  const against =
    !isBad(made.answer, item, reading) &&
    made.answer.kind !== "reading" &&
    made.answer.kind !== "grade" &&
    speaksAgainst(claim.note);
  const certain =
    made.sure &&
    !ofUnknownSide(claim, places, reading) &&
    !against &&
    (places.how !== "some" || everywhere) &&
    !claim.fromNote &&
    !(places.how === "all" && places.positions.length >= MANY) &&
    !(places.how === "all" && places.positions.length > 1 && isMarkedBad(claim, made.answer));
  const shade = (made.sure ? 1 : 0.9) * (places.how === "all" ? 0.97 : 1) * (claim.fromNote ? 0.9 : 1);
  const meant = {
    item,
    positions: places.positions,
    answer: made.answer,
    confidence: fit * shade,
    share: candidate.share,
    sure: certain,
    bad: isBad(made.answer, item, reading),
  };
  return { ok: true, meant: made.scale === undefined ? meant : { ...meant, scale: made.scale } };
};

/** `Repainted?` over panels: where a heading names a part of which much may be asked, the row must say what is. */
const answering = (
  { asks, heading }: Claim,
  reading: Reading,
  found: readonly Candidate[],
): readonly Candidate[] => {
  if (asks === undefined || heading === undefined || asks.core.length === 0) return found;
  const [first, second] = itemsNamed(reading.sheet, heading, []);
  const isPart = first !== undefined && second !== undefined && second.fit > CLOSE * first.fit;
  if (!isPart || placesOf(reading.sheet, first.item, [heading], {}).how === "all") return found;
  const asked = new Set(itemsNamed(reading.sheet, asks, reading.around).map(({ item }) => item.id));
  return found.filter(({ item }) => asked.has(item.id));
};

/** What a name means by the words beside it: a leak `after road` is the one that is asked for after the drive. */
const meantBy = (candidate: Candidate, { names, value, note }: Claim, { sheet }: Reading): Candidate => {
  const { id } = candidate.item;
  const later = names.some(({ text }) => /\bafter\b/i.test(text)) ? marks.afterDrive[id] : undefined;
  const [words, instead, of] = marks.instead[id] ?? [];
  const isOf = of === undefined || names.some(({ text }) => of.test(text));
  const other = later ?? (isOf && words?.test(`${value.text} ${note}`) === true ? instead : undefined);
  const item = other === undefined ? undefined : sheet.items.find((one) => one.id === other);
  return item === undefined ? candidate : { ...candidate, item };
};

/** The pressure of cold oil and a wet compression are read as well, and are none of what is asked. */
const isOtherReading = ({ id }: Item, { names }: Claim): boolean => {
  const [first] = names;
  const text = (first?.text ?? "").toLowerCase();
  const other = marks.otherFigure[id]?.some((word) => new RegExp(`\\b${word}\\b`).test(text)) === true;
  return other || lexiconVersion1.answering.notWith[id]?.test(text) === true;
};

/** Of all names a claim may go by, the items that fit; a name of the row before one of the heading above it. */
const candidatesOf = (claim: Claim, reading: Reading): readonly Candidate[] => {
  const best = new Map<string, Candidate>();
  for (const [rank, name] of claim.names.entries()) {
    for (const candidate of itemsNamed(reading.sheet, name, reading.around)) {
      const fit = candidate.fit * (1 - 0.04 * rank);
      if (fit > (best.get(candidate.item.id)?.fit ?? 0)) best.set(candidate.item.id, { ...candidate, fit });
    }
  }
  const named = spokenOf([...best.values()], claim, reading).toSorted((a, b) => b.fit - a.fit);
  if (named[0] !== undefined && isOtherReading(named[0].item, claim)) return [];
  const found = answering(
    claim,
    reading,
    named.map((candidate) => meantBy(candidate, claim, reading)),
  );
  if (claim.below !== undefined) return found.filter(({ item }) => item.positions !== undefined);
  if (claim.heading === undefined) return found;
  const headed = new Set(itemsNamed(reading.sheet, claim.heading, reading.around).map(({ item }) => item.id));
  const within = found.filter(({ item }) => headed.has(item.id));
  return within.length > 0 ? within : found;
};

/** An item whose name fits far better and that this value cannot answer is what was meant all the same. */
const [FAR_BETTER, BETTER, NEAR] = [1.5, 1.25, 1.1];
const MOST_OF = 0.75;

/** How much better another's name must fit; little, where the name is of something else for a good part. */
const enough = ({ sure, share }: Meant): number => (share < MOST_OF ? NEAR : sure ? FAR_BETTER : BETTER);

const refusedOf = (tried: readonly Tried[]): Proposal => {
  const best = tried
    .filter((one): one is Extract<Tried, { ok: false }> => !one.ok)
    .toSorted((a, b) => b.fit - a.fit)[0];
  return best === undefined || best.fit < LEAST_FIT
    ? { ok: false, why: "no-item" }
    : { ok: false, why: best.why, item: best.item };
};

/**
 * What a claim may mean, best first; or why it means nothing that the sheet asks.
 */
export const propose = (claim: Claim, reading: Reading): Proposal => {
  const candidates = candidatesOf(claim, reading);
  const [likeliest] = candidates;
  if (likeliest?.item.positions !== undefined && makesExceptions(`${claim.value.text} ${claim.note}`))
    return { ok: false, why: "no-place", item: likeliest.item.id };
  const tried = candidates.map((candidate) => attempt(claim, candidate, reading));
  const meant = tried
    .flatMap((one) => (one.ok ? [one.meant] : []))
    .toSorted((a, b) => b.confidence - a.confidence);
  const [best, second] = meant;
  const measured = tried.some(
    (one) => !one.ok && one.why === "no-number" && one.fit > (best?.confidence ?? 0),
  );
  const missed = Math.max(0, ...tried.map((one) => (one.ok ? 0 : one.fit)));
  if (best === undefined || best.confidence < LEAST_FIT || missed > enough(best) * best.confidence)
    return refusedOf(tried);
  const close = second !== undefined && second.confidence > CLOSE * best.confidence;
  const sure = best.sure && !close && !measured && best.confidence >= 0.6;
  return {
    ok: true,
    meant: [{ ...best, sure }, ...meant.slice(1)]
      .filter(({ confidence }) => confidence >= LEAST_FIT)
      .slice(0, 4),
  };
};
