import { useQuery } from "@tanstack/react-query";
import { sheetQuery } from "../sheets/load-sheet";
import { positionWords } from "../sheets/sheet-index";

export interface Placed {
  readonly item: string;
  readonly position: string;
}

/** Items by name; a summary holds their ids only. */
export const useItemWords = (): ((placed: Placed) => string) => {
  const index = useQuery(sheetQuery("evenhand", 1)).data;
  return ({ item, position }) => {
    const known = index?.items.get(item);
    const words = [known?.words.american ?? item, index ? positionWords(index, known, position) : position];
    const text = words.filter((part) => part !== "").join(", ");
    return text.charAt(0).toUpperCase() + text.slice(1);
  };
};
