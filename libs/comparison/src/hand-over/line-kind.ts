import type { Entry } from "@evenhand/shared/comparison";
import type { HandOverKind } from "@evenhand/shared/hand-over";
import type { Item } from "@evenhand/shared/sheet";

/** What is known of the place an entry speaks of beside the entry. */
export type EntryPlace = {
  readonly item: Item;
  /** Collection did not look there, or could not see. */
  readonly unseenAtCollection: boolean;
};

/** A fault that only the delivery report has. Nothing that was found at delivery is ever dropped. */
const onlyAtDelivery = ({ outcome, reason }: Entry, { unseenAtCollection }: EntryPlace): HandOverKind => {
  if (unseenAtCollection) return "cannot-say";
  return outcome === "differ" || outcome === "unstated" || reason === "denied-trifle" ? "new" : "perhaps";
};

const onBoth = (
  { outcome, direction }: Entry,
  { unseenAtCollection }: EntryPlace,
): HandOverKind | undefined => {
  if (direction !== "stated-better") return outcome === "differ" ? "better" : undefined;
  if (outcome === "doubtful") return "perhaps";
  if (outcome !== "differ") return undefined;
  return unseenAtCollection ? "perhaps" : "larger";
};

const faultKind = (entry: Entry, place: EntryPlace): HandOverKind | undefined => {
  const { atom } = entry;
  if (atom.of !== "fault") return undefined;
  if (atom.b === undefined) return entry.outcome === "doubtful" ? "gone" : undefined;
  return atom.a === undefined ? onlyAtDelivery(entry, place) : onBoth(entry, place);
};

const worseOf = ({ id, presence }: Item): HandOverKind => {
  if (id === "identity.odometer") return "moved";
  return presence?.goodIs === "present" || id === "identity.key-count" ? "missing" : "worse";
};

const hasFallen = ({ figures }: Entry): boolean => figures?.of === "reading" && figures.difference > 0;

const wholeKind = (entry: Entry, { item, unseenAtCollection }: EntryPlace): HandOverKind | undefined => {
  const { outcome, direction } = entry;
  if (outcome === "unstated") return unseenAtCollection ? "cannot-say" : worseOf(item);
  if (outcome === "doubtful") return direction === "found-better" ? undefined : "perhaps";
  if (outcome !== "differ") return undefined;
  // An odometer that stands lower than before did not run backward by being carried: one of the two was misread.
  if (item.id === "identity.odometer" && hasFallen(entry)) return "perhaps";
  return direction === "found-better" ? "better" : worseOf(item);
};

/**
 * What an entry of the comparison means for a car on its way; `undefined` where both reports say the same, or neither speaks.
 *
 * @example handOverKind(dentDeniedAtCollection, { item, unseenAtCollection: false }) // "new"
 */
export const handOverKind = (entry: Entry, place: EntryPlace): HandOverKind | undefined => {
  if (entry.outcome === "unseen" || entry.atom.of === "denial") return undefined;
  return entry.atom.of === "fault" ? faultKind(entry, place) : wholeKind(entry, place);
};
