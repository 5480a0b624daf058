import type { AppliesWhen, PositionSet, Words } from "@evenhand/shared/sheet";
import type { z } from "zod";

type When = z.infer<typeof AppliesWhen>;
export type PlaceDraft = [id: string, named: Words, station?: string, appliesWhen?: When];

/** A set of positions from its places in walking order; one stands for a position where its station is. */
export function places(id: string, named: Words, ...list: PlaceDraft[]): PositionSet {
  return {
    id,
    words: named,
    positions: list.map(([place, placeWords, station, appliesWhen]) => ({
      id: place,
      words: placeWords,
      ...(station === undefined ? {} : { station, place: station }),
      ...(appliesWhen === undefined ? {} : { appliesWhen }),
    })),
  };
}

/** Cars with rear side doors; a third or fifth door is the tailgate. */
export const rearDoors: When = { doors: [4, 5] };
export const withoutRearDoors: When = { doors: [2, 3] };
export const trunkBodies: When = { body: ["coupe", "sedan", "convertible", "roadster"] };
export const tailgateBodies: When = { body: ["wagon", "pickup", "van"] };
export const fixedRoof: When = { body: ["coupe", "sedan", "wagon", "pickup", "van"] };
export const openBodies: When = { body: ["convertible", "roadster"] };
