import type { Entry, Scatter } from "@evenhand/shared/comparison";
import { isOnlyAsDeclared } from "@evenhand/measurement/mixture-interval";
import type { PairChance } from "@evenhand/measurement/chance-off";
import { areEnough, pairScatter } from "@evenhand/measurement/over-dispersion";
import type { Apart, PairScatter } from "@evenhand/measurement/over-dispersion";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { worseBy, worseWay } from "../interval-figures/index.ts";
import { chancesOf, isOpenReading, openChance } from "../open-chance/index.ts";
import { asTaken, leftOf } from "../use-allowed/index.ts";

/** Only what the interval itself decided can hang on its width. */
const BY_INTERVAL: ReadonlySet<string> = new Set(["within-delta", "beyond-delta", "worst-spot-beyond-delta"]);

/** Differences that are no error of measurement. */
export const NO_ERROR: ReadonlySet<string> = new Set([
  "perhaps-the-unit",
  "other-conditions",
  "explained-by-conditions",
  "changed-between-days",
]);

/** A reading that tells, whose share as a witness is known once all of its item are. */
type Witness = { -readonly [Part in keyof Apart]-?: number };

/** How much better a reading was found than stated; `undefined` where it tells nothing of how far two people scatter. */
const apartOf = ({ item: id, atom, figures, reason }: Entry, sheet: CompiledSheet): Witness | undefined => {
  if (figures?.of !== "reading" || atom.of !== "answer" || NO_ERROR.has(reason)) return undefined;
  const { standardUncertainty, delta, useAllowed } = figures;
  const item = sheet.items.get(id)?.item;
  // What drifts moved by itself, and what use explains was taken off.
  if (item?.reading === undefined || item.time === "drifts" || useAllowed !== undefined) return undefined;
  const worse = worseBy(asTaken(figures), worseWay(item.reading));
  if (worse === undefined || standardUncertainty === 0) return undefined;
  return { foundBetter: 0 - worse, standardUncertainty, delta, share: 1 };
};

type Compared = { readonly index: number; readonly entry: Entry };

/** The readings among the entries, and where they stand. */
const comparedOf = (entries: readonly Entry[], indexes: Iterable<number>): Compared[] => {
  const compared: Compared[] = [];
  for (const index of indexes) {
    const entry = entries[index];
    if (entry?.figures?.of === "reading") compared.push({ index, entry });
  }
  return compared;
};

/** Half of what two places of one item are off by they are off by together, for the same two instruments read them (an assumption). */
const TOGETHER = 0.5;

/** The readings that tell; k places of one item weigh k/(1 + (k − 1)/2), less than two witnesses (Kish's design effect). */
const witnessesOf = (compared: readonly Compared[], sheet: CompiledSheet): Apart[] => {
  const byItem = new Map<string, Witness[]>();
  for (const { entry } of compared) {
    const apart = apartOf(entry, sheet);
    if (apart === undefined) continue;
    const known = byItem.get(entry.item);
    if (known === undefined) byItem.set(entry.item, [apart]);
    else known.push(apart);
  }
  const witnesses: Apart[] = [];
  for (const places of byItem.values()) {
    const share = 1 / (1 + (places.length - 1) * TOGETHER);
    for (const witness of places) {
      witness.share = share;
      witnesses.push(witness);
    }
  }
  return witnesses;
};

const hangsOnIt = ({ figures, reason }: Entry, people: PairScatter): boolean => {
  if (figures?.of !== "reading" || !BY_INTERVAL.has(reason)) return false;
  const { standardUncertainty, expandedUncertainty, delta } = figures;
  return isOnlyAsDeclared(
    { difference: leftOf(figures), standardUncertainty, expandedUncertainty, delta },
    people,
  );
};

/** The chance that each open reading is off, into figures that this analysis alone holds. */
const giveChances = (
  compared: readonly Compared[],
  readings: readonly Apart[],
  people: PairScatter,
  sheet: CompiledSheet,
): void => {
  let pair: PairChance | undefined;
  for (const { entry } of compared) {
    if (!isOpenReading(entry)) continue;
    const { figures } = entry;
    const spec = sheet.items.get(entry.item)?.item.reading;
    if (figures?.of !== "reading" || spec === undefined) continue;
    pair ??= chancesOf(readings, people);
    const chance = openChance(figures, spec, pair);
    if (chance !== undefined) figures.chanceOff = chance;
  }
};

const markAll = (entries: Entry[], compared: readonly Compared[], people: PairScatter): number => {
  let onlyAsDeclared = 0;
  for (const { index } of compared) {
    const entry = entries[index];
    if (entry === undefined || !hangsOnIt(entry, people)) continue;
    onlyAsDeclared += 1;
    entries[index] = { ...entry, marks: [...entry.marks, "only-as-declared"] };
  }
  return onlyAsDeclared;
};

/**
 * Weighs every reading by how far both people really scatter, read off what was found better than stated. Every agree and differ that
 * stands only if they scatter as little as they declared is marked; every open reading is given its chance of being worse by more than
 * what matters. It changes no outcome. A reading without a better side, one that drifts or that use explains is no witness; the places
 * of one item are less than two.
 *
 * @param entries whose figures this analysis alone holds: the chances are written into them
 * @param indexes which of them have figures, where that is known
 * @returns the entries, those marked anew; and what there is to say over the whole report
 * @example weighByScatter(entries, sheet).scatter // { readings: 84, asDeclared: 0.93…, onlyAsDeclared: 1 }
 */
export const weighByScatter = (
  entries: readonly Entry[],
  sheet: CompiledSheet,
  indexes: Iterable<number> = entries.keys(),
): { readonly entries: Entry[]; readonly scatter: Scatter } => {
  const compared = comparedOf(entries, indexes);
  const readings = witnessesOf(compared, sheet);
  const people = pairScatter(readings);
  const weighed = entries.slice();
  giveChances(compared, readings, people, sheet);
  const onlyAsDeclared = markAll(weighed, compared, people);
  const declared = [people.noisier, people.darker].map(([first]) => first?.weight ?? 1);
  const asDeclared = areEnough(readings) ? Math.min(...declared) : null;
  return { entries: weighed, scatter: { readings: readings.length, asDeclared, onlyAsDeclared } };
};
