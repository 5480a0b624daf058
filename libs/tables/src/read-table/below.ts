import { isPlaceOnly, labelOf } from "../label/index.ts";
import type { Label } from "../label/index.ts";
import type { Claim } from "../table-claims/index.ts";

const SIDES = ["left", "right", "front", "rear"] as const;

/** `LF corner` over rows, or as the name of a worksheet, is where all below was read. */
export const placeIn = (text: string): Label | undefined => {
  const label = labelOf(text.replaceAll(/\b(?:corner|wheel|side|end|station|hub)s?\b/gi, " "));
  return isPlaceOnly(label) && SIDES.some((side) => label.places.has(side)) ? label : undefined;
};

export const readAt =
  (place: Label) =>
  (claim: Claim): Claim =>
    claim.where.some(({ places }) => SIDES.some((side) => places.has(side)))
      ? claim
      : { ...claim, where: [...claim.where, place], below: place };
