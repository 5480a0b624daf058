import { isPlaceOnly, labelOf } from "../label/index.ts";
import type { Label } from "../label/index.ts";

/** What a part says, and where. */
export type PlacedValue = { readonly place: Label; readonly rest: string };

const MOST_WORDS = 3;

const placeOf = (words: readonly string[]): Label | undefined => {
  const text = words.join(" ").replace(/:$/, "");
  const label = labelOf(/\d/.test(text) ? "" : text);
  return isPlaceOnly(label) ? label : undefined;
};

/**
 * A part of a cell that begins or ends with a place: `L 8 mm`, `4mm o/s`, `rears leaking`.
 *
 * @returns nothing where it names none, or says nothing beside it
 * @example placedValue("LF slow")?.rest // "slow"
 */
export const placedValue = (part: string): PlacedValue | undefined => {
  const words = part.trim().split(/\s+/);
  for (let count = Math.min(MOST_WORDS, words.length - 1); count > 0; count -= 1) {
    const [first, last] = [placeOf(words.slice(0, count)), placeOf(words.slice(-count))];
    if (first !== undefined) return { place: first, rest: words.slice(count).join(" ") };
    if (last !== undefined) return { place: last, rest: words.slice(0, -count).join(" ") };
  }
  return undefined;
};
