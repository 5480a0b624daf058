import type { Fault } from "@evenhand/shared/answer";
import type { Entry } from "@evenhand/shared/comparison";
import type { Report } from "@evenhand/shared/report";
import { mirrorImage } from "@evenhand/sheet/call";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";

const faultOf = (entry: Entry, report: Report, side: "a" | "b"): Fault | undefined => {
  const place = entry.finding[side];
  const index = entry.atom.of === "fault" ? entry.atom[side] : undefined;
  if (place === null || index === undefined) return undefined;
  const answer = report.findings[place]?.answer;
  return answer?.kind === "faults" ? answer.found[index] : undefined;
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

type Found = { readonly at: number; readonly position: string; readonly fault: Fault };

/** What only the inspector found, and where it stands among the lines, by its item. */
const foundByItem = (
  entries: readonly Entry[],
  faults: readonly number[],
  b: Report,
): Map<string, Found[]> => {
  const found = new Map<string, Found[]>();
  for (const at of faults) {
    const entry = entries[at];
    if (entry === undefined || !ONLY_FOUND.has(entry.reason)) continue;
    const fault = faultOf(entry, b, "b");
    if (fault === undefined) continue;
    const { item, position } = entry;
    const there = found.get(item);
    if (there === undefined) found.set(item, [{ at, position, fault }]);
    else there.push({ at, position, fault });
  }
  return found;
};

type Disclosed = {
  readonly entry: Entry;
  readonly index: number;
  readonly fault: Fault;
  readonly mirror: string;
};

/** Faults disclosed and not found, at places that the other side of the car has too. */
const disclosedIn = (entries: readonly Entry[], faults: readonly number[], a: Report): Disclosed[] => {
  const disclosed: Disclosed[] = [];
  for (const index of faults) {
    const entry = entries[index];
    if (entry?.reason !== "disclosed-not-found") continue;
    const mirror = mirrorImage(entry.position);
    const fault = mirror === undefined ? undefined : faultOf(entry, a, "a");
    if (mirror !== undefined && fault !== undefined) disclosed.push({ entry, index, fault, mirror });
  }
  return disclosed;
};

/**
 * Takes a fault disclosed on one side of the car and found at the mirror image of that place for what it probably is: left and
 * right exchanged. The line of what was found is doubtful, and the disclosed one folded into it; nobody is accused before somebody
 * looked again.
 *
 * @param entries lines of one comparison in sheet order
 * @param faults where among them the lines of single faults stand
 * @returns the same lines, those that mirror each other replaced
 */
export const mirrorFaults = (
  entries: Entry[],
  faults: readonly number[],
  a: Report,
  b: Report,
  sheet: CompiledSheet,
): Entry[] => {
  const disclosed = disclosedIn(entries, faults, a);
  if (disclosed.length === 0) return entries;
  const candidates = foundByItem(entries, faults, b);
  const mirrored = new Map<number, Entry>();
  for (const { entry, index, fault, mirror } of disclosed) {
    const at = candidates
      .get(entry.item)
      ?.find(
        (other) => other.position === mirror && !mirrored.has(other.at) && isAlike(fault, other.fault, sheet),
      )?.at;
    const found = at === undefined ? undefined : entries[at];
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
