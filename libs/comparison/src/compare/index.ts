import type { Atom, Entry } from "@evenhand/shared/comparison";
import type { Finding, Firmness } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { isBad } from "@evenhand/sheet/is-bad";
import { compareAnswers } from "../compare-answers/index.ts";
import type { Sides } from "../compare-answers/index.ts";
import { compareFaults } from "../compare-faults/index.ts";
import { WHOLE } from "../judgment/index.ts";
import type { Judgment } from "../judgment/index.ts";
import { failsLimit } from "../limit-figures/index.ts";
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
const FIRMNESSES: readonly (readonly Entry["firmness"][])[] = FIRMNESS.map((a) =>
  FIRMNESS.map((b) => Object.freeze({ a, b })),
);

const firmnessOf = (a: Finding | undefined, b: Finding | undefined): Entry["firmness"] => {
  const [first, second] = [a?.firmness ?? null, b?.firmness ?? null];
  return FIRMNESSES[FIRMNESS.indexOf(first)]?.[FIRMNESS.indexOf(second)] ?? { a: first, b: second };
};

/** One place as the two reports have it. */
type Meeting = {
  readonly place: PlannedPlace;
  readonly a: Finding | undefined;
  readonly b: Finding | undefined;
  readonly finding: Entry["finding"];
  readonly sides: Sides;
};

const makeEntry = ({ place, a, b, finding }: Meeting, atom: Atom, judgment: Judgment): Entry => {
  const { id, consequence } = place.compiled.item;
  const entry: Entry = {
    item: id,
    position: place.position,
    atom,
    outcome: judgment.outcome,
    calls: { a: null, b: null },
    severity: null,
    marks: [],
    reason: judgment.reason,
    direction: judgment.direction,
    consequence,
    standing: judgment.standing,
    firmness: firmnessOf(a, b),
    finding,
  };
  if (judgment.figures !== undefined) entry.figures = judgment.figures;
  if (judgment.limits !== undefined) entry.limits = judgment.limits;
  if (judgment.coverageOnly === true) entry.coverageOnly = true;
  return entry;
};

/** Readings alone are judged against limits; one that fails was found bad. */
const judgeWhole = ({ place, a, b, sides }: Meeting): Judgment => {
  const { item } = place.compiled;
  const bad = b !== undefined && isBad(b.answer, item, sides.b.report.scales);
  if (item.reading === undefined) return judgeSilence(a, b, bad);
  const limits = limitsOfOne(a, b, item.reading, { a: sides.a.instruments, b: sides.b.instruments });
  const judgment = judgeSilence(a, b, bad || failsLimit(limits, "b"));
  return limits.length === 0 ? judgment : { ...judgment, limits };
};

const appendOneSided = (meeting: Meeting, entries: Entry[]): void => {
  const { place, a, b } = meeting;
  const [side, answer] = isClaim(b) ? (["b", b?.answer] as const) : (["a", a?.answer] as const);
  const atoms = answer?.kind === "faults" ? faultAtoms(answer, side, place.frame) : [];
  for (const atom of atoms) entries.push(makeEntry(meeting, atom, judgeSilence(a, b, atom.of === "fault")));
  if (atoms.length === 0) entries.push(makeEntry(meeting, WHOLE, judgeWhole(meeting)));
};

const append = (meeting: Meeting, entries: Entry[]): void => {
  const { place, a, b, sides } = meeting;
  if (a === undefined || b === undefined || isSilence(a, b)) return appendOneSided(meeting, entries);
  if (a.answer.kind === "faults" && b.answer.kind === "faults") {
    const atoms = compareFaults(a.answer, b.answer, place.frame, sides.sharing.person(a, b));
    for (const { atom, said } of atoms) entries.push(makeEntry(meeting, atom, said));
    return undefined;
  }
  entries.push(makeEntry(meeting, WHOLE, compareAnswers({ a, b, place, sides })));
};

const sidesOf = (a: Report, b: Report, options: CompareOptions): Sides => ({
  a: { report: a, instruments: new Map(a.instruments.map((instrument) => [instrument.id, instrument])) },
  b: { report: b, instruments: new Map(b.instruments.map((instrument) => [instrument.id, instrument])) },
  sharing: findSharing(a, b, options),
  useAllowed: options.useAllowed ?? {},
});

/**
 * Sets two reports on one car against each other, item by item: what was stated (A) and what was found (B). Every
 * place that applies to the car has at least one entry, answered or not; every fault, denied kind and reading has
 * exactly one. Outcomes and figures only: rules, statistics and order are `analyze`'s, wording is `sentence`'s.
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
): { readonly entries: Entry[] } => {
  const { places, findingsA, findingsB } = pairPlaces(a, b, planOf(sheet));
  const sides = sidesOf(a, b, options);
  const entries: Entry[] = [];
  for (const place of places) {
    const [indexA, indexB] = [findingsA[place.number] ?? -1, findingsB[place.number] ?? -1];
    if (indexA < 0 && indexB < 0) {
      entries.push(place.silent);
      continue;
    }
    const finding = { a: indexA < 0 ? null : indexA, b: indexB < 0 ? null : indexB };
    append({ place, a: a.findings[indexA], b: b.findings[indexB], finding, sides }, entries);
  }
  return { entries };
};
