import { defineMessages } from "@evenhand/message/define-messages";
import type { CompiledSheet } from "../compile-sheet/index.ts";

type AskedPicture = { readonly item: string; readonly as: "photograph" | "film" };

const photographs = (...items: string[]): AskedPicture[] => items.map((item) => ({ item, as: "photograph" }));

/**
 * Pictures that the sheet asks for by name, in the order in which a report is read: every number and tag a car is known by, where rust
 * begins, and the cold start, which can only be heard. Common practice, no source.
 */
export const ASKED_PICTURES: readonly AskedPicture[] = [
  ...photographs(
    "identity.vin",
    "identity.engine-number",
    "identity.partial-vin",
    "identity.paint-code",
    "identity.title-number",
    "identity.odometer",
    "underbody.lift-points",
    "underbody.rails",
    "underbody.floor-pans",
    "underbody.inner-rockers",
    "underbody.outer-wheelhouses",
    "underbody.rear-rails-over-axle",
  ),
  { item: "road.cold-start", as: "film" },
];

const { say } = defineMessages("asked-picture", {
  photograph: "A photograph, near and sharp: {item}",
  film: "A film with its sound, from before the key is turned until it runs: {item}",
});

/** A file that is there, at its item; `isFilm` of one that moves. */
export type PictureThere = { readonly item: string; readonly isFilm: boolean };
export type PictureMissing = AskedPicture & { readonly position: ""; readonly words: string };

/**
 * Which of the pictures asked for are not there. One at any place of its item will do; a photograph is no film, while a film shows what a
 * photograph does.
 *
 * @param sheet whose items are meant; what it does not hold is not asked for
 */
export const missingPictures = ({ items }: CompiledSheet, there: readonly PictureThere[]): PictureMissing[] =>
  ASKED_PICTURES.flatMap(({ item, as }) => {
    const words = items.get(item)?.item.words.american;
    const isThere = there.some((each) => each.item === item && (as === "photograph" || each.isFilm));
    return words === undefined || isThere
      ? []
      : [{ item, position: "" as const, as, words: say(as, { item: words }) }];
  });
