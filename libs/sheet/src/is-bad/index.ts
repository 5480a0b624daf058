import { convert, dimensionOf } from "@evenhand/measurement/unit";
import type { Answer, AnswerOf } from "@evenhand/shared/answer";
import type { GradeScale } from "@evenhand/shared/report";
import type { Item, Limit, ReadingSpec } from "@evenhand/shared/sheet";
import { gradeStretch, houseGradeOf, houseGrades } from "../grade-scale/index.ts";

/** Equality passes; a difference under 1e-9 of δ is rounding. */
function fails(value: number, limit: Limit, { delta }: ReadingSpec): boolean {
  const rounding = 1e-9 * Math.max(delta.absolute, delta.share * Math.abs(value));
  return limit.side === "min" ? value < limit.value - rounding : value > limit.value + rounding;
}

function isReadingBad(answer: AnswerOf<"reading">, spec: ReadingSpec): boolean {
  if (dimensionOf(answer.unit) !== dimensionOf(spec.unit)) return false;
  return answer.values.some(({ value }) => {
    const inBaseUnit = convert(value, answer.unit, spec.unit);
    return spec.limits.some((limit) => fails(inBaseUnit, limit, spec));
  });
}

function isGradeBad(answer: AnswerOf<"grade">, badFrom: string, scales: readonly GradeScale[]): boolean {
  const stretch = gradeStretch(answer, scales);
  if (stretch === undefined) return false;
  const worst = houseGrades.findIndex((grade) => grade === badFrom);
  return houseGrades.indexOf(houseGradeOf(stretch)) <= worst;
}

/**
 * Whether an answer says that the thing is bad: a reading any value of which fails a limit (equality passes); a grade whose
 * middle lies in the item's `badFrom` house grade or below; working no or intermittent; presence other than it should be; an
 * option marked bad; any fault found. Colors and codes are never bad by themselves, nor is what was not seen, not known, or
 * answers another kind than the item asks for.
 *
 * @param scales the scales of the report the answer stands in; needed only for grades on other scales than the house's
 * @example
 * isBad({ kind: "working", value: "intermittent" }, horn); // true
 */
export function isBad(answer: Answer, item: Item, scales: readonly GradeScale[] = []): boolean {
  switch (answer.kind) {
    case "reading":
      return item.reading !== undefined && isReadingBad(answer, item.reading);
    case "grade":
      return item.grade !== undefined && isGradeBad(answer, item.grade.badFrom, scales);
    case "working":
      return item.working !== undefined && (answer.value === "no" || answer.value === "intermittent");
    case "presence": {
      const goodIs = item.presence?.goodIs ?? "neither";
      return goodIs !== "neither" && answer.value !== "not-known" && answer.value !== goodIs;
    }
    case "choice":
      return item.choice?.options.some(({ id, bad }) => bad && id === answer.option) ?? false;
    case "faults":
      return item.faults !== undefined && answer.found.length > 0;
    case "color":
    case "code":
    case "not-seen":
      return false;
  }
}
