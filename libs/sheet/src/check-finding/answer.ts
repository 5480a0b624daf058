import type { Answer, AnswerOf } from "@evenhand/shared/answer";
import type { FieldProblem } from "@evenhand/shared/problem";
import { faultsProblems } from "./answer-faults.ts";
import { gradeProblems } from "./answer-grade.ts";
import { readingProblems } from "./answer-reading.ts";
import { oneOf, problemAt, quote } from "./context.ts";
import type { CompiledItem, FindingContext, Place } from "./context.ts";

/** Whether the kind is one the item takes; anything may be not seen. */
export function kindProblems(kind: string, compiled: CompiledItem, place: Place): FieldProblem[] {
  const { answer, equipment } = compiled.item;
  if (kind === answer || kind === "not-seen" || (kind === "not-fitted" && equipment === true)) return [];
  const at = (reason: string) => [problemAt(place, ["answer", "kind"], reason)];
  if (kind === "not-fitted") {
    return at(
      `Every car has ${place.name}, or the sheet has no use for "not-fitted" there: answer by ${quote(answer)}, or "not-seen" with a reason and a note.`,
    );
  }
  return at(
    `${place.name} is answered by ${quote(answer)}, not by ${quote(kind)}: answer so, or "not-seen" with a reason.`,
  );
}

/** Options of the item; further ones only where several can be true, none twice, and neither "not known" nor the first, which says that nothing else is. */
function choiceProblems(answer: AnswerOf<"choice">, compiled: CompiledItem, place: Place): FieldProblem[] {
  const options = [...compiled.options.keys()];
  const unknown = (option: string, path: readonly PropertyKey[]) =>
    compiled.options.has(option)
      ? []
      : [problemAt(place, path, `${place.name} has no option ${quote(option)}: name ${oneOf(options)}.`)];
  const also = answer.also ?? [];
  const refused = (reason: string) => [problemAt(place, ["answer", "also"], reason)];
  const own = unknown(answer.option, ["answer", "option"]);
  if (also.length === 0) return own;
  if (compiled.item.choice?.several !== true)
    return [
      ...own,
      ...refused(`${place.name} takes one answer: keep the one that counts, and write the rest in the note.`),
    ];
  const said = [answer.option, ...also];
  const alone = said.find((option) => option === options[0] || option === "not-known");
  return [
    ...own,
    ...also.flatMap((option, index) => unknown(option, ["answer", "also", index])),
    ...(new Set(said).size === said.length ? [] : refused("An option is named twice: name each once.")),
    ...(alone === undefined
      ? []
      : refused(`${quote(alone)} cannot be true beside another option: leave it out, or name it alone.`)),
  ];
}

/** What is wrong within an answer of the item's own kind. */
export function answerProblems(
  answer: Answer,
  compiled: CompiledItem,
  context: FindingContext,
  place: Place,
): FieldProblem[] {
  const { item } = compiled;
  if (answer.kind !== item.answer) return [];
  switch (answer.kind) {
    case "reading":
      return item.reading === undefined ? [] : readingProblems(answer, item.reading, place);
    case "faults":
      return faultsProblems(answer, compiled, place);
    case "grade":
      return gradeProblems(answer, context, place);
    case "choice":
      return choiceProblems(answer, compiled, place);
    default:
      return [];
  }
}
