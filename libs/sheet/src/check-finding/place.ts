import type { FieldProblem } from "@evenhand/shared/problem";
import { applies, positionsOf } from "../expand/index.ts";
import { closest } from "./closest.ts";
import { oneOf, problemAt, quote } from "./context.ts";
import type { CompiledItem, FindingContext, Place } from "./context.ts";

export function unknownItem(place: Place, context: FindingContext): FieldProblem {
  const { id, version } = context.sheet.sheet;
  const near = closest(place.item, context.sheet.items.keys());
  const help = near === undefined ? "take the id from the sheet" : `perhaps ${near}`;
  return problemAt(
    place,
    ["item"],
    `Sheet ${id} version ${version} has no item ${quote(place.item)}: ${help}.`,
  );
}

/** Positions that would work, and whether this one does. */
export function positionProblems(
  place: Place,
  compiled: CompiledItem,
  context: FindingContext,
): FieldProblem[] {
  const { item, positionSet } = compiled;
  const { form } = context;
  const wrong = (reason: string) => [problemAt(place, ["position"], reason)];
  if (form !== undefined && !applies(item.appliesWhen, form)) {
    return [
      problemAt(
        place,
        ["item"],
        `${place.name} does not apply to this car: leave it out, or correct the vehicle's form.`,
      ),
    ];
  }
  if (positionSet === undefined) {
    return place.position === ""
      ? []
      : wrong(`${place.name} is asked once for the whole car: leave the position out.`);
  }
  const onAnyCar = compiled.positionOrder(place.position) !== undefined;
  if (form === undefined) {
    return onAnyCar
      ? []
      : wrong(
          `${place.name} has no position ${quote(place.position)}: name one of its ${positionSet.words.american}.`,
        );
  }
  const here = positionsOf(positionSet, form);
  if (here.includes(place.position)) return [];
  if (place.position === "") return wrong(`${place.name} needs a position: ${oneOf(here)}.`);
  return wrong(
    onAnyCar
      ? `${quote(place.position)} does not apply to this car: ${place.name} is asked at ${oneOf(here)}.`
      : `${place.name} has no position ${quote(place.position)}: name ${oneOf(here)}.`,
  );
}
