/** A place of the sheet on one car: an item and where on the car. */
export type Place = { readonly item: string; readonly position: string };

/**
 * A place as one text, the same for the same place.
 *
 * @example placeKey({ item: "wheels.tread-depth", position: "left-front" }) // "wheels.tread-depth left-front"
 */
export const placeKey = ({ item, position }: Place): string => `${item} ${position}`;
