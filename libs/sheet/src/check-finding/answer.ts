import type { Answer } from "@evenhand/shared/answer";
import type { FieldProblem } from "@evenhand/shared/problem";
import { faultsProblems } from "./answer-faults.ts";
import { gradeProblems } from "./answer-grade.ts";
import { readingProblems } from "./answer-reading.ts";
import { oneOf, problemAt, quote } from "./context.ts";
import type { CompiledItem, FindingContext, Place } from "./context.ts";

/** Whether the kind is one the item takes; anything may be not seen. */
export function kindProblems(kind: string, compiled: CompiledItem, place: Place): FieldProblem[] {
  const { answer } = compiled.item;
  if (kind === answer || kind === "not-seen") return [];
  return [
    problemAt(
      place,
      ["answer", "kind"],
      `${place.item} is answered by ${quote(answer)}, not by ${quote(kind)}: answer so, or "not-seen" with a reason.`,
    ),
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
      return compiled.options.has(answer.option)
        ? []
        : [
            problemAt(
              place,
              ["answer", "option"],
              `${place.item} has no option ${quote(answer.option)}: name ${oneOf([...compiled.options.keys()])}.`,
            ),
          ];
    default:
      return [];
  }
}
