import { listed } from "@evenhand/message/listed";
import type { SummaryItem } from "@evenhand/shared/summary";
import type { SheetWords } from "@evenhand/wording/sheet-words";
import { say } from "./messages.ts";

/** Things that are alike, at least one. */
export type Alike<T> = readonly [T, ...T[]];

/** What is alike in the marks given, together; groups in the order of their first. */
export const alike = <T>(all: readonly T[], marks: (one: T) => readonly (string | null)[]): Alike<T>[] => {
  const groups = Map.groupBy(all, (one) => JSON.stringify(marks(one)));
  return [...groups.values()].flatMap(([first, ...others]): Alike<T>[] =>
    first === undefined ? [] : [[first, ...others]],
  );
};

type Placed = Pick<SummaryItem, "item" | "position">;

export const positionOf = ({ item, position }: Placed, words: SheetWords): string =>
  words.position(words.findItem(item), position);

/** Places of one item: the item, and where on it, each once. */
export const placesOf = (same: Alike<Placed>, words: SheetWords): string => {
  const [{ item, position }] = same;
  const positions = [...new Set(same.map((one) => positionOf(one, words)))];
  if (positions.length === 1) return words.place(item, position);
  return say("places", { item: words.item(item), positions: listed(positions) });
};
