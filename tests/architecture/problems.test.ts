import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import {
  isProblemCode,
  problemCodeOf,
  problemCodes,
  problemTable,
  problemType,
} from "@evenhand/shared/http/problem-codes";
import { expect, test } from "vitest";

const source = join(import.meta.dirname, "..", "..", "apps", "api", "src");
const files = readdirSync(source, { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".ts") && !file.includes("generated"))
  .map((file) => ({ file, text: readFileSync(join(source, file), "utf8") }));

/** Codes thrown, or named where a code is chosen, anywhere in the service. */
const thrown = new Set(
  files
    .flatMap(({ text }) => [...text.matchAll(/"([a-z]+(?:-[a-z]+)+)"/g)].map(([, word]) => word ?? ""))
    .filter(isProblemCode),
);

/** What the capabilities served today say no with. A new code is added to the table, thrown, and counted here. */
const counted = [
  "malformed-request",
  "invalid-fields",
  "idempotency-key-missing",
  "idempotency-key-reused",
  "request-in-progress",
  "if-match-missing",
  "revision-moved",
  "not-signed-in",
  "sign-in-refused",
  "too-many-attempts",
  "too-many-requests",
  "too-crowded",
  "not-permitted",
  "foreign-origin",
  "scope-missing",
  "not-found",
  "method-not-allowed",
  "body-too-large",
  "request-too-slow",
  "headers-too-large",
  "media-type-unsupported",
  "invitation-spent",
  "password-link-spent",
  "day-limit",
  "too-many-open",
  "last-administrator",
  "account-in-use",
  "expiry-too-far",
  "vehicle-not-listed",
  "nothing-to-list",
  "being-inspected",
  "statement-superseded",
  "order-exists",
  "not-independent",
  "order-state",
  "report-exists",
  "report-sealed",
  "report-still-draft",
  "report-incomplete",
  "reading-refused",
  "evidence-full",
  "picture-refused",
  "evidence-unfinished",
  "upload-moved",
  "upload-protocol",
  "not-comparable",
  "entry-not-releasable",
  "release-state",
  "summary-moved",
  "hand-over-not-bought",
  "hand-over-exists",
  "hand-over-state",
  "hand-over-link-spent",
  "hand-over-hash",
  "hand-over-paper",
  "summary-hash",
  "summary-decided",
  "matters-unanswered",
  "decision-state",
  "hours-unreadable",
  "site-missing",
  "sites-differ",
  "brief-not-plannable",
  "brief-refused",
  "hour-taken",
  "holds-open",
  "appointment-ended",
  "appointment-state",
  "appointment-conditions",
  "not-admitted",
  "faults-unanswered",
  "question-state",
  "complaint-state",
  "internal-error",
  "came-second",
  "not-ready",
  "database-away",
  "timed-out",
];

test("every code counted is in the table, and every code thrown is counted", () => {
  expect(counted.filter((code) => !isProblemCode(code))).toEqual([]);
  expect([...thrown].filter((code) => !counted.includes(code))).toEqual([]);
  expect(counted.filter((code) => !new Set<string>(thrown).has(code))).toEqual([]);
});

test.each(problemCodes)("%s has a status of its own kind, a title, and a type that names it", (code) => {
  const { status, title } = problemTable[code];
  expect(status).toBeGreaterThanOrEqual(400);
  expect(status).toBeLessThan(600);
  expect(title).toMatch(/^[A-Z]/);
  expect(problemCodeOf(problemType(code))).toBe(code);
});

test("no two codes have one title", () => {
  const titles = problemCodes.map((code) => problemTable[code].title);
  expect(titles.filter((title, index) => titles.indexOf(title) !== index)).toEqual([]);
});

test("nothing else is thrown at people: no exception of the framework's own", () => {
  const loose = files.filter(({ text }) =>
    /new (BadRequest|Unauthorized|Forbidden|NotFound|Conflict|Http)\w*Exception/.test(text),
  );
  expect(loose.map(({ file }) => file)).toEqual([]);
});
