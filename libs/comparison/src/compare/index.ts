import type { Atom, Entry, Mark } from "@evenhand/shared/comparison";
import type { Finding, Firmness } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";
import { isBadCall, severityRank } from "@evenhand/shared/severity";
import type { Call, Severity } from "@evenhand/shared/severity";
import { callFault, callOf } from "@evenhand/sheet/call";
import type { CallContext } from "@evenhand/sheet/call";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { contextMover, findingAt } from "./moving-context.ts";
import { compareAnswers } from "../compare-answers/index.ts";
import type { Sides } from "../compare-answers/index.ts";
import { compareFaults } from "../compare-faults/index.ts";
import { compareFitted } from "../compare-fitted/index.ts";
import { WHOLE } from "../judgment/index.ts";
import type { Judgment } from "../judgment/index.ts";
import { milesBetween } from "../miles-between/index.ts";
import { mirrorFaults } from "../mirror-faults/index.ts";
import { pairPlaces } from "../pair-places/index.ts";
import { planOf } from "../plan/index.ts";
import type { PlannedPlace } from "../plan/index.ts";
import { findSharing } from "../sharing/index.ts";
import type { SameIds } from "../sharing/index.ts";
import { faultAtoms, isClaim, isSilence, judgeSilence, limitsOfOne } from "../silence/index.ts";

export type CompareOptions = {
  /** Use allowed between the two visits by item id, in base units, for items that only rise; else the sheet's own. */
  readonly useAllowed?: Readonly<Record<string, number>>;
  /** Ids of A and B that name one instrument. */
  readonly sameInstruments?: SameIds;
  /** Ids of A and B that name one person. */
  readonly samePersons?: SameIds;
};

/** The few pairs of firmness there are, kept once each, so that nobody may write to them. */
const FIRMNESS: readonly (Firmness | null)[] = [null, "asserted", "hedged", "second-hand"];
const FIRMNESSES: readonly Entry["firmness"][] = FIRMNESS.flatMap((a) =>
  FIRMNESS.map((b) => Object.freeze({ a, b })),
);

const firmnessOf = (a: Finding | undefined, b: Finding | undefined): Entry["firmness"] => {
  const first = a?.firmness ?? null;
  const second = b?.firmness ?? null;
  const kept = FIRMNESSES[FIRMNESS.indexOf(first) * FIRMNESS.length + FIRMNESS.indexOf(second)];
  return kept ?? { a: first, b: second };
};

/** One place as the two reports have it. One object moves over all the places of a comparison, and nobody keeps it. */
type Meeting = {
  place: PlannedPlace;
  a: Finding | undefined;
  b: Finding | undefined;
  finding: Entry["finding"];
  readonly sides: Sides;
  readonly contexts: { readonly a: CallContext; readonly b: CallContext };
};

const faultOf = (finding: Finding | undefined, atom: Atom, side: "a" | "b") => {
  const index = atom.of === "fault" ? atom[side] : undefined;
  return index !== undefined && finding?.answer.kind === "faults" ? finding.answer.found[index] : undefined;
};

/** An answer called by itself: the one fault or denial an atom is about, else the whole answer. */
const callSide = (meeting: Meeting, atom: Atom, side: "a" | "b"): Call | null => {
  const finding = meeting[side];
  if (finding === undefined || finding.answer.kind === "not-seen") return null;
  const { item } = meeting.place.compiled;
  if (atom.of === "fault") {
    const fault = faultOf(finding, atom, side);
    return fault === undefined ? null : callFault(fault, item, meeting.contexts[side]);
  }
  if (atom.of === "denial") return atom.by === "both" || atom.by === side ? "good" : null;
  return callOf(finding.answer, item, meeting.contexts[side]);
};

const OPEN: ReadonlySet<string> = new Set(["doubtful", "differ", "incomparable"]);

/** The worst of what was found, or of what the claim covers where it was not seen. */
const severityOf = (meeting: Meeting, judgment: Judgment, calls: Entry["calls"]): Severity | null => {
  const { outcome, direction, coverageOnly } = judgment;
  if (coverageOnly === true) return null;
  if (isBadCall(calls.b)) return calls.b;
  if (outcome === "unseen") return meeting.place.severity;
  const { parted } = meeting.place;
  if (outcome === "unstated") return calls.b === "no-yardstick" ? parted : null;
  if (!OPEN.has(outcome)) return null;
  // Nobody is worse off than was said: only the statement is in question.
  if (direction === "found-better") return "small";
  if (isBadCall(calls.a)) return calls.a;
  // What was found is good by its yardstick: it may be dearer than was said, and hurts nobody. A reading may lie at its limit.
  const isGood = calls.b === "good" && meeting.b?.answer.kind !== "reading";
  return isGood && parted !== "worth" && severityRank(parted) < severityRank("repair") ? "repair" : parted;
};

const NO_MARKS: Mark[] = [];
Object.freeze(NO_MARKS);

const marksOf = ({ a }: Meeting, atom: Atom, judgment: Judgment): Mark[] => {
  const { figures } = judgment;
  const soft = a !== undefined && a.firmness !== "asserted";
  // An extent is always judged by eye, so that the mark would say nothing of a fault.
  const byEye = atom.of === "answer" && figures?.of === "reading" && (figures.a.byEye || figures.b.byEye);
  const own = judgment.marks ?? NO_MARKS;
  if (own.length === 0 && !soft && !byEye) return NO_MARKS;
  const marks = own.slice();
  if (soft) marks.push(a.firmness === "hedged" ? "hedged" : "second-hand");
  if (byEye) marks.push("by-eye");
  return marks;
};

const makeEntry = (meeting: Meeting, atom: Atom, judgment: Judgment): Entry => {
  const { place, a, b, finding } = meeting;
  const { id } = place.compiled.item;
  const calls = { a: callSide(meeting, atom, "a"), b: callSide(meeting, atom, "b") };
  const entry: Entry = {
    item: id,
    position: place.position,
    atom,
    outcome: judgment.outcome,
    calls,
    severity: severityOf(meeting, judgment, calls),
    marks: marksOf(meeting, atom, judgment),
    reason: judgment.reason,
    direction: judgment.direction,
    standing: judgment.standing,
    firmness: firmnessOf(a, b),
    finding,
  };
  if (judgment.figures !== undefined) entry.figures = judgment.figures;
  if (judgment.limits !== undefined) entry.limits = judgment.limits;
  if (judgment.coverageOnly === true) entry.coverageOnly = true;
  return entry;
};

/** A reading that only one side took is judged against its limits. */
const judgeWhole = (meeting: Meeting): Judgment => {
  const { place, a, b, sides, contexts } = meeting;
  const call = callSide(meeting, WHOLE, "b") ?? "no-yardstick";
  const judgment = judgeSilence(a, b, call);
  if (place.compiled.item.reading === undefined) return judgment;
  const limits = limitsOfOne(a, b, place.compiled.item, {
    a: { instruments: sides.a.instruments, context: contexts.a },
    b: { instruments: sides.b.instruments, context: contexts.b },
  });
  if (limits.length === 0) return judgment;
  const over = limits.some((limit) => limit.b?.plain === "fail");
  return { ...judgment, limits, ...(over ? { marks: [...(judgment.marks ?? []), "over-limit"] } : {}) };
};

/** A fault the inspector did not look for stands as unseen; one only he found is bad; a kind he denies is sound. */
const judgeAtom = (meeting: Meeting, atom: Atom): Judgment => {
  const call = atom.of === "fault" ? (callSide(meeting, atom, "b") ?? "no-yardstick") : "good";
  return judgeSilence(meeting.a, meeting.b, call);
};

const appendOneSided = (meeting: Meeting, entries: Entry[]): void => {
  const { place, a, b } = meeting;
  const [side, answer] = isClaim(b) ? (["b", b?.answer] as const) : (["a", a?.answer] as const);
  const atoms = answer?.kind === "faults" ? faultAtoms(answer, side, place.frame) : [];
  for (const atom of atoms) entries.push(makeEntry(meeting, atom, judgeAtom(meeting, atom)));
  if (atoms.length === 0) entries.push(makeEntry(meeting, WHOLE, judgeWhole(meeting)));
};

const append = (meeting: Meeting, entries: Entry[]): void => {
  const { place, a, b, sides } = meeting;
  const fitted = compareFitted(a, b);
  if (fitted !== undefined) return void entries.push(makeEntry(meeting, WHOLE, fitted));
  // "Not known" claims nothing: what the inspector found stands as if the statement were silent.
  const silent = a === undefined || b === undefined || isSilence(a, b) || (!isClaim(a) && isClaim(b));
  if (silent) return appendOneSided(meeting, entries);
  if (a.answer.kind === "faults" && b.answer.kind === "faults") {
    const atoms = compareFaults({
      a: a.answer,
      b: b.answer,
      item: place.compiled.item,
      frame: place.frame,
      sharedEye: sides.sharing.person(a, b),
    });
    for (let index = 0; index < atoms.length; index += 1) {
      const judged = atoms[index];
      if (judged !== undefined) entries.push(makeEntry(meeting, judged.atom, judged.said));
    }
    return undefined;
  }
  entries.push(makeEntry(meeting, WHOLE, compareAnswers({ a, b, place, sides, contexts: meeting.contexts })));
};

const once = <Value>(make: () => Value): (() => Value) => {
  let made: Value | undefined;
  return () => (made ??= make());
};

const sidesOf = (a: Report, b: Report, options: CompareOptions): Sides => ({
  a: { report: a, instruments: new Map(a.instruments.map((instrument) => [instrument.id, instrument])) },
  b: { report: b, instruments: new Map(b.instruments.map((instrument) => [instrument.id, instrument])) },
  sharing: findSharing(a, b, options),
  useAllowed: options.useAllowed ?? {},
  milesBetween: once(() => milesBetween(a, b)),
});

/** Lines in sheet order, and for each the place it speaks of. */
export type Lines = { readonly entries: Entry[]; readonly places: readonly PlannedPlace[] };

/** What has been said so far, and where lines of single faults stand. */
type Written = { readonly entries: Entry[]; readonly places: PlannedPlace[]; readonly faults: number[] };

const noteLines = ({ entries, places, faults }: Written, place: PlannedPlace): void => {
  for (let index = places.length; index < entries.length; index += 1) {
    places.push(place);
    if (entries[index]?.atom.of === "fault") faults.push(index);
  }
};

/** `compare`, with the place of every line, which who goes on with the lines then need not look up. */
export const compareByPlace = (
  a: Report,
  b: Report,
  sheet: CompiledSheet,
  options: CompareOptions = {},
): Lines => {
  const plan = planOf(sheet);
  const { places, findingsA, findingsB } = pairPlaces(a, b, plan);
  const first = contextMover(a, plan, findingsA);
  const second = contextMover(b, plan, findingsB);
  const contexts = { a: first.context, b: second.context };
  const sides = sidesOf(a, b, options);
  const written: Written = { entries: [], places: [], faults: [] };
  let meeting: Meeting | undefined;
  for (let number = 0; number < places.length; number += 1) {
    const place = places[number];
    if (place === undefined || place.circumstance) continue;
    const indexA = findingsA[place.number] ?? -1;
    const indexB = findingsB[place.number] ?? -1;
    if (indexA < 0 && indexB < 0) {
      written.entries.push(place.silent);
      written.places.push(place);
      continue;
    }
    const findingA = findingAt(a.findings, indexA);
    const findingB = findingAt(b.findings, indexB);
    first.move(place, findingA);
    second.move(place, findingB);
    meeting ??= { place, a: findingA, b: findingB, finding: { a: null, b: null }, sides, contexts };
    meeting.place = place;
    meeting.a = findingA;
    meeting.b = findingB;
    meeting.finding = { a: indexA < 0 ? null : indexA, b: indexB < 0 ? null : indexB };
    append(meeting, written.entries);
    noteLines(written, place);
  }
  return { entries: mirrorFaults(written.entries, written.faults, a, b, sheet), places: written.places };
};

/**
 * Sets two reports on one car against each other, item by item: what was stated (A) and what was found (B). Every
 * place that applies to the car has at least one entry, answered or not, but circumstances and what only a seller can claim and did
 * not; every fault, denied kind and reading has exactly one. Outcomes, calls and figures only: rules, statistics and order are
 * `analyze`'s, wording is `sentence`'s.
 *
 * @param a a report `checkReport` accepted
 * @param b another on the same car
 * @param sheet the sheet both were written on, compiled; its places are worked out once and kept with it
 * @returns entries in sheet order; a pure function of the reports, whatever the order of their findings
 * @throws {RangeError} when a finding's place is not on the sheet
 * @example compare(statement, inspection, compileSheet(sheetVersion1)).entries[0].outcome
 */
export const compare = (
  a: Report,
  b: Report,
  sheet: CompiledSheet,
  options: CompareOptions = {},
): { readonly entries: Entry[] } => ({ entries: compareByPlace(a, b, sheet, options).entries });
