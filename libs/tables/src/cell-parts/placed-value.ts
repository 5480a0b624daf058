import { isPlaceOnly, labelOf } from "../label/index.ts";
import type { Label } from "../label/index.ts";

/** What a part says, and where. */
export type PlacedValue = { readonly place: Label; readonly rest: string };

const MOST_WORDS = 3;

/** Of ball joints `RL` is the right lower one. */
const JOINTS: Readonly<Record<string, string>> = {
  LL: "left lower",
  RL: "right lower",
  LU: "left upper",
  RU: "right upper",
};

const placeOf = (words: readonly string[], ofJoints: boolean): Label | undefined => {
  const written = words.join(" ").replace(/:$/, "");
  const text = (ofJoints ? JOINTS[written] : undefined) ?? written;
  const label = labelOf(/\d/.test(text) ? "" : text);
  return isPlaceOnly(label) ? label : undefined;
};

/**
 * A part of a cell that begins or ends with a place: `L 8 mm`, `4mm o/s`, `rears leaking`.
 *
 * @returns nothing where it names none, or says nothing beside it
 * @example placedValue("LF slow")?.rest // "slow"
 */
export const placedValue = (part: string, ofJoints = false): PlacedValue | undefined => {
  const words = part.trim().split(/\s+/);
  const others = /^(?:the\s+)?(?:others?|rest|remaining|remainder)\s+(?<rest>\S.*)$/i.exec(part.trim())
    ?.groups?.["rest"];
  if (others !== undefined) return { place: labelOf("other places"), rest: others };
  for (let count = Math.min(MOST_WORDS, words.length - 1); count > 0; count -= 1) {
    const [first, last] = [placeOf(words.slice(0, count), ofJoints), placeOf(words.slice(-count), ofJoints)];
    if (first !== undefined) return { place: first, rest: words.slice(count).join(" ") };
    if (last !== undefined) return { place: last, rest: words.slice(0, -count).join(" ") };
  }
  return undefined;
};
