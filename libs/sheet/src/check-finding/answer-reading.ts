import { convert, dimensionOf } from "@evenhand/measurement/unit";
import type { AnswerOf } from "@evenhand/shared/answer";
import type { FieldProblem } from "@evenhand/shared/problem";
import type { ReadingSpec } from "@evenhand/shared/sheet";
import { UNITS } from "@evenhand/shared/unit";
import type { UnitSymbol } from "@evenhand/shared/unit";
import { oneOf, problemAt, quote } from "./context.ts";
import type { Place } from "./context.ts";

export const unitsOf = (spec: ReadingSpec): string => oneOf([spec.unit, ...spec.alsoIn]);

/** A value with its unit as a page shows it; twelve significant digits hide what a conversion rounds. */
function shown(value: number, unit: UnitSymbol): string {
  const { text } = UNITS[unit];
  const gap = text === "" || text.startsWith("⁄") ? "" : " ";
  return `${Number(value.toPrecision(12))}${gap}${text}`;
}

export function readingProblems(
  answer: AnswerOf<"reading">,
  spec: ReadingSpec,
  place: Place,
): FieldProblem[] {
  const spots = new Set(spec.spots.map(({ id }) => id));
  const unknownSpots = answer.values.flatMap(({ spot }, index) =>
    spot === undefined || spots.size === 0 || spots.has(spot)
      ? []
      : [
          problemAt(
            place,
            ["answer", "values", index, "spot"],
            `${place.name} has no spot ${quote(spot)}: name ${oneOf([...spots])}.`,
          ),
        ],
  );
  const dimension = dimensionOf(spec.unit);
  if (dimensionOf(answer.unit) !== dimension) {
    const reason = `${answer.unit} is a unit of ${dimensionOf(answer.unit)}, and ${place.name} is a ${dimension}: write it in ${unitsOf(spec)}.`;
    return [problemAt(place, ["answer", "unit"], reason), ...unknownSpots];
  }
  const [low, high] = spec.plausible;
  const outside = answer.values.flatMap(({ value }, index) => {
    const inBaseUnit = convert(value, answer.unit, spec.unit);
    if (inBaseUnit >= low && inBaseUnit <= high) return [];
    const also = answer.unit === spec.unit ? "" : ` (${shown(inBaseUnit, spec.unit)})`;
    const reach = `${shown(low, spec.unit)} and ${shown(high, spec.unit)}`;
    const reason = `${shown(value, answer.unit)}${also} cannot be: ${place.name} lies between ${reach}.`;
    return [problemAt(place, ["answer", "values", index, "value"], reason)];
  });
  return [...outside, ...unknownSpots];
}
