import { clopperPearsonInterval } from "@evenhand/measurement/proportion-interval";
import type { Truth } from "./truth.ts";
import type { JudgeName, Verdict } from "./judges.ts";
import { engineVerdict, verdictsOf } from "./judges.ts";
import type { Entry } from "@evenhand/shared/comparison";
import type { Pair } from "./people.ts";
import { entryKey, isReading, sheet, studied } from "./study.ts";
import type { Plant, Studied } from "./study.ts";
import { truthAway } from "./true-readings.ts";

/** How often each verdict was given, and of how many. */
export type Counts = { readonly of: number; readonly by: Readonly<Partial<Record<Verdict, number>>> };

/** Verdicts by judge, item and true distance in δ. */
export type Tally = Map<string, { of: number; by: Partial<Record<Verdict, number>> }>;

const NONE: Counts = { of: 0, by: {} };
const tallyKey = (judge: JudgeName, item: string, distance: number): string => `${judge}|${item}|${distance}`;

export const countsOf = (tally: Tally, judge: JudgeName, item: string, distance: number): Counts =>
  tally.get(tallyKey(judge, item, distance)) ?? NONE;

export const shareOf = ({ of, by }: Counts, ...verdicts: readonly Verdict[]): number =>
  of === 0 ? 0 : verdicts.reduce((sum, verdict) => sum + (by[verdict] ?? 0), 0) / of;

const ALL = "all";

/** All items together. */
export const allOf = (tally: Tally, judge: JudgeName, distance: number): Counts =>
  countsOf(tally, judge, ALL, distance);

const count = (tally: Tally, key: string, verdict: Verdict): void => {
  const counts = tally.get(key) ?? { of: 0, by: {} };
  counts.of += 1;
  counts.by[verdict] = (counts.by[verdict] ?? 0) + 1;
  tally.set(key, counts);
};

/**
 * In so many items, at every place, the car is worse than stated by one of the distances, in δ; the other items are as stated, but
 * for wear and what moves by itself.
 */
export const plantDistances =
  (share: number, distances: readonly number[]): Plant =>
  (car, draws) => {
    const ofItem = new Map<string, number>();
    const claims = new Map<string, Truth>();
    const known = car.known.map((one) => {
      const { item, truth, key } = one;
      // What is counted is no fraction of δ off.
      if (truth.kind !== "reading" || item.reading === undefined || item.reading.instrument.resolution === 0)
        return one;
      const drawn = ofItem.get(item.id) ?? (draws.chance(share) ? draws.pick(distances) : Number.NaN);
      ofItem.set(item.id, drawn);
      if (Number.isNaN(drawn)) return one;
      claims.set(key, truth);
      return { ...one, truth: { ...truth, value: truthAway(item.reading, truth.value, drawn) } };
    });
    return { car: { ...car, known }, claims };
  };

/** How far off every planted place is, in δ, as it was planted: whatever is nearest of the distances. */
const distanceOf = (one: Studied, key: string, truths: ReadonlyMap<string, Truth>): number => {
  const stated = one.story.claims.get(key);
  const found = truths.get(key);
  const spec = sheet.items.get(key.split("@")[0] ?? "")?.item.reading;
  if (stated?.kind !== "reading" || found?.kind !== "reading" || spec === undefined) return 0;
  const unit = Math.abs(truthAway(spec, stated.value, 1) - stated.value);
  return Math.round((20 * Math.abs(found.value - stated.value)) / unit) / 20;
};

/** What was stated passes an alarm or limit, and what was found fails it. */
const ACROSS = "across an alarm";
const isAcross = ({ limits = [] }: Entry): boolean =>
  limits.some(({ a, b }) => a?.plain === "pass" && b?.plain === "fail");

/** What the engine calls readings on opposite sides of an alarm. */
export const acrossAlarm = (tally: Tally): Counts => countsOf(tally, "this engine", ACROSS, 0);

/** An item that asks the other side of the statement alone, or of a paper, is no reading two people take. */
const tallyCar = (tally: Tally, one: Studied): void => {
  const truths = new Map(one.story.car.known.map(({ key, truth }) => [key, truth]));
  for (const entry of one.comparison.entries) {
    const item = sheet.items.get(entry.item)?.item;
    if (item?.reading === undefined) continue;
    const distance = distanceOf(one, entryKey(entry), truths);
    if (isAcross(entry)) count(tally, tallyKey("this engine", ACROSS, 0), engineVerdict(entry));
    for (const [judge, verdict] of verdictsOf(entry, one, item.reading)) {
      count(tally, tallyKey(judge, entry.item, distance), verdict);
      count(tally, tallyKey(judge, ALL, distance), verdict);
    }
  }
};

/** Readings alone of so many cars, planted so, by every judge. */
export const tallyReadings = (pair: Pair, cars: number, plant: Plant): Tally => {
  const tally: Tally = new Map();
  for (let number = 0; number < cars; number += 1) tallyCar(tally, studied(pair, number, plant, isReading));
  return tally;
};

/** What an item comes to at one distance, and whether it is surely over a share (99 %, one-sided; Clopper and Pearson). */
export type ItemShare = {
  readonly item: string;
  readonly share: number;
  readonly of: number;
  readonly surelyOver: boolean;
};

/** The items by how often they come out so, most often first. */
export const itemShares = (
  tally: Tally,
  distance: number,
  verdicts: readonly Verdict[],
  most: number,
): ItemShare[] =>
  Array.from(sheet.items.keys())
    .flatMap((item): ItemShare[] => {
      const counts = countsOf(tally, "this engine", item, distance);
      if (counts.of === 0) return [];
      const share = shareOf(counts, ...verdicts);
      const { low } = clopperPearsonInterval(Math.round(share * counts.of), counts.of, 0.98);
      return [{ item, share, of: counts.of, surelyOver: low > most }];
    })
    .sort((one, other) => other.share - one.share);
