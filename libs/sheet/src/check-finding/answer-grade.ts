import type { AnswerOf } from "@evenhand/shared/answer";
import type { FieldProblem } from "@evenhand/shared/problem";
import { houseGrades } from "../grade-scale/index.ts";
import { oneOf, problemAt, quote } from "./context.ts";
import type { FindingContext, Place } from "./context.ts";

/** Grades of a scale by id, worst first; `undefined` for an unknown scale, and for one that could not be read. */
function gradesOf(scale: string, context: FindingContext): readonly string[] | undefined {
  return scale === "house" ? houseGrades : context.scales.get(scale)?.grades.map(({ id }) => id);
}

function percentProblems(answer: AnswerOf<"grade">, context: FindingContext, place: Place): FieldProblem[] {
  const { value } = answer;
  const problems: FieldProblem[] = [];
  if (typeof value !== "number" || value < 0 || value > 100) {
    problems.push(
      problemAt(
        place,
        ["answer", "value"],
        `${quote(String(value))} is no percentage: give a number from 0 to 100.`,
      ),
    );
  }
  const scale = context.scales.get("percent");
  if (!context.scales.has("percent") || (scale !== undefined && scale.step === undefined)) {
    problems.push(
      problemAt(
        place,
        ["answer", "scale"],
        `A percentage needs its step: add a scale "percent" with its step to the report's scales.`,
      ),
    );
  }
  return problems;
}

export function gradeProblems(
  answer: AnswerOf<"grade">,
  context: FindingContext,
  place: Place,
): FieldProblem[] {
  const { scale, value } = answer;
  if (scale === "percent") return percentProblems(answer, context, place);
  if (scale !== "house" && !context.scales.has(scale)) {
    const known = ["house", "percent", ...context.scales.keys()].filter(
      (id, index, all) => all.indexOf(id) === index,
    );
    return [
      problemAt(
        place,
        ["answer", "scale"],
        `The report has no scale ${quote(scale)}: name ${oneOf(known)}, or add it to the report's scales.`,
      ),
    ];
  }
  const grades = gradesOf(scale, context);
  if (grades === undefined || grades.some((grade) => grade === value)) return [];
  return [
    problemAt(
      place,
      ["answer", "value"],
      `The scale ${scale} has no grade ${quote(String(value))}: name ${oneOf(grades)}.`,
    ),
  ];
}
