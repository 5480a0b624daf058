import type { FieldProblem } from "@evenhand/shared/problem";
import type { GradeScale } from "@evenhand/shared/report";
import { pointer } from "../check-finding/context.ts";

function percentProblems(scale: GradeScale, at: string): FieldProblem[] {
  return scale.step === undefined
    ? [{ at: pointer(at, "step"), reason: "The scale percent needs the step it is given in: for example 5." }]
    : [];
}

function duplicateGrades({ grades }: GradeScale, at: string): FieldProblem[] {
  return grades.flatMap(({ id }, index) =>
    grades.findIndex((grade) => grade.id === id) === index
      ? []
      : [
          {
            at: pointer(at, "grades", index, "id"),
            reason: `The grade ${id} stands twice: name each grade once.`,
          },
        ],
  );
}

/** What is wrong with one scale of a report's own. */
export function scaleProblems(scale: GradeScale, at: string): FieldProblem[] {
  if (scale.id === "house") {
    return [
      { at: pointer(at, "id"), reason: "The scale house is the sheet's own: give this one another id." },
    ];
  }
  if (scale.id === "percent") return percentProblems(scale, at);
  return duplicateGrades(scale, at);
}
