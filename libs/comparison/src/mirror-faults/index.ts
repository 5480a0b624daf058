import type { Fault } from "@evenhand/shared/answer";
import type { Entry } from "@evenhand/shared/comparison";
import type { Report } from "@evenhand/shared/report";
import { mirrorImage } from "@evenhand/sheet/call";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";

const faultOf = (entry: Entry, report: Report, side: "a" | "b"): Fault | undefined => {
  const finding = report.findings[entry.finding[side] ?? -1];
  if (entry.atom.of !== "fault" || finding?.answer.kind !== "faults") return undefined;
  return finding.answer.found[entry.atom[side] ?? -1];
};

const ONLY_FOUND: ReadonlySet<string> = new Set(["denied-found", "found-bad-not-stated"]);

/** Twice as long, or half, is another fault. */
const MOST_RATIO = 2;

const isAlike = (a: Fault, b: Fault, sheet: CompiledSheet): boolean => {
  const family = (kind: string) => sheet.faultKinds.get(kind)?.family ?? kind;
  if (family(a.kind) !== family(b.kind)) return false;
  if (a.spot !== undefined && b.spot !== undefined && a.spot !== b.spot && mirrorImage(a.spot) !== b.spot) {
    return false;
  }
  if (a.extent === undefined || b.extent === undefined || a.extent.unit !== b.extent.unit) return true;
  const ratio = (a.extent.value + 1) / (b.extent.value + 1);
  return ratio <= MOST_RATIO && ratio >= 1 / MOST_RATIO;
};

const placeOf = (item: string, position: string): string => `${item} ${position}`;

/** What only the inspector found, and where it stands among the lines, by its place. */
const foundByPlace = (entries: readonly Entry[], b: Report): Map<string, { at: number; fault: Fault }[]> => {
  const found = new Map<string, { at: number; fault: Fault }[]>();
  for (const [at, entry] of entries.entries()) {
    const fault = ONLY_FOUND.has(entry.reason) ? faultOf(entry, b, "b") : undefined;
    if (fault === undefined) continue;
    const place = placeOf(entry.item, entry.position);
    const there = found.get(place);
    if (there === undefined) found.set(place, [{ at, fault }]);
    else there.push({ at, fault });
  }
  return found;
};

/**
 * Takes a fault disclosed on one side of the car and found at the mirror image of that place for what it probably is: left and
 * right exchanged. The line of what was found is doubtful, and the disclosed one folded into it; nobody is accused before somebody
 * looked again.
 *
 * @param entries lines of one comparison in sheet order
 * @returns the same lines, those that mirror each other replaced
 */
export const mirrorFaults = (entries: Entry[], a: Report, b: Report, sheet: CompiledSheet): Entry[] => {
  const disclosed: { readonly entry: Entry; readonly index: number }[] = [];
  for (const [index, entry] of entries.entries()) {
    if (entry.reason === "disclosed-not-found") disclosed.push({ entry, index });
  }
  if (disclosed.length === 0) return entries;
  const candidates = foundByPlace(entries, b);
  const mirrored = new Map<number, Entry>();
  for (const { entry, index } of disclosed) {
    const fault = faultOf(entry, a, "a");
    const position = mirrorImage(entry.position);
    if (fault === undefined || position === undefined) continue;
    const at = candidates
      .get(placeOf(entry.item, position))
      ?.find((other) => !mirrored.has(other.at) && isAlike(fault, other.fault, sheet))?.at;
    const found = entries[at ?? -1];
    if (at === undefined || found === undefined) continue;
    const reason = "perhaps-other-side";
    mirrored.set(at, {
      ...found,
      outcome: "doubtful",
      reason,
      standing: "in-doubt",
      marks: [...found.marks, reason],
    });
    mirrored.set(index, {
      ...entry,
      outcome: "consistent",
      reason,
      direction: "neither",
      standing: "not-contradicted",
      severity: null,
      marks: [...entry.marks, reason],
    });
  }
  return mirrored.size === 0 ? entries : entries.map((entry, index) => mirrored.get(index) ?? entry);
};
