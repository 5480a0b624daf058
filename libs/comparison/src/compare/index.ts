import type { AnswerOf, Fault } from "@evenhand/shared/answer";
import type { Atom, Entry } from "@evenhand/shared/comparison";
import type { Finding } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";
import type { Call, Severity } from "@evenhand/shared/severity";
import { callFault } from "@evenhand/sheet/call";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { callSides, firmnessOf, makeEntry } from "./entry.ts";
import type { Meeting } from "./entry.ts";
import { SEEN, STATED } from "./lines.ts";
import type { Both, Lines } from "./lines.ts";
import { contextMover } from "./moving-context.ts";
import { correct } from "../corrections/index.ts";
import type { Corrected, KnownReader } from "../corrections/index.ts";
import { compareAnswers } from "../compare-answers/index.ts";
import type { AnsweredPair, Side, Sides } from "../compare-answers/index.ts";
import { compareFaults } from "../compare-faults/index.ts";
import { compareFitted } from "../compare-fitted/index.ts";
import { inOneShape, SEEN_SOUND, WHOLE } from "../judgment/index.ts";
import type { Judgment } from "../judgment/index.ts";
import { ODOMETER, milesBetween } from "../miles-between/index.ts";
import { findingOf } from "../finding-of/index.ts";
import { mirrorFaults } from "../mirror-faults/index.ts";
import { pairPlaces } from "../pair-places/index.ts";
import { planOf } from "../plan/index.ts";
import type { Plan, PlannedPlace } from "../plan/index.ts";
import { findSharing } from "../sharing/index.ts";
import type { SameIds } from "../sharing/index.ts";
import { faultAtoms, isClaim, judgeSilence, limitsOfOne } from "../silence/index.ts";

export { SEEN, STATED } from "./lines.ts";
export type { Lines } from "./lines.ts";

export type CompareOptions = {
  /** Use allowed between the two visits by item id, in base units, for items that only rise; else the sheet's own. */
  readonly useAllowed?: Readonly<Record<string, number>>;
  /** Ids of A and B that name one instrument. */
  readonly sameInstruments?: SameIds;
  /** Ids of A and B that name one person. */
  readonly samePersons?: SameIds;
  /** What past pairs tell of the inspector who made a side's report; of a dealer's it is never asked. */
  readonly history?: { readonly a?: KnownReader | undefined; readonly b?: KnownReader | undefined };
};

const NO_ATOMS: readonly Atom[] = [];
const NOT_PROMISED = inOneShape({ ...SEEN_SOUND, reason: "absent-not-promised" });
/** Where no report speaks yet. */
const NOBODY: Entry["finding"] = { a: null, b: null };
const SILENT: Entry["firmness"] = { a: null, b: null };

/** A paper that is not there and that nobody promised is no fault, and nothing that is as it should be. */
const judgePromised = (judgment: Judgment, b: Finding | undefined): Judgment =>
  judgment === SEEN_SOUND && b?.answer.kind === "presence" && b.answer.value === "absent"
    ? NOT_PROMISED
    : judgment;

/** A reading that only one side took is judged against its limits. */
const judgeWhole = (meeting: Meeting, call: Call | null): Judgment => {
  const { place, a, b, sides, contexts } = meeting;
  const judgment = judgeSilence(a, b, call ?? "no-yardstick");
  const { presence, reading } = place.compiled.item;
  if (presence?.onlyIfPromised === true) return judgePromised(judgment, b);
  if (reading === undefined) return judgment;
  const limits = limitsOfOne(a, b, place.compiled.item, sides, contexts);
  if (limits.length === 0) return judgment;
  const over = limits.some((limit) => limit.b?.plain === "fail");
  return over
    ? { ...judgment, limits, marks: [...(judgment.marks ?? []), "over-limit"] }
    : { ...judgment, limits };
};

/** A fault the inspector did not look for stands as unseen; one only he found is bad; a kind he denies is sound. */
const judgeAtom = (meeting: Meeting, atom: Atom, call: Call | null): Judgment =>
  judgeSilence(meeting.a, meeting.b, atom.of === "fault" ? (call ?? "no-yardstick") : "good");

/** Lines as they are said, and where among them those of single faults and those with figures stand. */
type Written = { readonly entries: Entry[]; readonly faults: number[]; readonly measured: number[] };

const write = ({ entries, faults, measured }: Written, entry: Entry): void => {
  if (entry.atom.of === "fault") faults.push(entries.length);
  if (entry.figures !== undefined) measured.push(entries.length);
  entries.push(entry);
};

const appendOneSided = (meeting: Meeting, written: Written): void => {
  const { place, a, b, kindA, kindB } = meeting;
  const side = meeting.claimsB ? "b" : "a";
  const isFaults = (side === "b" ? kindB : kindA) === "faults";
  const answer = isFaults ? (side === "b" ? b : a)?.answer : undefined;
  const atoms = answer?.kind === "faults" ? faultAtoms(answer, side, place.frame) : NO_ATOMS;
  for (let index = 0; index < atoms.length; index += 1) {
    const atom = atoms[index];
    if (atom === undefined) continue;
    const calls = callSides(meeting, atom);
    write(written, makeEntry(meeting, atom, calls, judgeAtom(meeting, atom, calls.b)));
  }
  if (atoms.length > 0) return;
  const calls = callSides(meeting, WHOLE);
  write(written, makeEntry(meeting, WHOLE, calls, judgeWhole(meeting, calls.b)));
};

const appendFaults = (
  meeting: Meeting,
  a: AnswerOf<"faults">,
  b: AnswerOf<"faults">,
  sharedEye: boolean,
  written: Written,
): void => {
  const { compiled, frame } = meeting.place;
  const severityOf = (fault: Fault): Severity => callFault(fault, compiled.item, meeting.contexts.b);
  compareFaults({ a, b, item: compiled.item, frame, severityOf, sharedEye }, (atom, said) => {
    write(written, makeEntry(meeting, atom, callSides(meeting, atom), said));
  });
};

const appendWhole = (meeting: Meeting, judgment: Judgment, written: Written): void =>
  write(written, makeEntry(meeting, WHOLE, callSides(meeting, WHOLE), judgment));

/** "Not known" claims nothing: what the inspector found stands as if the statement were silent. */
const isAnswered = (meeting: Meeting): meeting is Meeting & AnsweredPair =>
  meeting.a !== undefined &&
  meeting.b !== undefined &&
  meeting.kindA !== "not-seen" &&
  meeting.kindB !== "not-seen" &&
  (meeting.claimsA || !meeting.claimsB);

const append = (meeting: Meeting, written: Written): void => {
  const { kindA, kindB } = meeting;
  if (kindA === "not-fitted" || kindB === "not-fitted") {
    const fitted = compareFitted(meeting.a, meeting.b);
    if (fitted !== undefined) return appendWhole(meeting, fitted, written);
  }
  if (!isAnswered(meeting)) return appendOneSided(meeting, written);
  const { a, b } = meeting;
  return kindA === "faults" && a.answer.kind === "faults" && b.answer.kind === "faults"
    ? appendFaults(meeting, a.answer, b.answer, meeting.sides.sharing.person(a, b), written)
    : appendWhole(meeting, compareAnswers(meeting), written);
};

const once = <Value>(make: () => Value): (() => Value) => {
  let made: Value | undefined;
  return () => (made ??= make());
};

const odometerIn = ({ findings, visit }: Report, plan: Plan, indexes: Int32Array) => {
  const number = plan.numberOf(ODOMETER, "");
  const index = number === undefined ? undefined : indexes[number];
  return { visit, finding: findingOf(findings, index ?? -1) };
};

const sideOf = (report: Report, corrected: Corrected | undefined): Side => ({
  report,
  instruments: new Map(report.instruments.map((instrument) => [instrument.id, instrument])),
  corrected,
});

const sidesOf = (
  a: Report,
  b: Report,
  options: CompareOptions,
  corrected: Both,
  miles: () => number,
): Sides => ({
  a: sideOf(a, corrected.a),
  b: sideOf(b, corrected.b),
  sharing: findSharing(a, b, options),
  useAllowed: options.useAllowed ?? {},
  milesBetween: once(miles),
});

const firstMeeting = (place: PlannedPlace, sides: Sides, contexts: Meeting["contexts"]): Meeting => ({
  place,
  a: undefined,
  b: undefined,
  kindA: undefined,
  kindB: undefined,
  claimsA: false,
  claimsB: false,
  finding: NOBODY,
  firmness: SILENT,
  sides,
  contexts,
});

const moveTo = (
  meeting: Meeting,
  place: PlannedPlace,
  a: Finding | undefined,
  b: Finding | undefined,
): void => {
  meeting.place = place;
  meeting.a = a;
  meeting.b = b;
  meeting.kindA = a?.answer.kind;
  meeting.kindB = b?.answer.kind;
  meeting.claimsA = isClaim(a);
  meeting.claimsB = isClaim(b);
  meeting.firmness = firmnessOf(a, b);
};

/** `compare`, with the places of the lines, which who goes on with them then need not look up. */
export const compareByPlace = (
  a: Report,
  b: Report,
  sheet: CompiledSheet,
  options: CompareOptions = {},
): Lines => {
  const plan = planOf(sheet);
  const { places, findingsA, findingsB } = pairPlaces(a, b, plan);
  const corrected: Both = {
    a: correct(a, sheet, options.history?.a),
    b: correct(b, sheet, options.history?.b),
  };
  const first = contextMover(corrected.a?.taken ?? a, plan, findingsA);
  const second = contextMover(corrected.b?.taken ?? b, plan, findingsB);
  const contexts = { a: first.context, b: second.context };
  const sides = sidesOf(a, b, options, corrected, () =>
    milesBetween(odometerIn(a, plan, findingsA), odometerIn(b, plan, findingsB)),
  );
  const written: Written = { entries: [], faults: [], measured: [] };
  const firsts = new Int32Array(places.length);
  const firstOfItem = new Int32Array(sheet.items.size).fill(-1);
  const known = new Uint8Array(places.length);
  let meeting: Meeting | undefined;
  for (let number = 0; number < places.length; number += 1) {
    const place = places[number];
    if (place === undefined) continue;
    firsts[number] = written.entries.length;
    if (firstOfItem[place.itemOrder] === -1) firstOfItem[place.itemOrder] = written.entries.length;
    const indexA = findingsA[place.number] ?? -1;
    const indexB = findingsB[place.number] ?? -1;
    if (indexA < 0 && indexB < 0) {
      written.entries.push(place.silent);
      continue;
    }
    const findingA = findingOf(a.findings, indexA);
    const findingB = findingOf(b.findings, indexB);
    first.move(place, findingA);
    second.move(place, findingB);
    meeting ??= firstMeeting(place, sides, contexts);
    moveTo(meeting, place, findingA, findingB);
    known[number] = (meeting.claimsA ? STATED : 0) + (meeting.claimsB ? SEEN : 0);
    meeting.finding = { a: indexA < 0 ? null : indexA, b: indexB < 0 ? null : indexB };
    append(meeting, written);
  }
  const { faults, measured } = written;
  return {
    entries: mirrorFaults(written.entries, faults, a, b, sheet),
    places,
    firsts,
    firstOfItem,
    known,
    measured,
    corrected,
  };
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
