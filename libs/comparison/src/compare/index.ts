import type { Atom, Entry } from "@evenhand/shared/comparison";
import type { Report } from "@evenhand/shared/report";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { callSide, makeEntry } from "./entry.ts";
import type { Meeting } from "./entry.ts";
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
