import type { CompiledLexicon } from "@evenhand/lexicon/compile-lexicon";
import type { Answer } from "@evenhand/shared/answer";
import type { Item } from "@evenhand/shared/sheet";
import { choiceAnswer } from "./choice.ts";
import { faultsAnswer } from "./faults.ts";
import { gradeAnswer } from "./grade.ts";
import { presenceAnswer } from "./presence.ts";
import { readingAnswer } from "./reading.ts";
import { sensesOf } from "./said.ts";
import type { SaidOf, SaidWord } from "./said.ts";
import { NO_HEAT, workingAnswer } from "./working.ts";

export { extentOf } from "./faults.ts";
export { TOLD } from "./presence.ts";
export { isFaultElsewhere } from "./said.ts";
export type { SaidNumber, SaidOf, SaidWord } from "./said.ts";

const answerByKind = (
  item: Item,
  said: SaidOf,
  compiled: CompiledLexicon,
  tokens: (word: SaidWord) => string,
): Answer | undefined => {
  switch (item.answer) {
    case "choice":
      return choiceAnswer(item, said, compiled, tokens);
    case "faults":
      return faultsAnswer(item, said, compiled, tokens);
    case "grade":
      return gradeAnswer(item, said, compiled);
    case "working":
      return workingAnswer(item, said, compiled);
    case "presence":
      return presenceAnswer(item, said, compiled);
    case "reading":
      return readingAnswer(item, said, compiled);
    default:
      return undefined;
  }
};

const generalSaid = (said: SaidOf, compiled: CompiledLexicon, general: string): boolean =>
  said.words.some(
    (word) =>
      !word.negated &&
      sensesOf(word, compiled).some((sense) => "general" in sense && sense.general === general),
  );

/** "There is no radio": the word that something is there, which here says nothing by itself. */
const isThere = (word: SaidWord, compiled: CompiledLexicon): boolean =>
  sensesOf(word, compiled).every((sense) => "presence" in sense && sense.presence === "present");

/**
 * What a remark answers to an item, of the item's own kind; "not fitted" of a thing that a car may lack, "not seen" where somebody says
 * that they have not looked. Nothing where the remark says nothing of it.
 */
export const answerOf = (
  item: Item,
  said: SaidOf,
  compiled: CompiledLexicon,
  textOf: (word: SaidWord) => string,
): Answer | undefined => {
  const unseen = said.words.flatMap((word) =>
    sensesOf(word, compiled).flatMap((sense) => ("unseen" in sense ? [sense.unseen] : [])),
  )[0];
  if (
    unseen === "not-tested" ||
    unseen === "not-reached" ||
    unseen === "needs-dismantling" ||
    unseen === "covered"
  )
    return { kind: "not-seen", reason: unseen };
  if (
    said.yesOrNo === "no" &&
    /^(?:no|not)\b/u.test(said.text) &&
    item.equipment === true &&
    compiled.lexicon.answering.notFittedByNo.test(item.id)
  )
    return { kind: "not-fitted" };
  const isLacking = said.noSubject && NO_HEAT.test(said.text);
  if (
    item.equipment === true &&
    item.answer !== "presence" &&
    !isLacking &&
    generalSaid(said, compiled, "not-fitted")
  )
    return { kind: "not-fitted" };
  const answer = answerByKind(item, said, compiled, textOf);
  if (answer !== undefined) return answer;
  return item.equipment === true && said.noSubject && said.words.every((word) => isThere(word, compiled))
    ? { kind: "not-fitted" }
    : undefined;
};
