import { useQuery } from "@tanstack/react-query";
import { sheetQuery } from "./load-sheet";
import { capital, itemWords, positionWords, spelled } from "./sheet-index";

export interface Placed {
  readonly item: string;
  readonly position: string;
}

interface ItemWords {
  (placed: Placed): string;
  /** The position alone. */
  readonly position: (placed: Placed) => string;
}

/** Items by name; a summary holds their ids only. */
export const useItemWords = (): ItemWords => {
  const index = useQuery(sheetQuery("evenhand", 1)).data;
  const position = ({ item, position: at }: Placed): string =>
    index ? positionWords(index, index.items.get(item), at) : spelled(at);
  const whole = (placed: Placed): string =>
    capital([itemWords(index, placed.item), position(placed)].filter((part) => part !== "").join(", "));
  return Object.assign(whole, { position });
};
