import { answerOf } from "../answer-of/index.ts";
import type { SaidWord } from "../answer-of/index.ts";
import { placesOf } from "../places-of/index.ts";
import { isOver } from "../spans/index.ts";
import type { Breath } from "./breath.ts";
import { wordsOf } from "./draft.ts";
import type { Draft } from "./draft.ts";
import { ANYTHING } from "./phrases.ts";
import { record } from "./record.ts";
import { saidTo } from "./said-to.ts";

/** What needs no part to be named: "fires right up", "never been hit". */
export const claimsOfWordsAlone = (
  draft: Draft,
  breath: Breath,
  used: ReadonlySet<SaidWord>,
): readonly string[] => {
  const free = breath.words.filter((word) => !used.has(word) && !ANYTHING.test(wordsOf(draft, word)));
  const items = new Set(
    free.flatMap(({ meanings }) =>
      meanings.flatMap((one) => (one.is === "option" && one.alone ? [one.item] : [])),
    ),
  );
  return [...items].flatMap((base) =>
    draft.targets.timesOf(base, breath).flatMap((id) => {
      const item = draft.items.get(id);
      if (draft.context.compiled.lexicon.answering.notSpokenWith[id]?.test(breath.text) === true) return [];
      const isOfLast = draft.context.compiled.lexicon.answering.notAfter[id];
      if (
        item === undefined ||
        (isOfLast !== undefined && draft.state.last.some((key) => isOfLast.test(key)))
      )
        return [];
      const own = free.filter(
        (word) =>
          word.meanings.some((one) => one.is === "option" && one.alone && one.item === base) &&
          !free.some(
            (other) =>
              isOver(other, word) && other.meanings.every((one) => one.is === "option" && one.item !== base),
          ),
      );
      if (own.some((word) => [...used].some((other) => other.from <= word.from && other.to >= word.to)))
        return [];
      // "Brakes?" "Straight as a die": it was of the brakes.
      const isAnswer = draft.state.entries.some(({ asked }) => asked === true);
      if (isAnswer && own.some((word) => [...used].some((other) => isOver(word, other)))) return [];
      const answer = answerOf(
        item,
        saidTo(draft, { ...breath, numbers: [] }, own, undefined, item),
        draft.context.compiled,
        (word) => wordsOf(draft, word),
      );
      const { places } = placesOf(item, undefined, breath.sides, true, draft.state, [], {
        form: draft.context.form,
        sets: draft.sets,
      });
      return answer === undefined || answer.kind !== "choice"
        ? []
        : record(draft, item, places, answer, breath, false, 1, []);
    }),
  );
};
