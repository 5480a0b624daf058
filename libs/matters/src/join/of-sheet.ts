import type { CompiledItem, CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { isKindByPlace, kindAt, kindOfItem } from "../kinds/index.ts";
import type { Kind } from "../kinds/index.ts";
import { fixedNeed, looseNeed } from "../need/index.ts";
import { zoneOf } from "../zone/index.ts";
import type { Zone } from "../zone/index.ts";

/** What every line of an item is joined by, whatever was answered there. */
export type OfItem = {
  /** Where the item stands in the sheet. */
  readonly order: number;
  readonly costRow: string | undefined;
  /** What looking at one of its places takes: an item's minutes are for all of them. */
  readonly minutes: number;
  readonly kind: Kind;
  /** One place or another is of a kind of its own. */
  readonly byPlace: boolean;
  readonly fixedNeed: string | undefined;
  readonly looseNeed: string;
  /** Where on the car its places lie, and of what kind each is, as far as somebody asked. */
  readonly zones: Map<string, Zone>;
  readonly kinds: Map<string, Kind>;
};

type Items = CompiledSheet["items"];

const ofItem = ({ item, order, positionSet }: CompiledItem): OfItem => ({
  order,
  costRow: item.costRow ?? undefined,
  minutes: item.minutes / Math.max(1, positionSet?.positions.length ?? 1),
  kind: kindOfItem(item.id),
  byPlace: isKindByPlace(item.id),
  fixedNeed: fixedNeed(item),
  looseNeed: looseNeed(item),
  zones: new Map(),
  kinds: new Map(),
});

/** Where on the car a place of an item lies. */
export const zoneAt = ({ zones }: OfItem, item: string, position: string): Zone => {
  const known = zones.get(position);
  if (known !== undefined) return known;
  const zone = zoneOf(item, position);
  zones.set(position, zone);
  return zone;
};

/** The kind of a place of an item. */
export const kindOfPlace = ({ kind, byPlace, kinds }: OfItem, item: string, position: string): Kind => {
  if (!byPlace) return kind;
  const known = kinds.get(position);
  if (known !== undefined) return known;
  const own = kindAt(item, position);
  kinds.set(position, own);
  return own;
};

/** A function of the sheet alone, which does not change. */
const known = new WeakMap<Items, readonly OfItem[]>();

/** What lines are joined by, by the place of their item in the sheet. */
export const ofSheet = (items: Items): readonly OfItem[] => {
  const kept = known.get(items);
  if (kept !== undefined) return kept;
  const made = Array.from(items.values(), ofItem);
  known.set(items, made);
  return made;
};
