import type { BriefItem } from "@evenhand/shared/booking";
import type { VehicleForm } from "@evenhand/shared/report";
import { DEPTHS, type Depth, type Item } from "@evenhand/shared/sheet";
import { isAskedOnVisit } from "@evenhand/sheet/asked-at";
import { briefItem } from "@evenhand/sheet/brief-item";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { applicablePlaces } from "@evenhand/sheet/expand";
import { toVisitItem } from "../visit-items/index.ts";
import { type PlannedVisit, planVisit } from "../visit-plan/index.ts";

/** What is looked at on one car, and what else could be. Minutes are the sheet's. */
export type CarBrief = {
  readonly depth: Depth;
  readonly items: readonly BriefItem[];
  readonly further: readonly BriefItem[];
};

/** One car of a visit with the brief agreed for it. */
export type CarAndBrief = { readonly id: string; readonly items: readonly BriefItem[] };

/** Items of the sheet that are asked on a visit to this car, each once, in its order. */
const askedOnVisit = ({ sheet }: CompiledSheet, form: VehicleForm): Item[] =>
  [...new Set(applicablePlaces(sheet, form).map(({ item }) => item))].filter(isAskedOnVisit);

/**
 * What the depth asks of the car and the items chosen beside it, and what else could be chosen. Items that the car does not have
 * are in neither.
 *
 * @param chosen ids of items wanted whatever the depth asks
 * @example briefOf(sheet, coupe, "first-look", []).items.every(({ core }) => core) // true
 */
export function briefOf(
  sheet: CompiledSheet,
  form: VehicleForm,
  depth: Depth,
  chosen: readonly string[],
): CarBrief {
  const all = askedOnVisit(sheet, form);
  const wanted = new Set(chosen);
  const items = all.map((item) => briefItem(item, depth, wanted)).filter((item) => item !== null);
  const taken = new Set(items.map(({ item }) => item));
  const further = all
    .filter(({ id }) => !taken.has(id))
    .map(({ id, minutes, needs }) => ({ item: id, core: false, minutes, needs }));
  return { depth, items, further };
}

/**
 * How deep an agreed brief goes: the deepest item that its depth asks whole.
 *
 * @example depthOf(sheet, briefOf(sheet, coupe, "day", []).items) // "day"
 */
export function depthOf({ items: known }: CompiledSheet, items: readonly BriefItem[]): Depth {
  const depths = new Set(
    items.flatMap(({ item, core, positions }) =>
      core && positions === undefined ? [known.get(item)?.item.depth] : [],
    ),
  );
  return DEPTHS.findLast((depth) => depths.has(depth)) ?? "first-look";
}

/**
 * Which of the chosen items are not looked at on this car: the sheet does not have them, or the car does not, or no visit asks them.
 *
 * @returns their places in the list, from 0; empty where all can be chosen
 * @example notOnThisCar(sheet, coupe, ["wheels.tread-depth", "no.such-item"]) // [1]
 */
export function notOnThisCar(sheet: CompiledSheet, form: VehicleForm, chosen: readonly string[]): number[] {
  const known = new Set(askedOnVisit(sheet, form).map(({ id }) => id));
  return chosen.flatMap((item, place) => (known.has(item) ? [] : [place]));
}

/**
 * The cars of one visit in one plan, each item for the minutes its brief gives it. Items that the sheet does not have any more are
 * left out.
 *
 * @example planBriefs(sheet, [{ id: "car", items: briefOf(sheet, coupe, "day", []).items }]).kind // "planned"
 */
export const planBriefs = ({ items: known }: CompiledSheet, cars: readonly CarAndBrief[]): PlannedVisit =>
  planVisit(
    cars.map(({ id, items }) => ({
      car: id,
      items: items.flatMap(({ item, minutes }) => {
        const compiled = known.get(item);
        return compiled === undefined ? [] : [toVisitItem({ ...compiled.item, minutes })];
      }),
    })),
  );

/**
 * Can it be booked? Every car has something to be looked at, and no change waits for an answer.
 *
 * @example isBriefComplete([{ brief: [], proposed: null }]) // false
 */
export const isBriefComplete = (
  cars: readonly { readonly brief: readonly BriefItem[]; readonly proposed: unknown }[],
): boolean => cars.length > 0 && cars.every(({ brief, proposed }) => brief.length > 0 && proposed === null);

/** An item that needs the dealer's word before it is done on their car. */
export type ToAllow = { readonly car: string; readonly item: string };

/**
 * Has the dealer answered for every item that needs to be allowed? Either answer is one.
 *
 * @example answersAll([{ car: "c", item: "i" }], []) // false
 */
export const answersAll = (toAllow: readonly ToAllow[], permissions: readonly ToAllow[]): boolean =>
  toAllow.every(({ car, item }) => permissions.some((each) => each.car === car && each.item === item));
