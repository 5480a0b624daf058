import type { Finding } from "@evenhand/shared/finding";
import type { FieldProblem } from "@evenhand/shared/problem";
import type { Report } from "@evenhand/shared/report";
import type { Sheet } from "@evenhand/shared/sheet";
import { nameOf } from "../check-finding/context.ts";
import type { FindingContext } from "../check-finding/context.ts";
import { checkInContext } from "../check-finding/index.ts";
import { checkEnvelope, readContext, sheetProblems } from "./header.ts";

/** Advisories are said and refuse nothing: conditions that items ask for and a finding does not note. */
export type ReportCheck =
  | { readonly ok: true; readonly report: Report; readonly advisories: readonly FieldProblem[] }
  | {
      readonly ok: false;
      readonly problems: readonly FieldProblem[];
      readonly advisories: readonly FieldProblem[];
    };

type Raw = Readonly<Record<string, unknown>>;
type FindingsCheck = {
  readonly findings: readonly Finding[];
  readonly problems: readonly FieldProblem[];
  readonly advisories: readonly FieldProblem[];
};

const isObject = (value: unknown): value is Raw =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const refuse = (...problems: FieldProblem[]): ReportCheck => ({ ok: false, problems, advisories: [] });

/** One finding an item and position; the place is known even where the finding's answer cannot be read. */
function repeated(
  raw: unknown,
  index: number,
  seen: Map<string, number>,
  context: FindingContext,
): FieldProblem[] {
  if (!isObject(raw) || typeof raw["item"] !== "string") return [];
  const { item, position = "" } = raw;
  if (typeof position !== "string" || !context.sheet.items.has(item)) return [];
  const key = `${item} ${position}`;
  const first = seen.get(key);
  if (first === undefined) {
    seen.set(key, index);
    return [];
  }
  const name = nameOf(context.sheet.items.get(item)?.item.words.american ?? item);
  const where = position === "" ? name : `${name} at ${position}`;
  return [
    {
      at: `/findings/${index}`,
      reason: `${where} is answered already by finding ${first}: keep one of the two.`,
      item,
      position,
    },
  ];
}

/** An instrument that cannot measure the item is said once, however many findings name it. */
const saidOnce = (problem: FieldProblem): string | undefined =>
  problem.at.endsWith("/instrument") ? problem.reason : undefined;

function checkFindings(findings: readonly unknown[], context: FindingContext): FindingsCheck {
  const read: Finding[] = [];
  const problems: FieldProblem[] = [];
  const advisories: FieldProblem[] = [];
  const places = new Map<string, number>();
  const said = new Set<string>();
  for (const [index, raw] of findings.entries()) {
    const check = checkInContext(raw, context, `/findings/${index}`);
    advisories.push(...check.advisories);
    problems.push(...repeated(raw, index, places, context));
    if (check.ok) {
      read.push(check.finding);
      continue;
    }
    for (const problem of check.problems) {
      const key = saidOnce(problem);
      if (key !== undefined && said.has(key)) continue;
      if (key !== undefined) said.add(key);
      problems.push(problem);
    }
  }
  return { findings: read, problems, advisories };
}

/**
 * Reads a report file's JSON against the sheet it names. Either the whole report, or every problem in it, each with a JSON Pointer,
 * item and position where it is a finding's, and a sentence that says what would work. Problems of the report's own fields come
 * first, then those of findings in their order. Where the report names another sheet, its findings cannot be judged and only the
 * report's own fields are.
 *
 * @param json what `JSON.parse` gave
 * @example
 * checkReport({ hello: 1 }, sheetVersion1);
 * // { ok: false, problems: [{ at: "/format", reason: "This is not an Evenhand report: …" }], advisories: [] }
 */
export function checkReport(json: unknown, sheet: Sheet): ReportCheck {
  if (!isObject(json) || json["format"] !== "evenhand-report") {
    return refuse({
      at: isObject(json) ? "/format" : "",
      reason: 'This is not an Evenhand report: a report is a JSON object whose format is "evenhand-report".',
    });
  }
  const { envelope, problems: own } = checkEnvelope(json);
  const otherSheet = sheetProblems(json, sheet);
  if (otherSheet.length > 0) return refuse(...otherSheet, ...own);
  const raw = json["findings"];
  const checked = checkFindings(Array.isArray(raw) ? raw : [], readContext(json, sheet));
  const problems = [...own, ...checked.problems];
  return envelope === undefined || problems.length > 0
    ? { ok: false, problems, advisories: checked.advisories }
    : { ok: true, report: { ...envelope, findings: [...checked.findings] }, advisories: checked.advisories };
}
