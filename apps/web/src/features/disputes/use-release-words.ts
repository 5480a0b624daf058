import type { Entry } from "@evenhand/shared/comparison";
import type { Release } from "@evenhand/shared/http/releases";
import { useQuery } from "@tanstack/react-query";
import { sheetQuery } from "../../entities/sheet/load-sheet";
import { capital, itemWords, positionWords, spelled } from "../../entities/sheet/sheet-index";

/** Which place a line speaks of, in the sheet's words: a comparison and a release name items only. */
export const usePlaceWords = () => {
  const index = useQuery(sheetQuery("evenhand", 1)).data;
  return ({ item, position }: Pick<Entry, "item" | "position">): string => {
    const place = index ? positionWords(index, index.items.get(item), position) : spelled(position);
    return capital([itemWords(index, item), place].filter((part) => part !== "").join(", "));
  };
};

/** Which place a released line speaks of. */
export const useReleaseWords = () => {
  const words = usePlaceWords();
  return (release: Release): string => words(release.entry);
};
