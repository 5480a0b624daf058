import { listed } from "@evenhand/message/listed";
import type { Item, PositionSet, Sheet } from "@evenhand/shared/sheet";

/** Looks the words of a sheet up by id; what is not on the sheet is read out of its id. */
export type SheetWords = {
  readonly findItem: (id: string) => Item | undefined;
  readonly item: (id: string) => string;
  /** Empty where the item has no positions. */
  readonly position: (item: Item | undefined, position: string) => string;
  /** Item and position; the item alone where it has none. */
  readonly place: (item: string, position: string) => string;
  readonly option: (item: Item | undefined, option: string) => string;
  readonly faultKind: (kind: string) => string;
  readonly spot: (item: Item | undefined, spot: string) => string;
};

const byId = <T extends { readonly id: string }>(list: readonly T[]): ReadonlyMap<string, T> =>
  new Map(list.map((one) => [one.id, one]));

/**
 * What the sheet at hand has no words for, or while it is still on its way: an id read out, never the id.
 *
 * @example spelled("doors.hinge-play") // "hinge play"
 */
export const spelled = (id: string): string => id.slice(id.indexOf(".") + 1).replaceAll("-", " ");

const numberedPosition = (set: PositionSet, position: string): string | undefined => {
  const { numbered } = set;
  if (numbered === undefined || !position.startsWith(`${numbered.prefix}-`)) return undefined;
  const count = position.slice(numbered.prefix.length + 1);
  return `${numbered.words} ${count}`;
};

const wordsOf = (sheet: Sheet): SheetWords => {
  const items = byId(sheet.items);
  const sets = byId(sheet.positionSets);
  const kinds = byId(sheet.faultKinds);
  const drawings = byId(sheet.drawings);
  const itemWords = (id: string): string => items.get(id)?.words.american ?? spelled(id);
  const positionWords: SheetWords["position"] = (item, position) => {
    const set = item?.positions === undefined ? undefined : sets.get(item.positions);
    if (set === undefined || position === "") return spelled(position);
    const named = set.positions.find(({ id }) => id === position)?.words.american;
    return named ?? numberedPosition(set, position) ?? spelled(position);
  };
  return {
    findItem: (id) => items.get(id),
    item: itemWords,
    position: positionWords,
    place: (id, position) => {
      const where = positionWords(items.get(id), position);
      return listed(where === "" ? [itemWords(id)] : [itemWords(id), where]);
    },
    option: (item, option) =>
      item?.choice?.options.find(({ id }) => id === option)?.words.american ?? spelled(option),
    faultKind: (kind) => kinds.get(kind)?.words.american ?? spelled(kind),
    spot: (item, spot) => {
      const named = item?.reading?.spots.find(({ id }) => id === spot)?.words.american;
      const drawing = item?.faults?.drawing === undefined ? undefined : drawings.get(item.faults.drawing);
      return named ?? drawing?.cells.find(({ id }) => id === spot)?.words.american ?? spelled(spot);
    },
  };
};

const made = new WeakMap<Sheet, SheetWords>();

/**
 * The words of a sheet, looked up once.
 *
 * @example sheetWords(sheet).item("tires.tread-depth") // "tread depth"
 */
export const sheetWords = (sheet: Sheet): SheetWords => {
  const words = made.get(sheet) ?? wordsOf(sheet);
  made.set(sheet, words);
  return words;
};
