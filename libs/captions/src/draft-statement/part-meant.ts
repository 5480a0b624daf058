import type { Piece } from "../pieces/index.ts";
import type { Breath } from "./breath.ts";
import type { Draft } from "./draft.ts";
import type { Entry } from "./entries.ts";
import { CAR_ASKED, OF_CAR, isLeaks, isPanel } from "./phrases.ts";

const NEVER_PAINTED =
  /^(?:(?:it|she|he) )?(?:(?:is|has|s) )?(?:never|not) (?:ever )?(?:been |had )?(?:painted|repainted|resprayed|been painted|a respray)$/u;

/** "It was repainted in 2016", and no panel is in view. */
export const isOfWholeCar = (draft: Draft, { text, words }: Breath): boolean => {
  const isRepaint = words.some(
    ({ meanings, negated }) =>
      !negated &&
      meanings.some(
        (one) => one.is === "option" && one.item === "body.paint-history" && one.option === "refinished",
      ),
  );
  // "Never been painted", and no panel is in view.
  if (NEVER_PAINTED.test(text)) return !draft.state.entries.some(isPanel);
  return (
    isRepaint &&
    (OF_CAR.test(text) || CAR_ASKED.test(text)) &&
    !draft.state.entries.some((entry) => isPanel(entry) && !entry.plural)
  );
};

export const wholeCar = (draft: Draft, { piece: { from }, sides, text }: Breath): readonly Entry[] => {
  const paint = draft.context.compiled.subjects.get("all-panels");
  return paint === undefined
    ? []
    : [
        {
          subjects: [paint],
          sides,
          plural: true,
          none: false,
          from,
          to: from,
          confidence: 1,
          heard: [],
          context: text,
          within: [],
        },
      ];
};

/** "It doesn't leak" after a radiator is said of the radiator. */
export const spokenOf = (draft: Draft, breath: Breath): readonly Entry[] => {
  const { entries, piece, text } = breath;
  const named = entries.some(isPanel)
    ? entries.filter(({ subjects }) => !subjects.every(({ id }) => id === "all-panels"))
    : entries;
  if (named.length === 0 && isOfWholeCar(draft, breath)) return wholeCar(draft, breath);
  const others = named.filter((entry) => !isLeaks(entry));
  const isOfView = piece.join !== "start" || /^(?:these|those|they|this one)\b/u.test(text);
  const inView = isOfView && draft.state.entries.length > 0;
  const kept = (others.length > 0 || inView ? others : named).map((entry) => latchOfLid(draft, entry));
  return isPaintOfView(draft, kept, piece, text) ? [] : kept;
};

/** "Trunk lid? Fine. The latch sticks": a latch behind a lid is the lid's. */
const latchOfLid = (draft: Draft, entry: Entry): Entry => {
  const [lid] = draft.state.entries.flatMap(({ subjects }) => subjects.flatMap((one) => one.at ?? []));
  if (entry.subjects.every(({ id }) => id !== "latches") || entry.sides.adds.length > 0) return entry;
  const own = [...draft.context.compiled.subjects.values()].find(
    ({ items, at }) => items[0] === "doors.lid-latches" && at?.includes(lid ?? "") === true,
  );
  return own === undefined ? entry : { ...entry, subjects: [own] };
};

/** "It has new paint", of a panel in view, is said of that panel. */
const isPaintOfView = (draft: Draft, entries: readonly Entry[], { join }: Piece, text: string): boolean => {
  const isPaint =
    entries.length > 0 && entries.every(({ subjects }) => subjects.every(({ id }) => id === "all-panels"));
  const isOfPanel = draft.state.entries.some(isPanel);
  return (
    isPaint &&
    isOfPanel &&
    !/\b(?:all|every|car|whole|everything|else|rest|other|panel|anywhere)\b/u.test(text) &&
    (join !== "start" || /\b(?:it|its|that|there)\b/u.test(text))
  );
};
