import type { Comparison } from "@evenhand/shared/comparison";
import type { Matter } from "@evenhand/shared/matter";
import type { NotSeenReason } from "@evenhand/shared/answer";
import type { Report } from "@evenhand/shared/report";
import { phraseOf, placeWords } from "../headline/index.ts";
import type { Reports } from "../headline/index.ts";
import { kindOf } from "../kinds/index.ts";
import { isUnknown } from "../weight/index.ts";
import { claimsOf } from "./claims.ts";
import type { Claims } from "./claims.ts";

export type { Claims } from "./claims.ts";

/** A matter with what the inspector wrote beside its lines. */
export type AnsweredMatter = {
  readonly matter: Matter;
  /** The inspector's own words, gravest line first, each with its place. */
  readonly notes: readonly { readonly place: string; readonly words: string }[];
};

/** What stops the money: found so, or not known. */
export type Stop = { readonly words: string; readonly known: boolean };

/** Page one: what a buyer needs to stop or go on. */
export type Answer = {
  readonly vehicle: Comparison["vehicle"];
  readonly looked: {
    readonly by: string;
    readonly started: string;
    readonly minutes: number | null;
    /** Why places the inspector came to were not seen, with how many. */
    readonly couldNot: readonly { readonly reason: NotSeenReason; readonly places: number }[];
  };
  readonly stops: readonly Stop[];
  readonly claims: Claims;
  readonly matters: readonly AnsweredMatter[];
  /** Matters of what nobody knows. */
  readonly unknown: readonly AnsweredMatter[];
  readonly questions: readonly string[];
};

export type AnswerInput = {
  readonly comparison: Comparison;
  readonly matters: readonly Matter[];
  readonly reports: Reports & { readonly b: Pick<Report, "findings" | "scales" | "visit" | "author"> };
};

const QUESTIONS = 5;
const MINUTE = 60_000;

const notesOf = ({ lines }: Matter, { comparison, reports }: AnswerInput): AnsweredMatter["notes"] =>
  lines.flatMap((index) => {
    const entry = comparison.entries[index];
    const words = entry === undefined ? undefined : reports.b.findings[entry.finding.b ?? -1]?.note;
    return entry === undefined || words === undefined
      ? []
      : [{ place: placeWords(entry, reports.sheet), words }];
  });

const withoutRepeats = (notes: AnsweredMatter["notes"]): AnsweredMatter["notes"] =>
  notes.filter((note, index) => notes.findIndex(({ words }) => words === note.words) === index);

/** Every line of halt, by name: what was found first, then what nobody knows and was claimed or asked for. */
const stopsOf = ({ comparison, matters, reports }: AnswerInput): Stop[] => {
  const halts = matters
    .flatMap(({ lines }) => lines.flatMap((index) => comparison.entries[index] ?? []))
    .filter(({ severity }) => severity === "halt");
  const known = halts.filter((entry) => !isUnknown(entry));
  const unknown = halts.filter(isUnknown);
  return [
    ...known.map((entry): Stop => ({ words: phraseOf(entry, reports), known: true })),
    ...unknown.map((entry): Stop => ({ words: placeWords(entry, reports.sheet), known: false })),
  ];
};

const couldNotOf = ({ findings }: Pick<Report, "findings">): Answer["looked"]["couldNot"] => {
  const places = new Map<NotSeenReason, number>();
  for (const { answer } of findings) {
    if (answer.kind === "not-seen") places.set(answer.reason, (places.get(answer.reason) ?? 0) + 1);
  }
  return [...places]
    .map(([reason, count]) => ({ reason, places: count }))
    .sort((a, b) => b.places - a.places);
};

const minutesOf = ({ visit }: Pick<Report, "visit">): number | null =>
  visit.ended === undefined
    ? null
    : Math.round((Date.parse(visit.ended) - Date.parse(visit.started)) / MINUTE);

const isOfUnknown = ({ matter }: AnsweredMatter): boolean => kindOf(matter.kind).family === "unknown";

/**
 * Page one of a comparison: the car, who looked and what could not be done, what stops the money, what became of the claims, the
 * matters worst first with the inspector's own words, what nobody knows, and five questions to ask.
 * Nothing in it says that a car is good.
 *
 * @example answer({ comparison, matters, reports }).stops[0]?.words // "title: in another name (stated: in the seller's name)"
 */
export const answer = (input: AnswerInput): Answer => {
  const { comparison, matters, reports } = input;
  const answered = matters.map((matter): AnsweredMatter => ({
    matter,
    notes: withoutRepeats(notesOf(matter, input)),
  }));
  const questions = new Set(
    matters
      .filter(({ kind }) => kind !== "small-things" && kind !== "repairs")
      .map(({ question }) => question),
  );
  return {
    vehicle: comparison.vehicle,
    looked: {
      by: reports.b.author.organization,
      started: reports.b.visit.started,
      minutes: minutesOf(reports.b),
      couldNot: couldNotOf(reports.b),
    },
    stops: stopsOf(input),
    claims: claimsOf(comparison, reports),
    matters: answered.filter((one) => !isOfUnknown(one)),
    unknown: answered.filter(isOfUnknown),
    questions: [...questions].slice(0, QUESTIONS),
  };
};
