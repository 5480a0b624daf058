import type { Item } from "@evenhand/shared/sheet";
import type { Place } from "../../entities/sheet/places";
import { searchWords } from "../../entities/sheet/sheet-index";

/** What is asked about; the item is empty while none is chosen. */
export interface PlaceChoice {
  readonly item: string;
  readonly position: string;
}

/** The items that every word typed is a word for; where nothing is typed, the chosen one. */
export const itemsFound = (places: readonly Place[], typed: string, chosen: string): readonly Item[] => {
  const items = [...new Map(places.map(({ item }) => [item.id, item])).values()];
  const words = typed.trim().toLowerCase().split(/\s+/);
  return typed.trim() === ""
    ? items.filter(({ id }) => id === chosen)
    : items.filter(({ words: own }) => words.every((word) => searchWords(own).includes(word)));
};

/** The lines of one item: one for each of its positions on this car. */
export const placesOf = (places: readonly Place[], item: string): readonly Place[] =>
  places.filter((place) => place.item.id === item);

/** An item as it is chosen: at the first of its positions. */
export const chooseItem = (places: readonly Place[], item: string): PlaceChoice => ({
  item,
  position: placesOf(places, item)[0]?.position ?? "",
});
