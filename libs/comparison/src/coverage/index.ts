import type { Comparison, CoverageRow, Entry } from "@evenhand/shared/comparison";
import type { Report } from "@evenhand/shared/report";
import { SEVERITIES, severityRank } from "@evenhand/shared/severity";
import type { CompiledItem, CompiledSheet } from "@evenhand/sheet/compile-sheet";
import type { Lines } from "../compare/index.ts";
import { findingOf } from "../finding-of/index.ts";
import { isClaim } from "../silence/index.ts";
import type { PlannedPlace } from "../plan/index.ts";

type Findings = Pick<Report, "findings">;

/** What each side knows of a place. */
const STATED = 1;
const SEEN = 2;
const SEEN_SOUND_NOT_STATED = 4;

/** The places of a comparison, each once, however many entries it has, and what each side knows of it. */
export type SeenPlaces = {
  readonly places: readonly PlannedPlace[];
  /** The first entry of each, by its index. */
  readonly firsts: Int32Array;
  /** Of each: marks that `isStated`, `isSeen` and `isSeenSoundNotStated` read. Objects were a tenth of what an analysis left behind. */
  readonly known: Uint8Array;
};

const isKnown = ({ known }: SeenPlaces, at: number, mark: number): boolean => ((known[at] ?? 0) & mark) !== 0;

/** Whether the first side claims something of a place. */
export const isStated = (seen: SeenPlaces, at: number): boolean => isKnown(seen, at, STATED);
/** Whether the second side saw a place and knows. */
export const isSeen = (seen: SeenPlaces, at: number): boolean => isKnown(seen, at, SEEN);
/** Whether all there is to say of a place is that it was seen, sound, and not stated. */
export const isSeenSoundNotStated = (seen: SeenPlaces, at: number): boolean =>
  isKnown(seen, at, SEEN_SOUND_NOT_STATED);

/** Neither side says anything of it: nothing is known then. */
const isSilent = ({ finding, coverageOnly }: Entry): boolean =>
  finding.a === null && finding.b === null && coverageOnly === undefined;

const knownOf = ({ finding, coverageOnly }: Entry, a: Findings, b: Findings): number => {
  const stated = isClaim(findingOf(a.findings, finding.a));
  const seen = isClaim(findingOf(b.findings, finding.b));
  return (
    (stated ? STATED : 0) | (seen ? SEEN : 0) | (!stated && coverageOnly === true ? SEEN_SOUND_NOT_STATED : 0)
  );
};

/**
 * What each side knows of the places of a comparison.
 *
 * @param lines of `compareByPlace`: where the entries of each place begin
 * @param entries the same, whatever rules laid onto them since
 * @example isSeen(placesSeen(lines, lines.entries, statement, inspection), 0) // true
 */
export const placesSeen = (
  { places, firsts }: Pick<Lines, "places" | "firsts">,
  entries: readonly Entry[],
  a: Findings,
  b: Findings,
): SeenPlaces => {
  const known = new Uint8Array(places.length);
  for (let at = 0; at < places.length; at += 1) {
    const entry = entries[firsts[at] ?? 0];
    if (entry === undefined || isSilent(entry)) continue;
    known[at] = knownOf(entry, a, b);
  }
  return { places, firsts, known };
};

const emptyRow = (of: string): CoverageRow => ({
  of,
  onSheet: 0,
  stated: 0,
  seen: 0,
  statedAndSeen: 0,
  seenSoundNotStated: 0,
});

const count = (row: CoverageRow | undefined, seen: SeenPlaces, at: number): void => {
  if (row === undefined) return;
  row.onSheet += 1;
  if ((seen.known[at] ?? 0) === 0) return;
  if (isStated(seen, at)) row.stated += 1;
  if (isSeen(seen, at)) row.seen += 1;
  if (isStated(seen, at) && isSeen(seen, at)) row.statedAndSeen += 1;
  if (isSeenSoundNotStated(seen, at)) row.seenSoundNotStated += 1;
};

/**
 * How much was stated and seen, counted in places that apply to the car: by section, by severity and over the
 * whole, with both denominators, what is on the sheet and what was stated. Sections with no place on this car are
 * left out.
 *
 * @example coverageOf(placesSeen(lines, lines.entries, a, b), sheet).whole // { of: "whole", onSheet: 611, stated: 402, … }
 */
export const coverageOf = (seen: SeenPlaces, sheet: CompiledSheet): Comparison["coverage"] => {
  const sections = new Map(sheet.sheet.sections.map(({ id }) => [id, emptyRow(id)]));
  const severities = SEVERITIES.map((id) => emptyRow(id));
  const whole = emptyRow("whole");
  let item: CompiledItem | undefined;
  let section: CoverageRow | undefined;
  for (let at = 0; at < seen.places.length; at += 1) {
    const place = seen.places[at];
    if (place === undefined) continue;
    // Places of one item stand together.
    if (place.compiled !== item) {
      item = place.compiled;
      section = sections.get(item.item.section);
    }
    count(whole, seen, at);
    count(severities[severityRank(place.severity)], seen, at);
    count(section, seen, at);
  }
  return {
    bySection: Array.from(sections.values()).filter(({ onSheet }) => onSheet > 0),
    bySeverity: severities,
    whole,
  };
};
