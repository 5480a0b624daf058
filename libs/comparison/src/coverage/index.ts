import type { Comparison, CoverageRow, Entry } from "@evenhand/shared/comparison";
import type { Report } from "@evenhand/shared/report";
import { SEVERITIES } from "@evenhand/shared/severity";
import type { Severity } from "@evenhand/shared/severity";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { findingOf } from "../finding-of/index.ts";
import { isClaim } from "../silence/index.ts";
import type { PlannedPlace } from "../plan/index.ts";
import { worstSeverity } from "../worst-severity/index.ts";

type Findings = Pick<Report, "findings">;

/** One place, however many entries it has. */
export type SeenPlace = {
  readonly item: string;
  readonly position: string;
  /** The first of its entries, by its index. */
  readonly entry: number;
  /** How grave it can be that the place is not as claimed, whatever was found. */
  readonly atStake: Severity;
  readonly finding: Entry["finding"];
  /** The first side claims something of it. */
  readonly stated: boolean;
  /** The second side saw it and knows. */
  readonly seen: boolean;
  /** All there is to say is that it was seen, sound, and not stated. */
  readonly seenSoundNotStated: boolean;
};

const atStakeAt = ({ item, position }: Entry, sheet: CompiledSheet): Severity => {
  const compiled = sheet.items.get(item);
  return compiled === undefined ? "small" : worstSeverity(compiled, position);
};

/**
 * The places of a comparison, each once; entries of one place stand together.
 *
 * @param placed the places, where they are known: they need not be looked up then
 * @example placesSeen(entries, statement, inspection, sheet).filter(({ seen }) => !seen)
 */
export const placesSeen = (
  entries: readonly Entry[],
  a: Findings,
  b: Findings,
  sheet: CompiledSheet,
  placed: readonly PlannedPlace[] = [],
): SeenPlace[] => {
  const places: SeenPlace[] = [];
  let last: Entry | undefined;
  for (let index = 0; index < entries.length; index += 1) {
    const entry = entries[index];
    if (entry === undefined) continue;
    if (last !== undefined && last.item === entry.item && last.position === entry.position) continue;
    last = entry;
    const { item, position, finding } = entry;
    const atStake = placed[places.length]?.severity ?? atStakeAt(entry, sheet);
    const stated = isClaim(findingOf(a.findings, finding.a));
    const seen = isClaim(findingOf(b.findings, finding.b));
    const seenSoundNotStated = !stated && entry.coverageOnly === true;
    places.push({ item, position, entry: index, atStake, finding, stated, seen, seenSoundNotStated });
  }
  return places;
};

const emptyRow = (of: string): CoverageRow => ({
  of,
  onSheet: 0,
  stated: 0,
  seen: 0,
  statedAndSeen: 0,
  seenSoundNotStated: 0,
});

const count = (row: CoverageRow | undefined, place: SeenPlace): void => {
  if (row === undefined) return;
  row.onSheet += 1;
  if (place.stated) row.stated += 1;
  if (place.seen) row.seen += 1;
  if (place.stated && place.seen) row.statedAndSeen += 1;
  if (place.seenSoundNotStated) row.seenSoundNotStated += 1;
};

/**
 * How much was stated and seen, counted in places that apply to the car: by section, by severity and over the
 * whole, with both denominators, what is on the sheet and what was stated. Sections with no place on this car are
 * left out.
 *
 * @example coverageOf(placesSeen(entries, a, b, sheet), sheet).whole // { of: "whole", onSheet: 611, stated: 402, … }
 */
export const coverageOf = (places: readonly SeenPlace[], sheet: CompiledSheet): Comparison["coverage"] => {
  const sections = new Map(sheet.sheet.sections.map(({ id }) => [id, emptyRow(id)]));
  const severities = new Map(SEVERITIES.map((id) => [id, emptyRow(id)]));
  const whole = emptyRow("whole");
  let item: string | undefined;
  let section: CoverageRow | undefined;
  for (const place of places) {
    // Places of one item stand together.
    if (place.item !== item) {
      item = place.item;
      section = sections.get(sheet.items.get(item)?.item.section ?? "");
    }
    count(whole, place);
    count(severities.get(place.atStake), place);
    count(section, place);
  }
  return {
    bySection: Array.from(sections.values()).filter(({ onSheet }) => onSheet > 0),
    bySeverity: Array.from(severities.values()),
    whole,
  };
};
