import { Answer } from "@evenhand/shared/answer";
import { Finding } from "@evenhand/shared/finding";
import type { FieldProblem } from "@evenhand/shared/problem";
import type { Sheet } from "@evenhand/shared/sheet";
import { answerProblems, kindProblems } from "./answer.ts";
import { unitsOf } from "./answer-reading.ts";
import { contextOf, nameOf, pointer, problemAt } from "./context.ts";
import type { CompiledItem, FindingContext, Place, ReportHeader } from "./context.ts";
import { positionProblems, unknownItem } from "./place.ts";
import {
  claimInInspection,
  conditionProblems,
  instrumentProblems,
  missingConditions,
  personProblems,
} from "./references.ts";
import { structureProblems } from "./structure.ts";

export type FindingCheck =
  | { readonly ok: true; readonly finding: Finding; readonly advisories: readonly FieldProblem[] }
  | {
      readonly ok: false;
      readonly problems: readonly FieldProblem[];
      readonly advisories: readonly FieldProblem[];
    };

type Issues = Parameters<typeof structureProblems>[0];

const fieldOf = (raw: unknown, field: string): unknown =>
  typeof raw === "object" && raw !== null ? Reflect.get(raw, field) : undefined;

const textOf = (raw: unknown, field: string): string | undefined => {
  const value = fieldOf(raw, field);
  return typeof value === "string" ? value : undefined;
};

/** The contract's own problems; where a unit is missing or unknown, the units the item takes are named. */
function ownStructure(
  issues: Issues | undefined,
  raw: unknown,
  place: Place,
  compiled: CompiledItem | undefined,
): FieldProblem[] {
  if (issues === undefined) return [];
  const of = { item: place.item, position: place.position };
  const spec = compiled?.item.reading;
  const unitAt = pointer(place.at, "answer", "unit");
  return structureProblems(issues, raw, place.at, place.item === "" ? {} : of).map((problem) => {
    if (problem.at !== unitAt || spec === undefined) return problem;
    const unit = fieldOf(fieldOf(raw, "answer"), "unit");
    const start = unit === undefined ? "The unit is missing" : `There is no unit ${JSON.stringify(unit)}`;
    return { ...problem, reason: `${start}: write ${unitsOf(spec)}.` };
  });
}

/** An answer of a first look is an answer of the item, and stands beside one of a second look only. */
function firstLookProblems(
  raw: unknown,
  place: Place,
  compiled: CompiledItem,
  context: FindingContext,
): FieldProblem[] {
  const rawAnswer = fieldOf(fieldOf(raw, "first"), "answer");
  const answer = Answer.safeParse(rawAnswer);
  if (!answer.success) return [];
  const at = { ...place, at: pointer(place.at, "first") };
  return [
    ...(fieldOf(raw, "look") === undefined
      ? [
          problemAt(
            place,
            ["look"],
            "A first answer stands beside a second one: write second, or leave first out.",
          ),
        ]
      : []),
    ...kindProblems(answer.data.kind, compiled, at),
    ...answerProblems(answer.data, compiled, context, at),
  ];
}

function onTheSheet(
  raw: unknown,
  place: Place,
  compiled: CompiledItem,
  context: FindingContext,
): FieldProblem[] {
  const rawAnswer = fieldOf(raw, "answer");
  const kind = textOf(rawAnswer, "kind");
  const answer = Answer.safeParse(rawAnswer);
  const instrument = textOf(raw, "instrument");
  return [
    ...positionProblems(place, compiled, context),
    ...firstLookProblems(raw, place, compiled, context),
    ...(kind === undefined ? [] : kindProblems(kind, compiled, place)),
    ...(answer.success ? answerProblems(answer.data, compiled, context, place) : []),
    ...(instrument === undefined
      ? []
      : instrumentProblems(instrument, compiled.item.reading, context, place)),
  ];
}

/** A finding within a report that may be wrong elsewhere; pointers start at `at`. */
export function checkInContext(raw: unknown, context: FindingContext, at: string): FindingCheck {
  const item = textOf(raw, "item") ?? "";
  const compiled = context.sheet.items.get(item);
  const name = nameOf(compiled?.item.words.american ?? item);
  const place: Place = { at, item, position: textOf(raw, "position") ?? "", name };
  const parsed = Finding.safeParse(raw);
  const structure = ownStructure(parsed.error?.issues, raw, place, compiled);
  const saidAlready = new Set(structure.map((problem) => problem.at));
  const person = textOf(raw, "person");
  const conditions = parsed.data?.conditions ?? {};
  const further = [
    ...(place.item === "" || compiled !== undefined ? [] : [unknownItem(place, context)]),
    ...(compiled === undefined ? [] : onTheSheet(raw, place, compiled, context)),
    ...(person === undefined ? [] : personProblems(person, context, place)),
    ...conditionProblems(conditions, context, place),
  ].filter((problem) => !saidAlready.has(problem.at));
  const seen = parsed.data !== undefined && parsed.data.answer.kind !== "not-seen";
  const fitted = seen && parsed.data?.answer.kind !== "not-fitted";
  const advisories =
    compiled === undefined || !seen
      ? []
      : [
          ...claimInInspection(compiled.item, context, place),
          ...(fitted ? missingConditions(compiled.item, conditions, context, place) : []),
        ];
  const problems = [...structure, ...further];
  return parsed.success && problems.length === 0
    ? { ok: true, finding: parsed.data, advisories }
    : { ok: false, problems, advisories };
}

/**
 * Checks one finding against the sheet and the report it stands in, as while typing. Pointers are relative to the finding.
 * Missing conditions are advisories: the finding stands, and what needs them cannot tell.
 *
 * @example
 * checkFinding({ item: "wheels.tread-depth", position: "left-front", answer: { kind: "reading", unit: "psi",
 *   values: [{ value: 32 }] } }, header, sheetVersion1);
 * // { ok: false, problems: [{ at: "/answer/unit", reason: "psi is a unit of pressure, …", … }], advisories: [] }
 */
export function checkFinding(finding: unknown, header: ReportHeader, sheet: Sheet): FindingCheck {
  return checkInContext(finding, contextOf(header, sheet), "");
}

export type { ReportHeader };
