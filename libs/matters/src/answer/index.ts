import type { Comparison } from "@evenhand/shared/comparison";
import type { NotSeenReason } from "@evenhand/shared/answer";
import type { Answer, AnsweredMatter, MatterLine, Stop } from "@evenhand/shared/page-one";
import type { Report } from "@evenhand/shared/report";
import { isFoundBad } from "@evenhand/comparison/found-bad";
import { cautionsOf } from "@evenhand/sheet/cautions-of";
import { phraseOf, placeWords } from "../headline/index.ts";
import type { Reports } from "../headline/index.ts";
import { inWords } from "../in-words/index.ts";
import { kindOf } from "../kinds/index.ts";
import type { JoinedMatter } from "../matters/index.ts";
import { questionsOf } from "../questions/index.ts";
import { softenings } from "../softenings/index.ts";
import { isUnknown } from "../weight/index.ts";
import { claimsOf } from "./claims.ts";

/** A report with what page one says of the visit and who made it. */
type Visited = Pick<Report, "findings" | "scales" | "visit" | "author">;

export type AnswerInput = {
  readonly comparison: Comparison;
  readonly matters: readonly JoinedMatter[];
  readonly reports: Reports & { readonly a: Visited; readonly b: Visited };
};

const QUESTIONS = 5;
const MINUTE_MS = 60_000;
/** More stand behind the answer, in the list of all lines. */
const LINES = 24;

const notesOf = ({ lines }: JoinedMatter, { comparison, reports }: AnswerInput): AnsweredMatter["notes"] =>
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
    : Math.round((Date.parse(visit.ended) - Date.parse(visit.started)) / MINUTE_MS);

const linesOf = ({ lines }: JoinedMatter, { comparison, reports }: AnswerInput): MatterLine[] =>
  lines.slice(0, LINES).flatMap((index): MatterLine[] => {
    const entry = comparison.entries[index];
    if (entry === undefined) return [];
    const { outcome, severity } = entry;
    const place = placeWords(entry, reports.sheet);
    return [{ entry: index, place, outcome, severity, found: isFoundBad(entry) }];
  });

/** What has to be kept in mind by whoever looks again, opens something or drives. */
const TO_BE_CAREFUL: ReadonlySet<string> = new Set(["look-again", "open-up", "do-not-drive"]);

const cautionsFor = ({ comparison, matters, reports }: AnswerInput): Answer["cautions"] => {
  const careful = matters.filter(({ next }) => TO_BE_CAREFUL.has(next.step));
  const items = careful.flatMap(({ lines }) => lines.flatMap((at) => comparison.entries[at]?.item ?? []));
  return cautionsOf(reports.sheet.sheet, items).map(({ id, text }) => ({ id, text }));
};

const sideOf = ({ kind, organization, seal }: Comparison["a"], { visit }: Visited): Answer["a"] => ({
  kind,
  organization,
  seal,
  started: visit.started,
  zone: visit.zone,
});

const lookedOf = (report: Visited): Answer["looked"] => ({
  by: report.author.organization,
  started: report.visit.started,
  minutes: minutesOf(report),
  couldNot: couldNotOf(report),
});

const isOfUnknown = ({ matter }: AnsweredMatter): boolean => kindOf(matter.kind).family === "unknown";

/**
 * Page one of a comparison: the car, who looked and what could not be done, what stops the money, what became of the claims, the
 * matters worst first with the inspector's own words, what nobody knows, five questions to ask, and what softens either side's word.
 * Nothing in it says that a car is good.
 *
 * @example answer({ comparison, matters, reports }).stops[0]?.words // "title: in another name (stated: in the seller's name)"
 */
export const answer = (input: AnswerInput): Answer => {
  const { comparison, matters, reports } = input;
  const answered = matters.map((matter): AnsweredMatter => ({
    matter: inWords(matter, reports),
    notes: withoutRepeats(notesOf(matter, input)),
    lines: linesOf(matter, input),
  }));
  const asks = questionsOf(matters, comparison, reports).slice(0, QUESTIONS);
  return {
    format: "evenhand-answer",
    version: 1,
    engine: comparison.engine,
    vehicle: comparison.vehicle,
    a: sideOf(comparison.a, reports.a),
    b: sideOf(comparison.b, reports.b),
    looked: lookedOf(reports.b),
    stops: stopsOf(input),
    claims: claimsOf(comparison, reports),
    matters: answered.filter((one) => !isOfUnknown(one)),
    unknown: answered.filter(isOfUnknown),
    questions: asks.map(({ words }) => words),
    asks,
    soft: softenings(comparison, reports),
    cautions: cautionsFor(input),
    tally: comparison.tally,
    broken: comparison.crossChecks.filter(({ verdict }) => verdict === "breaks").length,
  };
};
