import type {
  Caution,
  Drawing,
  FaultKind,
  Item,
  PositionSet,
  Section,
  Sheet,
  Words,
} from "@evenhand/shared/sheet";
import { sheetWords, spelled } from "@evenhand/wording/sheet-words";

export { spelled };

type Position = PositionSet["positions"][number];

/** The sheet by id, for looking words up. */
export interface SheetIndex {
  readonly sheet: Sheet;
  readonly items: ReadonlyMap<string, Item>;
  readonly sections: ReadonlyMap<string, Section>;
  readonly positionSets: ReadonlyMap<string, PositionSet>;
  readonly positions: ReadonlyMap<string, ReadonlyMap<string, Position>>;
  readonly faultKinds: ReadonlyMap<string, FaultKind>;
  readonly drawings: ReadonlyMap<string, Drawing>;
  readonly cautions: ReadonlyMap<string, Caution>;
}

const byId = <T extends { readonly id: string }>(list: readonly T[]): ReadonlyMap<string, T> =>
  new Map(list.map((one) => [one.id, one]));

const made = new WeakMap<Sheet, SheetIndex>();

export const sheetIndex = (sheet: Sheet): SheetIndex => {
  const known = made.get(sheet);
  if (known) return known;
  const index: SheetIndex = {
    sheet,
    items: byId(sheet.items),
    sections: byId(sheet.sections),
    positionSets: byId(sheet.positionSets),
    positions: new Map(sheet.positionSets.map((set) => [set.id, byId(set.positions)])),
    faultKinds: byId(sheet.faultKinds),
    drawings: byId(sheet.drawings),
    cautions: byId(sheet.cautions),
  };
  made.set(sheet, index);
  return index;
};

/** How an item is called. */
export const itemWords = (index: SheetIndex | undefined, item: string): string =>
  index === undefined ? spelled(item) : sheetWords(index.sheet).item(item);

/** The position in words; empty where the item has none. */
export const positionWords = (index: SheetIndex, item: Item | undefined, position: string): string =>
  sheetWords(index.sheet).position(item, position);

export const positionStation = (
  index: SheetIndex,
  item: Item | undefined,
  position: string,
): string | undefined =>
  item?.positions === undefined ? undefined : index.positions.get(item.positions)?.get(position)?.station;

/** Every word by which a thing may be looked for: American, British and whatever else people call it. */
export const searchWords = (words: Words | undefined): string =>
  words ? [words.american, words.british ?? "", ...words.synonyms].join(" ").toLowerCase() : "";

/** The sheet's words are in lower case; a line of its own begins with a capital. */
export const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
