import { placesOf } from "../places-of/index.ts";
import type { Breath } from "./breath.ts";
import { wordsOf } from "./draft.ts";
import type { Draft } from "./draft.ts";
import { record } from "./record.ts";
import { replaced } from "./sides.ts";

/** Tokens after the magnet within which "it sticks" is the magnet. */
const NEAR_MAGNET = 25;
const STICKS =
  /^(?:(?:and|but|yes|so) )*(?:it|the magnet) (?:still |just )?(?:stick|stuck|hold|held|grab|grabbed)\b/u;
const FALLS =
  /^(?:(?:and|but|so|no) )*(?:it|the magnet) (?:(?:does|do|did|will|would) not (?:stick|hold|grab)|(?:just )?(?:fall|fell|slide|slid|drop|dropped)(?: right| straight)? off|will not)\b/u;

/** "I put a magnet on the quarters. It sticks on the right one, and it doesn't on the left one": of the magnet, panel by panel. */
export const claimsOfMagnet = (draft: Draft, breath: Breath): readonly string[] | undefined => {
  const { piece, text, sides } = breath;
  const item = draft.items.get("body.magnet");
  if (item === undefined || sides.all || piece.join === "except") return undefined;
  const option = FALLS.test(text) ? "falls" : STICKS.test(text) ? "holds" : undefined;
  if (option === undefined) return undefined;
  const before = wordsOf(draft, { from: Math.max(0, piece.from - NEAR_MAGNET), to: piece.from });
  if (!/\bmagnet\b/u.test(before) && !text.includes("magnet")) return undefined;
  const group = (breath.entries.length > 0 ? breath.entries : draft.state.entries).map((entry) => ({
    ...entry,
    sides: replaced(entry.sides, sides),
  }));
  return group.flatMap((entry) =>
    entry.subjects.flatMap((subject) => {
      const { places, inferred } = placesOf(
        item,
        subject,
        entry.sides,
        entry.plural,
        draft.state,
        entry.within,
        {
          form: draft.context.form,
          sets: draft.sets,
        },
      );
      return subject.items.includes("body.magnet")
        ? record(
            draft,
            item,
            places,
            { kind: "choice", option },
            breath,
            inferred,
            entry.confidence,
            entry.heard,
          )
        : [];
    }),
  );
};
