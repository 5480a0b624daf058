import type { Matter } from "@evenhand/shared/matter";
import type { Severity } from "@evenhand/shared/severity";
import { expect, test } from "vitest";
import { caseMatters, releasedCaseMatters } from "./index.ts";

const matter = (kind: string, severity: Severity, lines: number[], zone: string | null = null): Matter => ({
  kind,
  zone,
  severity,
  certainty: "seen",
  headline: `about ${kind}`,
  found: "",
  decides: "",
  next: { step: "ask", words: `ask about ${kind}` },
  question: "",
  admitted: false,
  lines,
  checks: [],
  costRows: [],
});

const answer = {
  comparison: "k",
  wrong: [
    matter("title", "halt", [1]),
    matter("brakes", "danger", [2, 3]),
    matter("body", "worth", [4], "left"),
  ],
  unknown: [matter("unseen-lift", "danger", [5])],
};
const released = [
  { entry: 3, state: "accepted", deadline: null },
  { entry: 4, state: "released", deadline: "2026-12-01T19:00:00.000Z" },
  { entry: 5, state: "contested", deadline: null },
] as const;

test("each matter of the answer has its place, its step and what became of it", () => {
  const seen = caseMatters(answer, { released, answeredFor: new Set(["title"]) });
  expect(seen.map(({ id, place, state, unknown }) => [id, place, state, unknown])).toEqual([
    ["title", 0, "answered-for", false],
    ["brakes", 1, "accepted", false],
    ["body:left", 2, "laid", false],
    ["unseen-lift", 3, "contested", true],
  ]);
  expect(seen[1]).toMatchObject({
    comparison: "k",
    next: "ask about brakes",
    lines: 2,
    laid: 1,
    headline: "about brakes",
  });
});

test("each matter says whose turn it is, and until when", () => {
  const seen = caseMatters(answer, { released, answeredFor: new Set() });
  expect(seen.map(({ owed }) => owed)).toEqual([
    null,
    null,
    { of: "dealer", state: "released", until: "2026-12-01T19:00:00.000Z" },
    { of: "buyer", state: "contested", until: null },
  ]);
});

test("whoever is no party to settling is told of no state", () => {
  expect(new Set(caseMatters(answer, null).map(({ state }) => state))).toEqual(new Set([null]));
});

const of = (id: string, severity: Severity) => ({
  id,
  severity,
  headline: `released of ${id}`,
  found: id === "brakes",
});

test("what is laid before a dealer is told as matters made of it alone, worst first", () => {
  const seen = releasedCaseMatters([
    { comparison: "k", entry: 9, state: "accepted", deadline: null, matter: of("body:left", "worth") },
    { comparison: "k", entry: 4, state: "accepted", deadline: null, matter: of("brakes", "danger") },
    { comparison: "k", entry: 7, state: "released", deadline: null, matter: of("brakes", "danger") },
    { comparison: "other", entry: 4, state: "contested", deadline: null, matter: of("brakes", "danger") },
    { comparison: "k", entry: 11, state: "released", deadline: null, matter: null },
  ]);
  expect(seen.map(({ comparison, id, lines, state }) => [comparison, id, lines, state])).toEqual([
    ["k", "brakes", 2, "laid"],
    ["other", "brakes", 1, "contested"],
    ["k", "body:left", 1, "accepted"],
  ]);
  expect(seen[0]).toMatchObject({ headline: "released of brakes", place: null, next: null, unknown: false });
  expect(seen[2]?.unknown).toBe(true);
});
