import { body } from "./body.ts";
import { cabin } from "./cabin.ts";
import { chassis } from "./chassis.ts";
import { engine } from "./engine.ts";
import { folds, unknowns } from "./folded.ts";
import type { Kind } from "./kind.ts";
import { papers } from "./papers.ts";

export type { Kind } from "./kind.ts";
export { folds, unknowns } from "./folded.ts";

/**
 * Kinds a line can belong to, in the order in which they stand where two matters are as grave, as sure and as dear: papers, then what
 * can hurt somebody before what costs: structure, then what stops and steers it, then the
 * rest.
 */
export const kinds: readonly Kind[] = [
  ...papers,
  ...body.slice(0, 1),
  ...chassis,
  ...body.slice(1),
  ...engine,
  ...cabin,
];

const all: readonly Kind[] = [...kinds, ...unknowns, ...folds];
const byId: ReadonlyMap<string, Kind> = new Map(all.map((kind) => [kind.id, kind]));
const place: ReadonlyMap<string, number> = new Map(all.map(({ id }, index) => [id, index]));
const byMember: ReadonlyMap<string, Kind> = new Map(
  kinds.flatMap((kind) => kind.members.map((member) => [member, kind] as const)),
);
const byRule: ReadonlyMap<string, Kind> = new Map(
  kinds.flatMap((kind) => kind.rules.map((rule) => [rule, kind] as const)),
);

const rest = (): Kind => {
  const last = byId.get("equipment");
  if (last === undefined) throw new RangeError("There is no kind of matter called equipment.");
  return last;
};

/**
 * The kind of matter of an id.
 *
 * @throws {RangeError} where there is none
 * @example kindOf("brakes").name // "brakes"
 */
export const kindOf = (id: string): Kind => {
  const found = byId.get(id);
  if (found === undefined) throw new RangeError(`There is no kind of matter called ${id}.`);
  return found;
};

/** Items of which one place or another is of a kind of its own. */
const byPlace: ReadonlySet<string> = new Set(
  [...byMember.keys()].filter((member) => member.includes("@")).map((member) => member.split("@")[0] ?? ""),
);
const sectionOf = (item: string): string => item.slice(0, item.indexOf("."));

const ownKind = (item: string): Kind => byMember.get(item) ?? byMember.get(sectionOf(item)) ?? rest();

/** Whether one place or another of an item is of a kind of its own. */
export const isKindByPlace = (item: string): boolean => byPlace.has(item);

/** Items are few, and asked for line by line; a service that met more starts over rather than grow. */
const byItem = new Map<string, Kind>();
const MOST_ITEMS = 4096;

/**
 * The kind of an item's places that are of none of their own: by item, else by section.
 *
 * @example kindOfItem("driveline.limited-slip").id // "driveline"
 */
export const kindOfItem = (item: string): Kind => {
  const known = byItem.get(item);
  if (known !== undefined) return known;
  if (byItem.size >= MOST_ITEMS) byItem.clear();
  const own = ownKind(item);
  byItem.set(item, own);
  return own;
};

/**
 * The kind a place belongs to: by item and position, else by item, else by section.
 *
 * @example kindAt("driveline.lines", "fuel-line").id // "fuel"
 * @example kindAt("driveline.limited-slip", "").id // "driveline"
 */
export const kindAt = (item: string, position: string): Kind =>
  (byPlace.has(item) ? byMember.get(`${item}@${position}`) : undefined) ?? kindOfItem(item);

/**
 * The kind whose claims a rule of the handbook decides, if it is of one.
 *
 * @example kindOfRule("odometer")?.id // "miles"
 */
export const kindOfRule = (rule: string): Kind | undefined => byRule.get(rule);

/**
 * Where a kind stands among equals, from 0.
 *
 * @example kindOrder("title") // 0
 */
export const kindOrder = (id: string): number => place.get(id) ?? all.length;
