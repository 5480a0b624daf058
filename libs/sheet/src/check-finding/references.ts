import { dimensionOf } from "@evenhand/measurement/unit";
import type { FieldProblem } from "@evenhand/shared/problem";
import type { Instrument } from "@evenhand/shared/report";
import type { ConditionKind, Item, ReadingSpec } from "@evenhand/shared/sheet";
import type { UnitSymbol } from "@evenhand/shared/unit";
import { oneOf, problemAt, quote } from "./context.ts";
import type { FindingContext, Place } from "./context.ts";

const declared = (ids: Iterable<string>, what: string): string => {
  const known = [...ids];
  return known.length === 0
    ? `add it to the report's ${what}`
    : `name ${oneOf(known)}, or add it to the report's ${what}`;
};

/** Resolution or accuracy of an instrument in a unit that the item is not measured in. */
function wrongUnit(instrument: Instrument, spec: ReadingSpec): [part: string, unit: UnitSymbol] | undefined {
  const parts: [string, UnitSymbol | undefined][] = [
    ["accuracy", instrument.accuracy?.absolute?.unit],
    ["resolution", instrument.resolution?.unit],
  ];
  for (const [part, unit] of parts) {
    if (unit !== undefined && dimensionOf(unit) !== dimensionOf(spec.unit)) return [part, unit];
  }
  return undefined;
}

export function instrumentProblems(
  id: string,
  spec: ReadingSpec | undefined,
  context: FindingContext,
  place: Place,
): FieldProblem[] {
  const at = (reason: string) => [problemAt(place, ["instrument"], reason)];
  if (!context.instruments.has(id)) {
    return at(
      `The report has no instrument ${quote(id)}: ${declared(context.instruments.keys(), "instruments")}.`,
    );
  }
  const instrument = context.instruments.get(id);
  const wrong = instrument === undefined || spec === undefined ? undefined : wrongUnit(instrument, spec);
  if (wrong === undefined || spec === undefined) return [];
  const [part, unit] = wrong;
  return at(
    `The ${part} of ${quote(id)} is given in ${unit}, a unit of ${dimensionOf(unit)}, and ${place.name} is a ${dimensionOf(spec.unit)}: give it in ${spec.unit}, or name another instrument.`,
  );
}

export function personProblems(id: string, context: FindingContext, place: Place): FieldProblem[] {
  if (context.persons.has(id)) return [];
  return [
    problemAt(
      place,
      ["person"],
      `The report has no person ${quote(id)}: ${declared(context.persons, "persons")}.`,
    ),
  ];
}

const conditionWords = (id: string, { sheet }: FindingContext): string =>
  sheet.sheet.conditions.find((kind) => kind.id === id)?.words.american ?? id.replaceAll("-", " ");

const asked: Readonly<Record<ConditionKind["ask"], [type: string, words: string]>> = {
  "yes-no": ["boolean", "true or false"],
  number: ["number", "a number"],
  text: ["string", "text"],
};

/** A condition the sheet knows, noted as another kind of value than it is asked for. */
export function conditionProblems(
  conditions: Readonly<Record<string, boolean | number | string>>,
  context: FindingContext,
  place: Place,
): FieldProblem[] {
  return context.sheet.sheet.conditions.flatMap(({ id, ask, unit }) => {
    const value = conditions[id];
    const [type, words] = asked[ask];
    if (value === undefined || typeof value === type) return [];
    const inUnit = unit === undefined ? "" : ` in ${unit}`;
    return [
      problemAt(
        place,
        ["conditions", id],
        `“${conditionWords(id, context)}” is noted as ${words}${inUnit}, not as ${JSON.stringify(value)}.`,
      ),
    ];
  });
}

/** What only a seller can claim, in an inspector's report: said, never refused, since older reports carry it. */
export function claimInInspection(item: Item, context: FindingContext, place: Place): FieldProblem[] {
  if (item.asked !== "statement" || context.kind !== "inspection") return [];
  return [
    problemAt(
      place,
      ["item"],
      `${place.name} is what a seller claims, and is not asked of an inspector: write what was found at the items it is judged by, or in a note.`,
    ),
  ];
}

/** Conditions the item asks for that a finding does not note: said, never refused. */
export function missingConditions(
  item: Item,
  conditions: Readonly<Record<string, unknown>>,
  context: FindingContext,
  place: Place,
): FieldProblem[] {
  return item.conditions
    .filter((id) => conditions[id] === undefined)
    .map((id) =>
      problemAt(
        place,
        ["conditions", id],
        `${place.name} asks for “${conditionWords(id, context)}” to be noted: without it some checks cannot tell.`,
      ),
    );
}
