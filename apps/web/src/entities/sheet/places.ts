import { applicablePlaces } from "@evenhand/sheet/expand";
import { isAskedOnVisit } from "@evenhand/sheet/asked-at";
import type { ReportKind, VehicleForm } from "@evenhand/shared/report";
import type { Item } from "@evenhand/shared/sheet";
import { positionWords, type SheetIndex } from "./sheet-index";

/** One item at one position of this car: a line of the sheet. */
export interface Place {
  readonly key: string;
  readonly item: Item;
  readonly position: string;
  readonly words: string;
}

export const placeKey = (item: string, position: string): string => `${item}@${position}`;

/** Every line of the sheet that applies to this car, in the sheet's order. */
export const placesFor = (index: SheetIndex, car: VehicleForm): readonly Place[] =>
  applicablePlaces(index.sheet, car).map(({ item, position }) => ({
    key: placeKey(item.id, position),
    item,
    position,
    words: positionWords(index, item, position),
  }));

/** Who is asked: an inspector is not asked what only a seller can claim, and nobody what another item asks already. */
export const isAskedOf = (item: Item, kind: ReportKind): boolean =>
  kind === "inspection" ? isAskedOnVisit(item) : item.sameAs === undefined;
