import type { Release } from "@evenhand/shared/http/releases";
import { useQuery } from "@tanstack/react-query";
import { sheetQuery } from "../../entities/sheet/load-sheet";
import { capital, itemWords, positionWords, spelled } from "../../entities/sheet/sheet-index";

/** The sheet that releases are worded by; a release names items only. */
export const useReleaseWords = () => {
  const index = useQuery(sheetQuery("evenhand", 1)).data;
  return (release: Release): string => {
    const { item, position } = release.entry;
    const place = index ? positionWords(index, index.items.get(item), position) : spelled(position);
    return capital([itemWords(index, item), place].filter((part) => part !== "").join(", "));
  };
};
