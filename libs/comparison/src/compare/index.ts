import type { Atom, Entry } from "@evenhand/shared/comparison";
import type { Finding, Firmness } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { isBad } from "@evenhand/sheet/is-bad";
import { compareAnswers } from "../compare-answers/index.ts";
import type { Sides } from "../compare-answers/index.ts";
import { compareFaults } from "../compare-faults/index.ts";
import type { AtomJudgment } from "../compare-faults/index.ts";
import type { Judgment } from "../judgment/index.ts";
import { failsLimit } from "../limit-figures/index.ts";
import { planOf } from "../plan/index.ts";
import type { Plan, PlannedPlace } from "../plan/index.ts";
import { findSharing } from "../sharing/index.ts";
import type { SameIds } from "../sharing/index.ts";
import { faultAtoms, isClaim, isSilence, judgeSilence, limitsOfOne } from "../silence/index.ts";
import type { SilenceJudgment } from "../silence/index.ts";

export type CompareOptions = {
  /** Use allowed between the two visits by item id, in base units, for items that only rise; else the sheet's own. */
  readonly useAllowed?: Readonly<Record<string, number>>;
  /** Ids of A and B that name one instrument. */
  readonly sameInstruments?: SameIds;
  /** Ids of A and B that name one person. */
  readonly samePersons?: SameIds;
};

const WHOLE: Atom = { of: "answer" };

/** The few pairs of firmness there are, kept once each. */
const FIRMNESS: readonly (Firmness | null)[] = [null, "asserted", "hedged", "second-hand"];
const FIRMNESSES = FIRMNESS.map((a) => FIRMNESS.map((b) => ({ a, b })));

const firmnessOf = (a: Finding | undefined, b: Finding | undefined): Entry["firmness"] => {
  const [first, second] = [a?.firmness ?? null, b?.firmness ?? null];
  return FIRMNESSES[FIRMNESS.indexOf(first)]?.[FIRMNESS.indexOf(second)] ?? { a: first, b: second };
};

type Found = { readonly a: number | null; readonly b: number | null };

/** One place as the two reports have it. */
type Meeting = {
  readonly place: PlannedPlace;
  readonly a: Finding | undefined;
  readonly b: Finding | undefined;
  readonly finding: Found;
};

const makeEntry = (meeting: Meeting, atom: Atom, judgment: SilenceJudgment): Entry => {
  const { item } = meeting.place.compiled;
  const entry: Entry = {
    item: item.id,
    position: meeting.place.position,
    atom,
    outcome: judgment.outcome,
    reason: judgment.reason,
    direction: judgment.direction,
    consequence: item.consequence,
    standing: judgment.standing,
    firmness: firmnessOf(meeting.a, meeting.b),
    finding: meeting.finding,
  };
  if (judgment.figures !== undefined) entry.figures = judgment.figures;
  if (judgment.limits !== undefined) entry.limits = judgment.limits;
  if (judgment.coverageOnly === true) entry.coverageOnly = true;
  return entry;
};

/** Readings alone are judged against limits; one that fails was found bad. */
const silenceWithLimits = ({ place, a, b }: Meeting, sides: Sides, bad: boolean): SilenceJudgment => {
  const spec = place.compiled.item.reading;
  if (spec === undefined) return judgeSilence(a, b, bad);
  const limits = limitsOfOne(a, b, spec, { a: sides.a.instruments, b: sides.b.instruments });
  const judgment = judgeSilence(a, b, bad || failsLimit(limits, "b"));
  return limits.length === 0 ? judgment : { ...judgment, limits };
};

const judgeOneSided = (meeting: Meeting, sides: Sides): AtomJudgment[] => {
  const { place, a, b } = meeting;
  const item = place.compiled.item;
  const [side, answer] = isClaim(b) ? (["b", b?.answer] as const) : (["a", a?.answer] as const);
  const atoms = answer?.kind === "faults" ? faultAtoms(answer, side, place.frame) : [];
  if (atoms.length > 0) {
    return atoms.map((atom) => ({ ...judgeSilence(a, b, atom.of === "fault"), atom }));
  }
  const bad = b !== undefined && isBad(b.answer, item, sides.b.report.scales);
  return [{ ...silenceWithLimits(meeting, sides, bad), atom: WHOLE }];
};

const judge = (meeting: Meeting, sides: Sides): AtomJudgment[] => {
  const { place, a, b } = meeting;
  if (a === undefined || b === undefined || isSilence(a, b)) return judgeOneSided(meeting, sides);
  if (a.answer.kind === "faults" && b.answer.kind === "faults") {
    return compareFaults(a.answer, b.answer, place.frame, sides.sharing.person(a, b));
  }
  const judgment: Judgment = compareAnswers({ a, b, compiled: place.compiled, sides });
  return [{ ...judgment, atom: WHOLE }];
};

/** Index of each place's finding, by the place's number; -1 where there is none. */
const indexFindings = (report: Report, plan: Plan, places: PlannedPlace[]): number[] => {
  const numbers: number[] = [];
  for (const { item, position } of report.findings) {
    const place = plan.place(item, position);
    numbers.push(place.number);
    places.push(place);
  }
  return numbers;
};

const invert = (numbers: readonly number[], count: number): Int32Array => {
  const indexes = new Int32Array(count).fill(-1);
  for (let index = 0; index < numbers.length; index += 1) indexes[numbers[index] ?? 0] = index;
  return indexes;
};

const bySheet = (first: PlannedPlace, second: PlannedPlace): number =>
  first.compiled.order - second.compiled.order ||
  (first.compiled.positionOrder(first.position) ?? 0) - (second.compiled.positionOrder(second.position) ?? 0);

/** Places that apply to the car as either report describes it, and any other that was answered, in sheet order. */
const placesOf = (
  a: Report,
  b: Report,
  plan: Plan,
  answered: readonly PlannedPlace[],
): readonly PlannedPlace[] => {
  const applicable = plan.applicable(a.vehicle.form);
  const more = plan.applicable(b.vehicle.form);
  const known = new Set(applicable);
  const left = [...(more === applicable ? [] : more), ...answered].filter((place) => !known.has(place));
  return left.length === 0 ? applicable : Array.from(new Set([...applicable, ...left])).sort(bySheet);
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
  const plan = planOf(sheet);
  const answered: PlannedPlace[] = [];
  const numbersA = indexFindings(a, plan, answered);
  const numbersB = indexFindings(b, plan, answered);
  const places = placesOf(a, b, plan, answered);
  const [findingsA, findingsB] = [invert(numbersA, plan.count()), invert(numbersB, plan.count())];
  const sides = sidesOf(a, b, options);
  const entries: Entry[] = [];
  for (const place of places) {
    const [indexA, indexB] = [findingsA[place.number] ?? -1, findingsB[place.number] ?? -1];
    if (indexA < 0 && indexB < 0) {
      entries.push(place.silent);
      continue;
    }
    const finding = { a: indexA < 0 ? null : indexA, b: indexB < 0 ? null : indexB };
    const meeting: Meeting = { place, a: a.findings[indexA], b: b.findings[indexB], finding };
    for (const judgment of judge(meeting, sides)) entries.push(makeEntry(meeting, judgment.atom, judgment));
  }
  return { entries };
};
