import type { FieldProblem } from "@evenhand/shared/problem";
import { GradeScale, Instrument, Report, ReportKind, Vehicle } from "@evenhand/shared/report";
import type { Sheet } from "@evenhand/shared/sheet";
import { dimensionOf } from "@evenhand/measurement/unit";
import { z } from "zod";
import { pointer } from "../check-finding/context.ts";
import type { FindingContext } from "../check-finding/context.ts";
import { structureProblems } from "../check-finding/structure.ts";
import { compileSheet } from "../compile-sheet/index.ts";
import { scaleProblems } from "./scales.ts";

type Raw = Readonly<Record<string, unknown>>;

/** The report with its findings left unread. */
const Envelope = Report.omit({ findings: true }).extend({ findings: z.array(z.unknown()).max(200_000) });

export type Envelope = z.infer<typeof Envelope>;
export type EnvelopeCheck = {
  readonly envelope: Envelope | undefined;
  readonly problems: readonly FieldProblem[];
};

const listOf = (raw: Raw, field: string): readonly unknown[] => {
  const list = raw[field];
  return Array.isArray(list) ? list : [];
};

const idOf = (raw: unknown): string | undefined => {
  const id: unknown = typeof raw === "object" && raw !== null ? Reflect.get(raw, "id") : undefined;
  return typeof id === "string" ? id : undefined;
};

/** Entries by id, the first of each: what parses, and `undefined` for what is there but cannot be read. */
function readable<T>(raw: Raw, field: string, schema: z.ZodType<T>): Map<string, T | undefined> {
  const entries = new Map<string, T | undefined>();
  for (const entry of listOf(raw, field)) {
    const id = idOf(entry);
    if (id !== undefined && !entries.has(id)) entries.set(id, schema.safeParse(entry).data);
  }
  return entries;
}

/** What findings refer to, as far as it can be read. */
export function readContext(raw: Raw, sheet: Sheet): FindingContext {
  return {
    sheet: compileSheet(sheet),
    form: Vehicle.safeParse(raw["vehicle"]).data?.form,
    kind: ReportKind.safeParse(raw["kind"]).data,
    instruments: readable(raw, "instruments", Instrument),
    persons: new Set(listOf(raw, "persons").flatMap((person) => idOf(person) ?? [])),
    scales: readable(raw, "scales", GradeScale),
  };
}

function duplicateIds(raw: Raw, field: string, what: string): FieldProblem[] {
  const ids = listOf(raw, field).map(idOf);
  return ids.flatMap((id, index) =>
    id === undefined || ids.indexOf(id) === index
      ? []
      : [
          {
            at: pointer("", field, index, "id"),
            reason: `The ${what} ${JSON.stringify(id)} stands twice: give each its own id.`,
          },
        ],
  );
}

/** Resolution and accuracy of one instrument are of one kind of quantity. */
function instrumentProblems(instrument: Instrument, at: string): FieldProblem[] {
  const resolution = instrument.resolution?.unit;
  const accuracy = instrument.accuracy?.absolute?.unit;
  if (resolution === undefined || accuracy === undefined || dimensionOf(resolution) === dimensionOf(accuracy))
    return [];
  return [
    {
      at: pointer(at, "accuracy", "absolute", "unit"),
      reason: `The resolution of ${instrument.id} is in ${resolution}, a unit of ${dimensionOf(resolution)}, its accuracy in ${accuracy}, one of ${dimensionOf(accuracy)}: write both in units of what it measures.`,
    },
  ];
}

function each<T>(
  raw: Raw,
  field: string,
  schema: z.ZodType<T>,
  check: (entry: T, at: string) => FieldProblem[],
): FieldProblem[] {
  return listOf(raw, field).flatMap((entry, index) => {
    const { data } = schema.safeParse(entry);
    return data === undefined ? [] : check(data, pointer("", field, index));
  });
}

function visitProblems({ visit: { started, ended } }: Envelope): FieldProblem[] {
  return ended !== undefined && Date.parse(ended) < Date.parse(started)
    ? [
        {
          at: "/visit/ended",
          reason: `The visit ends (${ended}) before it starts (${started}): correct one of the two.`,
        },
      ]
    : [];
}

/** Everything of a report but its findings. */
export function checkEnvelope(raw: Raw): EnvelopeCheck {
  const parsed = Envelope.safeParse(raw);
  const problems = [
    ...(parsed.success ? visitProblems(parsed.data) : structureProblems(parsed.error.issues, raw, "")),
    ...duplicateIds(raw, "instruments", "instrument"),
    ...duplicateIds(raw, "persons", "person"),
    ...duplicateIds(raw, "scales", "scale"),
    ...each(raw, "instruments", Instrument, instrumentProblems),
    ...each(raw, "scales", GradeScale, scaleProblems),
  ];
  return { envelope: parsed.data, problems };
}

/** Whether the report names the sheet it is being checked against. */
export function sheetProblems(raw: Raw, { id, version }: Sheet): FieldProblem[] {
  const { data } = Report.shape.sheet.safeParse(raw["sheet"]);
  if (data === undefined || (data.id === id && data.version === version)) return [];
  const at = data.id === id ? "/sheet/version" : "/sheet/id";
  return [
    {
      at,
      reason: `Sheet ${data.id} version ${data.version} is not known here, so its findings were not read: use ${id} version ${version}.`,
    },
  ];
}
