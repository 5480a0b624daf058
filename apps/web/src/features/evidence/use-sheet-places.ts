import { useQuery } from "@tanstack/react-query";
import type { AtPlace } from "../../entities/evidence/pictures";
import { sheetQuery } from "../../entities/sheet/load-sheet";
import type { SheetIndex } from "../../entities/sheet/sheet-index";

const none: readonly never[] = [];

const made = new WeakMap<SheetIndex, readonly AtPlace[]>();

/** Every place the sheet knows, whatever the car: in its order. */
const placesIn = (index: SheetIndex): readonly AtPlace[] => {
  const known = made.get(index);
  if (known !== undefined) return known;
  const places = index.sheet.items.flatMap(({ id, positions }) => {
    const set = positions === undefined ? undefined : index.positionSets.get(positions);
    return set === undefined
      ? [{ item: id, position: "" }]
      : set.positions.map(({ id: position }) => ({ item: id, position }));
  });
  made.set(index, places);
  return places;
};

/** The places of the sheet in its order; none until it has come. */
export const useSheetPlaces = (): readonly AtPlace[] => {
  const index = useQuery(sheetQuery("evenhand", 1)).data;
  return index === undefined ? none : placesIn(index);
};
