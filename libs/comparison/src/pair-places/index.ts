import type { Finding } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";
import type { Plan, PlannedPlace } from "../plan/index.ts";

/** The places to compare in sheet order, and each side's finding there by the place's number; -1 where it is silent. */
export type PairedPlaces = {
  readonly places: readonly PlannedPlace[];
  readonly findingsA: Int32Array;
  readonly findingsB: Int32Array;
};

type Placed = Pick<Report, "findings" | "vehicle">;

const bySheet = (first: PlannedPlace, second: PlannedPlace): number => first.order - second.order;

/** Findings are mostly written in the order of the sheet, and then there is nothing to sort. */
const inSheetOrder = (places: PlannedPlace[]): PlannedPlace[] => {
  let last = -1;
  for (const { order } of places) {
    if (order < last) return places.sort(bySheet);
    last = order;
  }
  return places;
};

/** Two lists in sheet order as one, from behind: putting a few places between many is less work than sorting them all. */
const merged = (many: readonly PlannedPlace[], few: readonly PlannedPlace[]): readonly PlannedPlace[] => {
  if (few.length === 0) return many;
  const all = many.concat(few);
  let ofMany = many.length - 1;
  let ofFew = few.length - 1;
  for (let at = all.length - 1; ofFew >= 0; at -= 1) {
    const one = many[ofMany];
    const other = few[ofFew];
    if (other === undefined) break;
    const isOne = one !== undefined && one.order > other.order;
    all[at] = isOne ? one : other;
    if (isOne) ofMany -= 1;
    else ofFew -= 1;
  }
  return all;
};

/** Which places stand on a list already, by their number, and those that were met beside it. */
type Met = { readonly listed: Uint8Array; readonly missing: PlannedPlace[] };

const meet = (place: PlannedPlace, { listed, missing }: Met): void => {
  if (listed[place.number] === 1 || place.circumstance) return;
  listed[place.number] = 1;
  missing.push(place);
};

/** A list in sheet order, and where in it the next place is looked for. */
type Walk = { readonly list: readonly PlannedPlace[]; next: number };

/** How many places on a finding is looked for before the plan is asked: most follow closely on the one before. */
const AHEAD = 4;

const placeAhead = (walk: Walk, { item, position }: Finding): PlannedPlace | undefined => {
  const { list, next } = walk;
  for (let at = next; at < next + AHEAD && at < list.length; at += 1) {
    const place = list[at];
    if (place === undefined || place.position !== position || place.item !== item) continue;
    walk.next = at + 1;
    return place;
  }
  return undefined;
};

/** Goes on behind a place that lay farther off, or is on no list. */
const walkBehind = (walk: Walk, { order }: PlannedPlace): void => {
  let [low, high] = [0, walk.list.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((walk.list[middle]?.order ?? order) <= order) low = middle + 1;
    else high = middle;
  }
  walk.next = low;
};

const placeOf = (walk: Walk, finding: Finding, plan: Plan): PlannedPlace => {
  const ahead = placeAhead(walk, finding);
  if (ahead !== undefined) return ahead;
  const place = plan.place(finding.item, finding.position);
  walkBehind(walk, place);
  return place;
};

const indexByNumber = (
  { findings }: Placed,
  plan: Plan,
  list: readonly PlannedPlace[],
  met: Met,
): Int32Array => {
  const indexes = new Int32Array(met.listed.length).fill(-1);
  const walk: Walk = { list, next: 0 };
  for (let index = 0; index < findings.length; index += 1) {
    const finding = findings[index];
    if (finding === undefined) continue;
    const place = placeOf(walk, finding, plan);
    indexes[place.number] = index;
    meet(place, met);
  }
  return indexes;
};

/**
 * Lines two reports up: every place that applies to the car as either of them describes it, and any other that one of
 * them answered, but circumstances, which are never compared.
 *
 * @throws {RangeError} when a finding's place is not on the sheet
 * @example pairPlaces(statement, inspection, planOf(sheet)).places.length // 712
 */
export const pairPlaces = (a: Placed, b: Placed, plan: Plan): PairedPlaces => {
  const applicable = plan.applicable(a.vehicle.form);
  const others = plan.applicable(b.vehicle.form);
  // A finding may be the first the plan hears of its place.
  const most = plan.count() + a.findings.length + b.findings.length;
  const met: Met = { listed: new Uint8Array(most), missing: [] };
  for (const { number } of applicable) met.listed[number] = 1;
  if (others !== applicable) for (const place of others) meet(place, met);
  const findingsA = indexByNumber(a, plan, applicable, met);
  const findingsB = indexByNumber(b, plan, others, met);
  return { places: merged(applicable, inSheetOrder(met.missing)), findingsA, findingsB };
};
