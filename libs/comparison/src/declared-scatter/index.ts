import type { Entry, Scatter } from "@evenhand/shared/comparison";
import { isOnlyAsDeclared } from "@evenhand/measurement/mixture-interval";
import { areEnough, pairScatter } from "@evenhand/measurement/over-dispersion";
import type { Apart, PairScatter } from "@evenhand/measurement/over-dispersion";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { worseBy, worseWay } from "../interval-figures/index.ts";
import { leftOf } from "../use-allowed/index.ts";

/** Only what the interval itself decided can hang on its width. */
const BY_INTERVAL: ReadonlySet<string> = new Set(["within-delta", "beyond-delta", "worst-spot-beyond-delta"]);

/** Differences that are no error of measurement. */
const NO_ERROR: ReadonlySet<string> = new Set([
  "perhaps-the-unit",
  "other-conditions",
  "explained-by-conditions",
  "changed-between-days",
]);

/** How much better a reading was found than stated; `undefined` where it tells nothing of how far two people scatter. */
const apartOf = ({ item: id, atom, figures, reason }: Entry, sheet: CompiledSheet): Apart | undefined => {
  if (figures?.of !== "reading" || atom.of !== "answer" || NO_ERROR.has(reason)) return undefined;
  const { a, b, difference, standardUncertainty, delta, useAllowed } = figures;
  const item = sheet.items.get(id)?.item;
  // What drifts moved by itself, and what use explains was taken off.
  if (item?.reading === undefined || item.time === "drifts" || useAllowed !== undefined) return undefined;
  const worse = worseBy({ a, b, difference }, worseWay(item.reading));
  if (worse === undefined || standardUncertainty === 0) return undefined;
  return { foundBetter: 0 - worse, standardUncertainty, delta };
};

type Compared = { readonly index: number; readonly entry: Entry };

/** The readings among the entries, and where they stand: one look at each entry, for most have no figures. */
const comparedOf = (entries: readonly Entry[]): Compared[] => {
  const compared: Compared[] = [];
  for (let index = 0; index < entries.length; index += 1) {
    const entry = entries[index];
    if (entry?.figures?.of === "reading") compared.push({ index, entry });
  }
  return compared;
};

/** Half of what two places of one item are off by they are off by together, for the same two instruments read them (an assumption). */
const TOGETHER = 0.5;

/** The readings that tell; k places of one item weigh k/(1 + (k − 1)/2), less than two witnesses (Kish's design effect). */
const witnessesOf = (compared: readonly Compared[], sheet: CompiledSheet): Apart[] => {
  const byItem = new Map<string, Apart[]>();
  for (const { entry } of compared) {
    const apart = apartOf(entry, sheet);
    if (apart === undefined) continue;
    const known = byItem.get(entry.item);
    if (known === undefined) byItem.set(entry.item, [apart]);
    else known.push(apart);
  }
  return Array.from(byItem.values()).flatMap((places) =>
    places.map((apart) => ({ ...apart, share: 1 / (1 + (places.length - 1) * TOGETHER) })),
  );
};

const hangsOnIt = ({ figures, reason }: Entry, people: PairScatter): boolean => {
  if (figures?.of !== "reading" || !BY_INTERVAL.has(reason)) return false;
  const { standardUncertainty, expandedUncertainty, delta } = figures;
  return isOnlyAsDeclared(
    { difference: leftOf(figures), standardUncertainty, expandedUncertainty, delta },
    people,
  );
};

/**
 * Marks every agree and differ of a reading that stands only if both people scatter as little as they declared, by how far they
 * really do, read off what was found better than stated. It changes no outcome. A reading without a better side, one that drifts or
 * that use explains is no witness; the places of one item are less than two.
 *
 * @returns the entries, those marked anew; and what there is to say over the whole report
 * @example markOnlyAsDeclared(entries, sheet).scatter // { readings: 84, asDeclared: 0.93…, onlyAsDeclared: 1 }
 */
export const markOnlyAsDeclared = (
  entries: readonly Entry[],
  sheet: CompiledSheet,
): { readonly entries: Entry[]; readonly scatter: Scatter } => {
  const compared = comparedOf(entries);
  const readings = witnessesOf(compared, sheet);
  const people = pairScatter(readings);
  const marked = Array.from(entries);
  let onlyAsDeclared = 0;
  for (const { index, entry } of compared) {
    if (!hangsOnIt(entry, people)) continue;
    onlyAsDeclared += 1;
    marked[index] = { ...entry, marks: [...entry.marks, "only-as-declared"] };
  }
  const [noisier, darker] = [people.noisier, people.darker].map((ladder) => ladder[0]?.weight ?? 1);
  const asDeclared = areEnough(readings) ? Math.min(noisier ?? 1, darker ?? 1) : null;
  return { entries: marked, scatter: { readings: readings.length, asDeclared, onlyAsDeclared } };
};
