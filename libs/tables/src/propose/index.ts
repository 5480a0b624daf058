import type { Answer } from "@evenhand/shared/answer";
import type { GradeScale, VehicleForm } from "@evenhand/shared/report";
import type { FaultKind, Item, Sheet } from "@evenhand/shared/sheet";
import { callOf } from "@evenhand/sheet/call";
import { isBadCall } from "@evenhand/shared/severity";
import { answerOf } from "../answer-of/index.ts";
import type { NoAnswer } from "../answer-of/context.ts";
import { placesOf } from "../find-places/index.ts";
import type { Places } from "../find-places/index.ts";
import { lexiconVersion1 } from "@evenhand/lexicon/lexicon-version-1";
import { itemsNamed } from "../item-names/index.ts";
import type { Candidate } from "../item-names/index.ts";
import { labelOf } from "../label/index.ts";
import type { Label } from "../label/index.ts";
import type { Outcome } from "../outcome-words/index.ts";
import { readValue } from "../read-value/index.ts";
import { sensedIn } from "../sensed-words/index.ts";
import type { Claim } from "../table-claims/index.ts";

/** Why something in a row became no finding. */
export type RefusedBecause = NoAnswer | "no-item" | "no-place" | "twice";

/** An item, its places and an answer that a claim may mean. */
export type Meant = {
  readonly item: Item;
  readonly positions: readonly string[];
  readonly answer: Answer;
  readonly scale?: GradeScale;
  /** 0 to 1: how well the name fits, and whether the value answers the item. */
  readonly confidence: number;
  readonly sure: boolean;
};

export type Proposal =
  | { readonly ok: true; readonly meant: readonly Meant[] }
  | { readonly ok: false; readonly why: RefusedBecause; readonly item?: string };

/** What reading goes by. */
export type Reading = {
  readonly sheet: Sheet;
  readonly form?: VehicleForm | undefined;
  readonly faultKinds: ReadonlyMap<string, FaultKind>;
  /** Words of the headings above, and the sections they are about. */
  readonly around: readonly string[];
  readonly sections: readonly string[];
  readonly scale?: GradeScale | undefined;
};

const { contexts } = lexiconVersion1;

/** Below this nothing is named. */
const LEAST_FIT = 0.38;

const isBad = (answer: Answer, item: Item, reading: Reading): boolean => {
  if (answer.kind === "faults") return answer.found.length > 0;
  if (answer.kind === "working") return answer.value === "no" || answer.value === "intermittent";
  if (answer.kind !== "choice" && answer.kind !== "presence") return false;
  return isBadCall(callOf(answer, item, { faultKinds: reading.faultKinds }));
};

const placed = (claim: Claim, candidate: Candidate, reading: Reading, more: readonly Label[]): Places =>
  placesOf(reading.sheet, candidate.item, [...claim.where, ...more], {
    at: candidate.at,
    form: reading.form,
  });

/** How it leaks names no part. */
const LEAKS = /\b(?:drip|weep|leak|seep)(?:s|ing|ping|y)?\b/gi;

/** `Engine oil leaks | rear main and sump, dripping` names in its answer where it leaks. */
const sourcesIn = (claim: Claim, { item, at }: Candidate, reading: Reading): readonly string[] => {
  if (item.positions !== "leak-sources" || at !== undefined || claim.value.numeric) return [];
  const parts = `${claim.value.text}, ${claim.note}`.split(/\s*(?:[,;&/]|\band\b|\bfrom\b|\bat\b)\s*/i);
  return [
    ...new Set(
      parts.flatMap((part) => {
        const [named] = itemsNamed(reading.sheet, labelOf(part.replaceAll(LEAKS, " ")), []).filter(
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

/** Where the name does not say it, what is bad is where its own words or the note say (`Brake lights: no, LH out`). */
const withNote = (claim: Claim, candidate: Candidate, answer: Answer, reading: Reading): Places => {
  const named = placed(claim, candidate, reading, []);
  const bad = isBad(answer, candidate.item, reading);
  // “Do all lights work?” answered with no is not said of each.
  const someOf = bad && named.positions.length > 2 && claim.where.some(({ all }) => all);
  const places = someOf ? { ...named, how: "all" as const } : named;
  const source = bad ? sourcesIn(claim, candidate, reading) : [];
  if (source.length > 0) return { positions: source, how: "said" };
  if (places.how === "said") return places;
  const own = claim.value.numeric || answer.kind === "code" ? "" : claim.value.text;
  const words = labelOf(`${own} ${claim.note}`);
  const worn =
    answer.kind === "grade" &&
    answer.scale === "house" &&
    ["spent", "heavy-wear"].includes(String(answer.value));
  const fault = worn || isBad(answer, candidate.item, reading);
  const reads = answer.kind === "reading" || answer.kind === "code";
  if (!fault && !reads) return places;
  if (contradicts(claim.where, words)) return { positions: [], how: "said" };
  const narrowed = placed(claim, candidate, reading, [words]);
  return narrowed.positions.length > 0 && narrowed.positions.length < places.positions.length
    ? { ...narrowed, how: narrowed.positions.length === 1 || words.all ? "said" : "some" }
    : words.all
      ? { ...places, how: "said" }
      : places;
};

/** Tires are bought in fours: size, make-up and age are of all where no place is said. */
const OF_ALL = /^wheels\.tire-(?:size|construction|age)$/;

/** What one look finds bad is not bad everywhere, and one figure is not of all places. */
const canBeAll = (answer: Answer, item: Item, reading: Reading): boolean =>
  (item.id === "wheels.tire-size" || (answer.kind !== "reading" && answer.kind !== "code")) &&
  (OF_ALL.test(item.id) || !isBad(answer, item, reading));

/** Light and weather are seldom what a row is about. */
const fitOfSection = (item: Item, sections: readonly string[]): number => {
  if (item.circumstance === true) return 0.9;
  if (sections.length === 0) return 1;
  const rank = sections.indexOf(item.section);
  return rank === 0 ? 1.1 : rank > 0 ? 1.03 : 0.92;
};

/** A grade ticked is of something that is graded. */
const fitOfGrade = ({ value }: Claim, item: Item, scale: GradeScale | undefined): number => {
  const isGrade = scale?.grades.some(({ name }) => name.toLowerCase() === value.text.toLowerCase()) === true;
  return !isGrade ? 1 : item.answer === "grade" ? 1.12 : 0.95;
};

/** A figure with its unit is of what is measured in it. */
const fitOfFigure = ({ value }: Claim, item: Item): number => {
  if (value.numbers?.unit === undefined) return 1;
  return item.answer === "reading" ? 1.15 : value.numeric ? 0.85 : 1;
};

/** Yes and no are of what works or is there sooner than of a grade. */
const fitOfAnswer = ({ value }: Claim, item: Item): number =>
  item.answer === "grade" && (value.outcome?.says === "yes" || value.outcome?.says === "no") ? 0.8 : 1;

/** What the note speaks of: `Seat belts | bad | webbing frayed` is of the webbing. */
const fitOfNote = ({ note, names }: Claim, item: Item): number => {
  if (note === "") return 1;
  const named = new Set(names.flatMap(({ core }) => core));
  const noted = new Set(labelOf(note).core);
  return labelOf(item.words.american).core.some((stem) => noted.has(stem) && !named.has(stem)) ? 1.08 : 1;
};

/** `Smoke | blue on the overrun`: of items that only time or place tell apart, the one whose words stand in the value. */
const fitOfTime = ({ value, note }: Claim, item: Item): number => {
  const words = contexts[item.id];
  if (words === undefined || value.numeric || !/^(?:engine\.smoke|road\.(?:cold|hot))/u.test(item.id))
    return 1;
  const said = ` ${`${value.text} ${note}`.toLowerCase().replaceAll(/[^a-z0-9]+/gu, " ")} `;
  return words.some((word) => said.includes(` ${word} `)) ? 1.15 : 1;
};

/** A fault that is named is a fault of the part before it is a grade of it. */
const fitOfFault = ({ value }: Claim, item: Item): number => {
  if (item.answer !== "grade" || value.numeric || value.outcome !== undefined) return 1;
  return sensedIn(value.text).some(
    ({ senses, denied }) => !denied && senses.some((sense) => "fault" in sense),
  )
    ? 0.9
    : 1;
};

/** What a note finds wrong speaks against a tick. */
const speaksAgainst = (note: string): boolean =>
  sensedIn(note).some(
    ({ senses, denied }) =>
      !denied && senses.some((sense) => "fault" in sense || ("working" in sense && sense.working === "no")),
  );

/** A name with words that mean something else is not of everything the item has: fog lamps are not all lamps. */
const WHOLE = 0.6;

/** A name of which less than half is understood must fit all the better for it. */
const [HALF, LEAST_IN_PART] = [0.5, 0.58];

/** `11.8 / 11.9 mm` of two discs says not which is which. */
const leavesOpen = (answer: Answer, { positions }: Places): boolean =>
  positions.length > 1 && answer.kind === "reading" && answer.values.length > 1;

/** `All ok except RR` is not said of all. */
const makesExceptions = (text: string): boolean =>
  /\b(?:except|apart from|other than)\b|\bbar (?:the|one)\b/i.test(text);

type Tried =
  | { readonly ok: true; readonly meant: Meant }
  | { readonly ok: false; readonly why: RefusedBecause; readonly fit: number; readonly item: string };

/** How far up its scale a mark must stand to be good, and down to be bad. */
const [GOOD_FROM, BAD_TO] = [0.6, 0.34];

const outcomeOfMark = (text: string, scale: GradeScale | undefined): Outcome | undefined => {
  const at = scale?.grades.findIndex(({ id }) => id === text.trim().toLowerCase()) ?? -1;
  const share = at / ((scale?.grades.length ?? 0) - 1);
  if (!(share >= 0)) return undefined;
  return share >= GOOD_FROM ? { says: "good" } : share <= BAD_TO ? { says: "bad" } : undefined;
};

/** A mark grades what has grades; of everything else it is no figure: what the remark says counts, and then how good the mark is. */
const unrated = (claim: Claim, item: Item, scale: GradeScale | undefined): Claim => {
  if (claim.rated !== true || item.answer === "grade") return claim;
  const { numbers: _numbers, outcome: _outcome, ...value } = claim.value;
  const outcome = outcomeOfMark(value.text, scale);
  const said = claim.note === "" ? undefined : readValue(claim.note, { comma: false });
  if (said !== undefined && outcome?.says !== "bad") return { ...claim, value: said };
  return {
    ...claim,
    value: { ...value, text: "", numeric: false, ...(outcome === undefined ? {} : { outcome }) },
  };
};

const attempt = (said: Claim, candidate: Candidate, reading: Reading): Tried => {
  const { item } = candidate;
  const scale = said.scale ?? reading.scale;
  const claim = unrated(said, item, scale);
  const fit =
    candidate.fit *
    fitOfSection(item, reading.sections) *
    fitOfGrade(claim, item, scale) *
    fitOfFault(claim, item) *
    fitOfAnswer(claim, item) *
    fitOfNote(claim, item) *
    fitOfTime(claim, item) *
    fitOfFigure(claim, item);
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
    canBeAll(made.answer, item, reading) && (places.how !== "all" || candidate.share >= WHOLE);
  if (
    places.positions.length === 0 ||
    leavesOpen(made.answer, places) ||
    (places.how === "all" && !everywhere) ||
    (places.how === "some" && !everywhere && places.positions.length > 2)
  )
    return { ok: false, why: "no-place", fit, item: item.id };
  const against =
    !isBad(made.answer, item, reading) &&
    made.answer.kind !== "reading" &&
    made.answer.kind !== "grade" &&
    speaksAgainst(claim.note);
  const certain = made.sure && !against && (places.how !== "some" || everywhere) && !claim.fromNote;
  const shade = (made.sure ? 1 : 0.9) * (places.how === "all" ? 0.97 : 1) * (claim.fromNote ? 0.9 : 1);
  const meant = {
    item,
    positions: places.positions,
    answer: made.answer,
    confidence: fit * shade,
    sure: certain,
  };
  return { ok: true, meant: made.scale === undefined ? meant : { ...meant, scale: made.scale } };
};

/** Of all names a claim may go by, the items that fit; a name of the row before one of the heading above it. */
const candidatesOf = (claim: Claim, reading: Reading): Candidate[] => {
  const best = new Map<string, Candidate>();
  for (const [rank, name] of claim.names.entries()) {
    for (const candidate of itemsNamed(reading.sheet, name, reading.around)) {
      const fit = candidate.fit * (1 - 0.04 * rank);
      if (fit > (best.get(candidate.item.id)?.fit ?? 0)) best.set(candidate.item.id, { ...candidate, fit });
    }
  }
  const found = [...best.values()].toSorted((a, b) => b.fit - a.fit);
  if (claim.heading === undefined) return found;
  const headed = new Set(itemsNamed(reading.sheet, claim.heading, reading.around).map(({ item }) => item.id));
  const within = found.filter(({ item }) => headed.has(item.id));
  return within.length > 0 ? within : found;
};

/** An item whose name fits far better and that this value cannot answer is what was meant all the same. */
const FAR_BETTER = 1.5;

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
  if (likeliest?.item.positions !== undefined && makesExceptions(claim.value.text))
    return { ok: false, why: "no-place", item: likeliest.item.id };
  const tried = candidates.map((candidate) => attempt(claim, candidate, reading));
  const meant = tried
    .flatMap((one) => (one.ok ? [one.meant] : []))
    .toSorted((a, b) => b.confidence - a.confidence);
  const [best, second] = meant;
  const missed = Math.max(0, ...tried.map((one) => (one.ok ? 0 : one.fit)));
  if (best === undefined || best.confidence < LEAST_FIT || missed > FAR_BETTER * best.confidence)
    return refusedOf(tried);
  const close = second !== undefined && second.confidence > 0.93 * best.confidence;
  const sure = best.sure && !close && best.confidence >= 0.6;
  return {
    ok: true,
    meant: [{ ...best, sure }, ...meant.slice(1)]
      .filter(({ confidence }) => confidence >= LEAST_FIT)
      .slice(0, 4),
  };
};
