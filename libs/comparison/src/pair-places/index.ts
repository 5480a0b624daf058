import type { Report } from "@evenhand/shared/report";
import type { Plan, PlannedPlace } from "../plan/index.ts";

/** The places to compare in sheet order, and each side's finding there by the place's number; -1 where it is silent. */
export type PairedPlaces = {
  readonly places: readonly PlannedPlace[];
  readonly findingsA: Int32Array;
  readonly findingsB: Int32Array;
};

type Placed = Pick<Report, "findings" | "vehicle">;

const placesOfFindings = ({ findings }: Placed, plan: Plan): PlannedPlace[] => {
  const places: PlannedPlace[] = [];
  for (const { item, position } of findings) places.push(plan.place(item, position));
  return places;
};

const indexByNumber = (places: readonly PlannedPlace[], count: number): Int32Array => {
  const indexes = new Int32Array(count).fill(-1);
  for (let index = 0; index < places.length; index += 1) indexes[places[index]?.number ?? 0] = index;
  return indexes;
};

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

/** Two lists in sheet order as one: putting a few places between many is less work than sorting them all. */
const merged = (many: readonly PlannedPlace[], few: readonly PlannedPlace[]): readonly PlannedPlace[] => {
  if (few.length === 0) return many;
  const all: PlannedPlace[] = [];
  let next = 0;
  for (const place of many) {
    for (let one = few[next]; one !== undefined && one.order < place.order; one = few[next]) {
      all.push(one);
      next += 1;
    }
    all.push(place);
  }
  for (let one = few[next]; one !== undefined; one = few[next]) {
    all.push(one);
    next += 1;
  }
  return all;
};

/** Those of several lists that a first list lacks, each once. */
const missingFrom = (
  list: readonly PlannedPlace[],
  others: readonly (readonly PlannedPlace[])[],
  count: number,
): PlannedPlace[] => {
  const known = new Uint8Array(count);
  for (const { number } of list) known[number] = 1;
  const missing: PlannedPlace[] = [];
  for (const other of others) {
    if (other === list) continue;
    for (const place of other) {
      if (known[place.number] === 1) continue;
      known[place.number] = 1;
      missing.push(place);
    }
  }
  return missing;
};

/**
 * Lines two reports up: every place that applies to the car as either of them describes it, and any other that one of
 * them answered.
 *
 * @throws {RangeError} when a finding's place is not on the sheet
 * @example pairPlaces(statement, inspection, planOf(sheet)).places.length // 712
 */
export const pairPlaces = (a: Placed, b: Placed, plan: Plan): PairedPlaces => {
  const placesA = placesOfFindings(a, plan);
  const placesB = placesOfFindings(b, plan);
  const applicable = plan.applicable(a.vehicle.form);
  const others = [plan.applicable(b.vehicle.form), placesA, placesB];
  const count = plan.count();
  const missing = inSheetOrder(missingFrom(applicable, others, count));
  return {
    places: merged(applicable, missing),
    findingsA: indexByNumber(placesA, count),
    findingsB: indexByNumber(placesB, count),
  };
};
