import type { VehicleForm } from "@evenhand/shared/report";
import type { Item, PositionSet, Sheet } from "@evenhand/shared/sheet";

type When = NonNullable<Item["appliesWhen"]>;

/** An item at one of its positions; `position` is the empty string where the item has none. */
export type Place = { readonly item: Item; readonly position: string };

function formValue(form: VehicleForm, key: string): string | number | undefined {
  switch (key) {
    case "brakesFront":
      return form.brakes.front;
    case "brakesRear":
      return form.brakes.rear;
    case "body":
    case "construction":
    case "gearbox":
    case "driven":
    case "fuelSystem":
    case "doors":
      return form[key];
    case "servo":
    case "torqueBoxes":
    case "seatBelts":
    case "airConditioning":
    case "powerTop":
    case "repeaters":
    case "ventWindows":
      return yesOrNo(form[key]);
    case "frontPivots":
    case "headlamps":
      return form[key];
    default:
      return undefined;
  }
}

const yesOrNo = (value: boolean | undefined): string | undefined =>
  value === undefined ? undefined : value ? "yes" : "no";

/** What a form may leave unsaid: then the item is asked, and "not fitted" is an answer. */
const MAY_BE_UNSAID: ReadonlySet<string> = new Set([
  "servo",
  "frontPivots",
  "torqueBoxes",
  "seatBelts",
  "airConditioning",
  "powerTop",
  "repeaters",
  "ventWindows",
  "headlamps",
]);

/**
 * Whether a car's form has one of the values named for every key; no keys, or no condition at all, applies to every car. What a
 * form may leave unsaid (a booster, belts) applies until it is said to be otherwise.
 *
 * @example
 * applies({ body: ["convertible", "roadster"] }, sedan); // false
 */
export function applies(when: When | undefined, form: VehicleForm): boolean {
  if (when === undefined) return true;
  return Object.entries(when).every(([key, values]) => {
    const value = formValue(form, key);
    return value === undefined ? MAY_BE_UNSAID.has(key) : values.includes(value);
  });
}

/**
 * The positions of a set on this car, in walking order. Numbered ones run from 1 to the car's count.
 *
 * @example
 * positionsOf(cylinders, fourCylinderCar); // ["cylinder-1", "cylinder-2", "cylinder-3", "cylinder-4"]
 */
export function positionsOf(set: PositionSet, form: VehicleForm): string[] {
  const listed = set.positions.filter((position) => applies(position.appliesWhen, form)).map(({ id }) => id);
  const { numbered } = set;
  if (numbered === undefined) return listed;
  const count = form[numbered.countFrom];
  return [...listed, ...Array.from({ length: count }, (_, index) => `${numbered.prefix}-${index + 1}`)];
}

/**
 * Every item at every position that applies to this car, in sheet order and within an item in walking order. An item whose
 * positions all fail to apply does not appear; an item without positions appears once, at the empty string.
 *
 * @throws {RangeError} where an item names a position set the sheet does not have
 * @example
 * applicablePlaces(sheetVersion1, form).filter(({ item }) => item.id === "engine.compression").length; // 8 on a V8
 */
export function applicablePlaces(sheet: Sheet, form: VehicleForm): Place[] {
  const positions = new Map(sheet.positionSets.map((set) => [set.id, positionsOf(set, form)]));
  return sheet.items.flatMap((item): Place[] => {
    if (!applies(item.appliesWhen, form)) return [];
    if (item.positions === undefined) return [{ item, position: "" }];
    const ids = positions.get(item.positions);
    if (ids === undefined) {
      throw new RangeError(`${item.id} names positions the sheet does not have: ${item.positions}`);
    }
    return ids.map((position) => ({ item, position }));
  });
}
