import type { Comparison, CoverageRow, Entry } from "@evenhand/shared/comparison";
import type { Finding } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";
import { SEVERITIES } from "@evenhand/shared/severity";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { SEEN, STATED } from "../compare/index.ts";
import type { Lines } from "../compare/index.ts";
import { findingOf } from "../finding-of/index.ts";
import type { PlannedPlace } from "../plan/index.ts";

type Findings = Pick<Report, "findings">;

/** One place of a comparison, however many entries it has. One object moves over all the places, and nobody keeps it. */
export type SeenPlace = {
  place: PlannedPlace;
  /** The first of its entries, by its index. */
  entry: number;
  /** What each side says there. */
  a: Finding | undefined;
  b: Finding | undefined;
  /** The first side claims something of it. */
  stated: boolean;
  /** The second side saw it and knows. */
  seen: boolean;
  /** All there is to say is that it was seen, sound, and not stated. */
  seenSoundNotStated: boolean;
};

const firstPlace = (place: PlannedPlace): SeenPlace => ({
  place,
  entry: 0,
  a: undefined,
  b: undefined,
  stated: false,
  seen: false,
  seenSoundNotStated: false,
});

const moveTo = (
  moving: SeenPlace,
  { finding, coverageOnly }: Pick<Entry, "finding" | "coverageOnly">,
  known: number,
  a: Findings,
  b: Findings,
): void => {
  moving.a = findingOf(a.findings, finding.a);
  moving.b = findingOf(b.findings, finding.b);
  moving.stated = (known & STATED) !== 0;
  moving.seen = (known & SEEN) !== 0;
  moving.seenSoundNotStated = !moving.stated && coverageOnly === true;
};

/** Of a place nobody speaks of nothing need be looked up. */
const moveToSilent = (moving: SeenPlace): void => {
  moving.a = undefined;
  moving.b = undefined;
  moving.stated = false;
  moving.seen = false;
  moving.seenSoundNotStated = false;
};

/**
 * Shows the places of a comparison, each once, and what each side knows of it. A list of them would be a tenth of what an analysis
 * leaves behind.
 *
 * @param lines of `compareByPlace`: where the entries of each place begin
 * @param entries the same, whatever rules laid onto them since
 * @param look takes each place; it is good until the next one
 * @example lookOver(lines, lines.entries, statement, inspection, ({ seen }) => { if (!seen) unseen += 1; })
 */
export const lookOver = (
  { places, firsts, known }: Pick<Lines, "places" | "firsts" | "known">,
  entries: readonly Entry[],
  a: Findings,
  b: Findings,
  look: (seen: SeenPlace) => void,
): void => {
  let moving: SeenPlace | undefined;
  for (let at = 0; at < places.length; at += 1) {
    const place = places[at];
    const first = firsts[at] ?? 0;
    const entry = entries[first];
    if (place === undefined || entry === undefined) continue;
    moving ??= firstPlace(place);
    moving.place = place;
    moving.entry = first;
    if (entry === place.silent) moveToSilent(moving);
    else moveTo(moving, entry, known[at] ?? 0, a, b);
    look(moving);
  }
};

const emptyRow = (of: string): CoverageRow => ({
  of,
  onSheet: 0,
  stated: 0,
  seen: 0,
  statedAndSeen: 0,
  seenSoundNotStated: 0,
});

const count = (row: CoverageRow | undefined, { stated, seen, seenSoundNotStated }: SeenPlace): void => {
  if (row === undefined) return;
  row.onSheet += 1;
  if (stated) row.stated += 1;
  if (seen) row.seen += 1;
  if (stated && seen) row.statedAndSeen += 1;
  if (seenSoundNotStated) row.seenSoundNotStated += 1;
};

/** Every place has one severity, so that all of them together are the whole. */
const sumOf = (rows: readonly CoverageRow[]): CoverageRow => {
  const whole = emptyRow("whole");
  for (const row of rows) {
    whole.onSheet += row.onSheet;
    whole.stated += row.stated;
    whole.seen += row.seen;
    whole.statedAndSeen += row.statedAndSeen;
    whole.seenSoundNotStated += row.seenSoundNotStated;
  }
  return whole;
};

/**
 * Counts how much was stated and seen, in places that apply to the car: by section, by severity and over the whole, with both
 * denominators, what is on the sheet and what was stated. Sections with no place on this car are left out.
 *
 * @returns `count`, to be shown every place; and what it comes to
 * @example
 * const { count, coverage } = coverageCounter(sheet);
 * lookOver(lines, lines.entries, a, b, count);
 * coverage().whole // { of: "whole", onSheet: 611, stated: 402, … }
 */
export const coverageCounter = (sheet: CompiledSheet) => {
  const sections = sheet.sheet.sections.map(({ id }) => emptyRow(id));
  const severities = SEVERITIES.map((id) => emptyRow(id));
  const countPlace = (seen: SeenPlace): void => {
    const { section, rank } = seen.place;
    count(severities[rank], seen);
    count(sections[section], seen);
  };
  const coverage = (): Comparison["coverage"] => ({
    bySection: sections.filter(({ onSheet }) => onSheet > 0),
    bySeverity: severities,
    whole: sumOf(severities),
  });
  return { count: countPlace, coverage };
};
