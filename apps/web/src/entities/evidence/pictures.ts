import type { EvidenceOwned, EvidenceSeen } from "@evenhand/shared/http/evidence";

/** Whose hand it is from: what was stated, or what was found. */
export type Side = "statement" | "inspection";

/** A file as somebody is shown it, with the side it is from. */
export interface Picture extends EvidenceSeen {
  readonly side: Side;
  /** By the camera's own clock; known to its owner alone. */
  readonly taken?: string | null;
}

/** One's own file as a picture of its report. */
export const ownPicture = ({ capture, kind, ...file }: EvidenceOwned, side: Side): Picture => ({
  ...file,
  kind: kind ?? "jpeg",
  side,
  taken: capture?.taken ?? null,
});

/** Can it be shown as a picture? A paper or a film has no copies. */
export const isShown = ({ copies }: Pick<Picture, "copies">): boolean => copies.length > 0;

export interface AtPlace {
  readonly item: string;
  readonly position: string;
}

export const isAt = (picture: AtPlace, { item, position }: AtPlace): boolean =>
  picture.item === item && picture.position === position;

/** What lies beside a picture: of the same item and position from the other side, in the order it was sent. */
export const besideOf = (pictures: readonly Picture[], picture: Picture): readonly Picture[] =>
  pictures.filter((one) => one.side !== picture.side && isAt(one, picture) && isShown(one));

/** A place on the car and its pictures. */
export interface PicturesAt extends AtPlace {
  readonly pictures: readonly Picture[];
}

/**
 * Pictures by place, in the order the places are given; what belongs to the car as a whole comes first, and a place not among them
 * last. Within a place those of the statement come before those of the inspection, each in the order they were sent.
 */
export const byPlace = (pictures: readonly Picture[], places: readonly AtPlace[]): readonly PicturesAt[] => {
  const key = ({ item, position }: AtPlace): string => `${item}@${position}`;
  const groups = Map.groupBy(pictures, key);
  const known = [{ item: "", position: "" }, ...places].map(key);
  const order = [...new Set([...known, ...groups.keys()])];
  return order.flatMap((one) => {
    const here = groups.get(one)?.toSorted(inOrder);
    return here?.[0] === undefined
      ? []
      : [{ item: here[0].item, position: here[0].position, pictures: here }];
  });
};

/** Statement first; ids sort by when they were made. */
const inOrder = (one: Picture, other: Picture): number => {
  if (one.side !== other.side) return one.side === "statement" ? -1 : 1;
  return inTime(one, other);
};

/** As they were taken, where the camera says; else as they were sent. */
export const inTime = (one: Picture, other: Picture): number => {
  const [a, b] = [one.taken ?? null, other.taken ?? null];
  if (a !== null && b !== null && a !== b) return a < b ? -1 : 1;
  if (one.id === other.id) return 0;
  return one.id < other.id ? -1 : 1;
};
