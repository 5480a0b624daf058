import type { Subject } from "@evenhand/lexicon/lexicon-version-1";
import { TOLD } from "../answer-of/index.ts";
import type { SaidWord } from "../answer-of/index.ts";
import type { Breath } from "./breath.ts";
import { lastIs } from "./draft.ts";
import type { Draft } from "./draft.ts";
import type { Entry } from "./entries.ts";

export const saysSomething = (
  draft: Draft,
  { words, numbers, yesOrNo, entries, has, text }: Breath,
): boolean => {
  if (words.length > 0 || numbers.length > 0) return true;
  if (
    yesOrNo !== undefined &&
    (entries.length > 0 || (draft.state.entries.length > 0 && !draft.state.applied))
  )
    return true;
  if (entries.some(({ none }) => none)) return true;
  if (/\b(?:tight(?! for\b)|no play)\b/u.test(text)) return true;
  const isThere = (subject: Subject): boolean =>
    draft.items.get(subject.items[0] ?? "")?.answer === "presence";
  const isPaper = (subject: Subject): boolean =>
    draft.context.compiled.lexicon.answering.presentIfTold.test(subject.items[0] ?? "");
  return entries.some(({ subjects }) =>
    subjects.some(
      (one) => one.id === "gearbox-kind" || (isThere(one) && (has || (isPaper(one) && TOLD.test(text)))),
    ),
  );
};

/** Only what is wrong waits for its part: praise without one is none. */
export const saysFault = (draft: Draft, { words }: Breath): boolean => {
  const { conditions } = draft.context.compiled.lexicon;
  return words.some(({ meanings, negated }) =>
    meanings.some((one) =>
      one.is === "option"
        ? !negated && /leak|weep|drip/u.test(one.option)
        : (conditions[one.condition]?.senses ?? []).some(
            (sense) =>
              ("fault" in sense && !negated) ||
              ("working" in sense && sense.working === (negated ? "yes" : "no")),
          ),
    ),
  );
};

/** "I have the bills and the photographs": what stands in a list of things that are there is there. */
export const isInList = (
  draft: Draft,
  { piece, words, numbers }: Breath,
  entries: readonly Entry[],
): boolean => {
  const isPresence = (id: string | undefined): boolean => draft.items.get(id ?? "")?.answer === "presence";
  const last = draft.remarks.get(draft.state.last[0] ?? "")?.answer;
  return (
    (piece.join === "and" || piece.join === "comma") &&
    words.length === 0 &&
    numbers.length === 0 &&
    entries.length > 0 &&
    ((last?.kind === "presence" && last.value === "present") || lastIs(draft, "identity.keys")) &&
    entries.every(({ subjects, none }) => !none && subjects.every(({ items }) => isPresence(items[0])))
  );
};

/** A thing a car may lack: "it has none" says that it does. */
export const isFitted = (draft: Draft, entries: readonly Entry[]): boolean => {
  return entries.some(({ subjects }) =>
    subjects.some(({ items }) => draft.items.get(items[0] ?? "")?.equipment === true),
  );
};

/** "Does it fold all right? It does" is no grade. */
export const isFaint = (draft: Draft, { meanings }: SaidWord): boolean => {
  const { conditions } = draft.context.compiled.lexicon;
  return meanings.every(
    (one) =>
      one.is === "condition" &&
      conditions[one.condition]?.senses.some((sense) => "grade" in sense && sense.grade === "even-wear") ===
        true,
  );
};
