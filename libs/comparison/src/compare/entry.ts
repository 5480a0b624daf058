import type { AnswerKind } from "@evenhand/shared/answer";
import type { Atom, Entry, Mark } from "@evenhand/shared/comparison";
import type { Finding, Firmness } from "@evenhand/shared/finding";
import { isBadCall, severityRank } from "@evenhand/shared/severity";
import type { Call, Severity } from "@evenhand/shared/severity";
import { callFault, callOf } from "@evenhand/sheet/call";
import type { CallContext } from "@evenhand/sheet/call";
import type { Side, Sides } from "../compare-answers/index.ts";
import { WHOLE } from "../judgment/index.ts";
import type { Judgment } from "../judgment/index.ts";
import type { PlannedPlace } from "../plan/index.ts";

/** The few pairs of firmness there are, kept once each, so that nobody may write to them. */
const FIRMNESS: readonly (Firmness | null)[] = [null, "asserted", "hedged", "second-hand"];
const FIRMNESSES: readonly Entry["firmness"][] = FIRMNESS.flatMap((a) =>
  FIRMNESS.map((b) => Object.freeze({ a, b })),
);

let lastFirmness: Entry["firmness"] = Object.freeze({ a: null, b: null });

/** How firmly each side says what it says of a place; `null` where it says nothing. */
export const firmnessOf = (a: Finding | undefined, b: Finding | undefined): Entry["firmness"] => {
  const first = a?.firmness ?? null;
  const second = b?.firmness ?? null;
  // Most lines are as firm as the one before.
  if (lastFirmness.a === first && lastFirmness.b === second) return lastFirmness;
  const kept = FIRMNESSES[FIRMNESS.indexOf(first) * FIRMNESS.length + FIRMNESS.indexOf(second)];
  lastFirmness = kept ?? { a: first, b: second };
  return lastFirmness;
};

/** One place as the two reports have it. One object moves over all the places of a comparison, and nobody keeps it. */
export type Meeting = {
  place: PlannedPlace;
  a: Finding | undefined;
  b: Finding | undefined;
  /** Of what kind each answer is. Answers are of ten shapes, and looking into such is slow: the kind is asked for once a line. */
  kindA: AnswerKind | undefined;
  kindB: AnswerKind | undefined;
  /** Whether each side claims anything. */
  claimsA: boolean;
  claimsB: boolean;
  finding: Entry["finding"];
  firmness: Entry["firmness"];
  readonly sides: Sides;
  readonly contexts: { readonly a: CallContext; readonly b: CallContext };
};

const faultOf = (finding: Finding | undefined, atom: Atom, side: "a" | "b") => {
  const index = atom.of === "fault" ? atom[side] : undefined;
  return index !== undefined && finding?.answer.kind === "faults" ? finding.answer.found[index] : undefined;
};

type Calls = Entry["calls"];
/** By far the most frequent pairs of calls; nobody may write to them. */
const BOTH_GOOD: Calls = Object.freeze({ a: "good", b: "good" });
const A_GOOD: Calls = Object.freeze({ a: "good", b: null });
const B_GOOD: Calls = Object.freeze({ a: null, b: "good" });

/** The one fault or denial an atom is about, called by itself. */
const callPart = (meeting: Meeting, atom: Atom, side: "a" | "b"): Call | null => {
  const finding = meeting[side];
  if (finding === undefined || meeting[side === "a" ? "kindA" : "kindB"] === "not-seen") return null;
  if (atom.of === "denial") return atom.by === "both" || atom.by === side ? "good" : null;
  const fault = faultOf(finding, atom, side);
  return fault === undefined ? null : callFault(fault, meeting.place.compiled.item, meeting.contexts[side]);
};

/** A reading that is corrected is called by what it is taken as. */
const asTaken = (
  read: Finding | undefined,
  { corrected }: Side,
  index: number | null,
): Finding | undefined =>
  corrected === undefined || index === null ? read : corrected.taken.findings[index];

/** What was taken off the readings of a line. */
const correctionsOf = ({ a, b, sides, kindA, kindB }: Meeting, atom: Atom): Entry["corrections"] => {
  if ((sides.a.corrected ?? sides.b.corrected) === undefined || atom !== WHOLE) return undefined;
  const ofA = a && kindA === "reading" ? sides.a.corrected?.correctionOf(a) : undefined;
  const ofB = b && kindB === "reading" ? sides.b.corrected?.correctionOf(b) : undefined;
  return (ofA ?? ofB) === undefined ? undefined : { a: ofA, b: ofB };
};

const callWhole = (
  finding: Finding | undefined,
  kind: AnswerKind | undefined,
  { compiled }: PlannedPlace,
  context: CallContext,
): Call | null =>
  finding === undefined || kind === "not-seen" ? null : callOf(finding.answer, compiled.item, context);

/** Frozen and shared where nothing is bad, which is by far the most frequent. */
const callsOf = (a: Call | null, b: Call | null): Calls => {
  if (a === "good" && b === "good") return BOTH_GOOD;
  if (a === "good" && b === null) return A_GOOD;
  return a === null && b === "good" ? B_GOOD : { a, b };
};

/** What each side says of an atom, called by itself; `null` where it says nothing. */
export const callSides = (meeting: Meeting, atom: Atom): Calls => {
  if (atom !== WHOLE) return callsOf(callPart(meeting, atom, "a"), callPart(meeting, atom, "b"));
  const { kindA, kindB, place, contexts, sides, finding } = meeting;
  const a = asTaken(meeting.a, sides.a, finding.a);
  const b = asTaken(meeting.b, sides.b, finding.b);
  return callsOf(callWhole(a, kindA, place, contexts.a), callWhole(b, kindB, place, contexts.b));
};

const isOpen = (outcome: Judgment["outcome"]): boolean =>
  outcome === "doubtful" || outcome === "differ" || outcome === "incomparable";

/** Whether what was found is good beyond doubt; a reading may lie at its limit, and is then not. */
const isPlainlyGood = ({ kindB }: Meeting, { limits }: Judgment, calls: Calls): boolean =>
  calls.b === "good" &&
  (kindB !== "reading" || limits?.every(({ b }) => b === null || b.call === "meets") === true);

/** What was found bad, and may lie past a graver limit as well: a lining at the figure that is required is no mere repair. */
const atWorst = (found: Severity, { limits = [] }: Judgment): Severity => {
  let worst = found;
  for (const { b, severity } of limits)
    if (b?.call === "marginal" && severityRank(severity) < severityRank(worst)) worst = severity;
  return worst;
};

/** The worst of what was found, or of what the claim covers where it was not seen. */
const severityOf = (meeting: Meeting, judgment: Judgment, calls: Calls): Severity | null => {
  const { outcome, direction } = judgment;
  if (isBadCall(calls.b)) return direction === "found-better" ? calls.b : atWorst(calls.b, judgment);
  if (outcome === "unseen") return meeting.place.severity;
  const { parted } = meeting.place;
  if (outcome === "unstated") return calls.b === "no-yardstick" ? parted : null;
  if (!isOpen(outcome)) return null;
  // Nobody is worse off than was said: only the statement is in question.
  if (direction === "found-better") return "small";
  if (isBadCall(calls.a)) return calls.a;
  // What was found is good by its yardstick: it may be dearer than was said, and hurts nobody.
  return severityRank(parted) <= severityRank("danger") && isPlainlyGood(meeting, judgment, calls)
    ? "repair"
    : parted;
};

const NO_MARKS: Mark[] = [];
Object.freeze(NO_MARKS);

/** One mark by itself, kept once each: most lines that have any have one. */
const ALONE: Partial<Record<Mark, Mark[]>> = {};

const alone = (mark: Mark): Mark[] => {
  const known = ALONE[mark];
  if (known !== undefined) return known;
  const made: Mark[] = [mark];
  Object.freeze(made);
  ALONE[mark] = made;
  return made;
};

const withMark = (marks: Mark[], mark: Mark): Mark[] => (marks.length === 0 ? alone(mark) : [...marks, mark]);

const ownMarks = ({ marks = NO_MARKS }: Judgment): Mark[] => {
  const only = marks[0];
  return only === undefined ? NO_MARKS : marks.length === 1 ? alone(only) : [...marks];
};

const marksOf = ({ a, b, firmness }: Meeting, atom: Atom, judgment: Judgment): Mark[] => {
  const { figures } = judgment;
  let marks = ownMarks(judgment);
  if (a !== undefined && firmness.a !== "asserted")
    marks = withMark(marks, firmness.a === "hedged" ? "hedged" : "second-hand");
  // An extent is always judged by eye, so that the mark would say nothing of a fault.
  if (atom.of === "answer" && figures?.of === "reading" && (figures.a.byEye || figures.b.byEye))
    marks = withMark(marks, "by-eye");
  return b?.look === "second" ? withMark(marks, "looked-twice") : marks;
};

/** The line of a comparison: what was judged, with its place, its calls, and whose findings it rests on. */
export const makeEntry = (meeting: Meeting, atom: Atom, calls: Calls, judgment: Judgment): Entry => {
  const { place, finding, firmness } = meeting;
  return {
    item: place.item,
    position: place.position,
    atom,
    outcome: judgment.outcome,
    calls,
    severity: severityOf(meeting, judgment, calls),
    marks: marksOf(meeting, atom, judgment),
    reason: judgment.reason,
    direction: judgment.direction,
    standing: judgment.standing,
    firmness,
    finding,
    // There or not, so that all lines are of one shape: looking into many shapes by turns is slow.
    figures: judgment.figures,
    limits: judgment.limits,
    coverageOnly: judgment.coverageOnly === true ? true : undefined,
    corrections: correctionsOf(meeting, atom),
  };
};
