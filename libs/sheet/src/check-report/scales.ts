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

/** Stretches run from worst to best: each from low to high, none into the next, and all or none given. */
function stretchProblems({ grades }: GradeScale, at: string): FieldProblem[] {
  if (grades.every(({ stretch }) => stretch === undefined)) return [];
  let reached = 0;
  return grades.flatMap(({ id, stretch }, index) => {
    const field = pointer(at, "grades", index, "stretch");
    if (stretch === undefined) {
      return [
        { at: field, reason: `${id} has no stretch and others have: give every grade its stretch, or none.` },
      ];
    }
    const [low, high] = stretch;
    const before = reached;
    reached = Math.max(reached, high);
    if (low >= high)
      return [
        { at: field, reason: `The stretch of ${id} runs from ${low} to ${high}: write the lower end first.` },
      ];
    return low < before
      ? [
          {
            at: field,
            reason: `The stretch of ${id} begins at ${low}, inside the one before it, which ends at ${before}: order grades from worst to best without overlap.`,
          },
        ]
      : [];
  });
}

/** What is wrong with one scale of a report's own. */
export function scaleProblems(scale: GradeScale, at: string): FieldProblem[] {
  if (scale.id === "house") {
    return [
      { at: pointer(at, "id"), reason: "The scale house is the sheet's own: give this one another id." },
    ];
  }
  if (scale.id === "percent") return percentProblems(scale, at);
  return [...duplicateGrades(scale, at), ...stretchProblems(scale, at)];
}
