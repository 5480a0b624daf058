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

/** `cylinder-3` of a numbered set becomes its words with the number. */
const numberedWords = (set: PositionSet, position: string): string | undefined => {
  if (!set.numbered || !position.startsWith(`${set.numbered.prefix}-`)) return undefined;
  const count = position.slice(set.numbered.prefix.length + 1);
  return set.numbered.words.includes("{n}")
    ? set.numbered.words.replace("{n}", count)
    : `${set.numbered.words} ${count}`;
};

/**
 * What the sheet at hand has no words for, or while it is still on its way: an id read out, never the id.
 *
 * @example spelled("doors.hinge-play") // "hinge play"
 */
export const spelled = (id: string): string => id.slice(id.indexOf(".") + 1).replaceAll("-", " ");

/** How an item is called. */
export const itemWords = (index: SheetIndex | undefined, item: string): string =>
  index?.items.get(item)?.words.american ?? spelled(item);

/** The position in words; empty where the item has none. */
export const positionWords = (index: SheetIndex, item: Item | undefined, position: string): string => {
  if (position === "" || item?.positions === undefined) return spelled(position);
  const fixed = index.positions.get(item.positions)?.get(position);
  if (fixed) return fixed.words.american;
  const set = index.positionSets.get(item.positions);
  return (set && numberedWords(set, position)) ?? spelled(position);
};

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
