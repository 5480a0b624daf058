import type { FieldProblem } from "@evenhand/shared/problem";
import type { z } from "zod";
import { oneOf, pointer } from "./context.ts";

type Issue = z.core.$ZodIssue;

const missing = (raw: unknown, path: readonly PropertyKey[]): boolean => {
  let value = raw;
  for (const part of path) {
    if (typeof value !== "object" || value === null) return true;
    value = Reflect.get(value, part);
  }
  return value === undefined;
};

const kinds: Readonly<Record<string, string>> = {
  string: "text in quotation marks",
  number: "a plain number",
  int: "a whole number",
  boolean: "true or false",
  array: "a list",
  object: "an object",
  record: "an object",
};

const expectedOf = (issue: Issue): string => {
  if (issue.code === "invalid_type") return kinds[issue.expected] ?? issue.expected;
  if (issue.code === "invalid_value") return oneOf(issue.values.map(String));
  return issue.message;
};

function sizeSentence(issue: Issue & { code: "too_small" | "too_big" }): string {
  const small = issue.code === "too_small";
  const bound = String(small ? issue.minimum : issue.maximum);
  const edge = small ? "at least" : "at most";
  if (issue.origin === "string") return `Write ${edge} ${bound} character${bound === "1" ? "" : "s"}.`;
  if (issue.origin === "array") return `List ${edge} ${bound}.`;
  const strict = issue.inclusive === true ? edge : `${small ? "more" : "less"} than`;
  return `Give a number of ${strict} ${bound}.`;
}

function sentence(issue: Issue, raw: unknown): string {
  const name = String(issue.path.at(-1) ?? "it");
  const absent = missing(raw, issue.path);
  // A field nobody may give: the contract says why, and what would work.
  if (issue.code === "invalid_type" && issue.expected === "never") {
    return `${name} is not taken: ${issue.message}.`;
  }
  switch (issue.code) {
    case "invalid_type":
    case "invalid_value":
      return absent
        ? `${name} is missing: give ${expectedOf(issue)}.`
        : `${name} cannot be read: give ${expectedOf(issue)}.`;
    case "unrecognized_keys":
      return `There is no field ${issue.keys.join(", ")} here: leave it out, or write it in the note.`;
    case "too_small":
    case "too_big":
      return sizeSentence(issue);
    case "invalid_union": {
      const ways = [...new Set(issue.errors.flatMap((branch) => branch.slice(0, 1).map(expectedOf)))];
      const options = "options" in issue && Array.isArray(issue.options) ? issue.options.map(String) : ways;
      return `${name} ${absent ? "is missing" : "cannot be read"}: give ${oneOf(options)}.`;
    }
    case "invalid_format":
      return issue.format === "datetime"
        ? `${name} is no instant in UTC: write it as 2026-05-04T15:00:00Z.`
        : `${name} is written in a way that is not read: ${issue.message}.`;
    default:
      return `${name} is not right: ${issue.message}.`;
  }
}

/**
 * What the contract's own check found, as sentences that say what would work.
 *
 * @param raw what was checked, to tell what is missing from what is wrong
 * @param at JSON Pointer of `raw` in the whole document
 */
export function structureProblems(
  issues: readonly Issue[],
  raw: unknown,
  at: string,
  of: Pick<FieldProblem, "item" | "position"> = {},
): FieldProblem[] {
  return issues.map((issue) => {
    // An unknown field is pointed at itself, not at the object that holds it.
    const path = issue.code === "unrecognized_keys" ? [...issue.path, String(issue.keys[0])] : issue.path;
    return { at: pointer(at, ...path), reason: sentence(issue, raw), ...of };
  });
}
