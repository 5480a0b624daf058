import type { BriefItem } from "@evenhand/shared/booking";
import type { BriefSeen } from "@evenhand/shared/http/booking";
import type { Depth, Item } from "@evenhand/shared/sheet";
import { briefItem } from "@evenhand/sheet/brief-item";
import type { SheetIndex } from "../../entities/sheet/sheet-index";

const nothing: ReadonlySet<string> = new Set();

/** Every item that can be looked at on the car. */
export const itemsOf = ({ items, further }: BriefSeen, index: SheetIndex): readonly Item[] =>
  [...items, ...further].flatMap(({ item }) => index.items.get(item) ?? []);

/** The items chosen besides the depth. */
export const chosenOf = ({ items }: BriefSeen): ReadonlySet<string> =>
  new Set(items.filter(({ core }) => !core).map(({ item }) => item));

const asBrief = (items: readonly Item[], depth: Depth, chosen: ReadonlySet<string>): BriefItem[] =>
  items.map((item) => briefItem(item, depth, chosen)).filter((item) => item !== null);

/** What a depth takes in by itself. */
export const coreOf = (items: readonly Item[], depth: Depth): readonly BriefItem[] =>
  asBrief(items, depth, nothing);

/** What a depth and a choice come to, each as the brief would hold it; what the depth takes only in part can be chosen whole. */
export const wishedOf = (items: readonly Item[], depth: Depth, chosen: ReadonlySet<string>) => {
  const core = coreOf(items, depth);
  const whole = new Set(core.filter(({ positions }) => positions === undefined).map(({ item }) => item));
  return {
    core,
    pickable: items
      .filter(({ id }) => !whole.has(id))
      .map(({ id, minutes, needs }): BriefItem => ({ item: id, core: false, minutes, needs })),
    included: asBrief(items, depth, chosen),
    further: [...chosen].filter((item) => !whole.has(item)),
  };
};

export const minutesOf = (items: readonly BriefItem[]): number =>
  items.reduce((sum, { minutes }) => sum + minutes, 0);

/** The same items, each for as long. */
export const isSame = (a: readonly BriefItem[], b: readonly BriefItem[]): boolean => {
  const keys = new Set(a.map(({ item, minutes }) => `${item} ${minutes}`));
  return keys.size === b.length && b.every(({ item, minutes }) => keys.has(`${item} ${minutes}`));
};
