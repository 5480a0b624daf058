import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { isKindByPlace, kindOfItem } from "../kinds/index.ts";
import type { Kind } from "../kinds/index.ts";
import { fixedNeed, looseNeed } from "../need/index.ts";

/** What every line of an item is joined by, whatever was answered there. */
export type OfItem = {
  readonly kind: Kind;
  /** One place or another is of a kind of its own. */
  readonly byPlace: boolean;
  readonly fixedNeed: string | undefined;
  readonly looseNeed: string;
};

type Items = CompiledSheet["items"];

/** A function of the sheet alone, which does not change. */
const known = new WeakMap<Items, readonly OfItem[]>();

/** What lines are joined by, by the place of their item in the sheet. */
export const ofSheet = (items: Items): readonly OfItem[] => {
  const kept = known.get(items);
  if (kept !== undefined) return kept;
  const made = Array.from(items.values(), ({ item }): OfItem => ({
    kind: kindOfItem(item.id),
    byPlace: isKindByPlace(item.id),
    fixedNeed: fixedNeed(item),
    looseNeed: looseNeed(item),
  }));
  known.set(items, made);
  return made;
};
