import { readFileSync } from "node:fs";
import { Report } from "@evenhand/shared/report";
import { describe, expect, it } from "vitest";
import { sheetVersion1 as sheet } from "../sheet-version-1/index.ts";
import { checkFinding } from "./index.ts";

const file = new URL("../../../../fixtures/sheet/one-of-each.json", import.meta.url);
const report = Report.parse(JSON.parse(readFileSync(file, "utf8")));
const inspection = { ...report, kind: "inspection" as const };
const statement = { ...report, kind: "statement" as const };
const check = (finding: unknown, header: Report = inspection) => checkFinding(finding, header, sheet);
const problemsOf = (finding: unknown) => {
  const result = check(finding);
  return result.ok ? [] : result.problems.map(({ at, reason }) => [at, reason]);
};
const notFitted = (item: string, position = "") => ({ item, position, answer: { kind: "not-fitted" } });
const chosen = (item: string, option: string, ...also: string[]) => ({
  item,
  answer: { kind: "choice", option, also },
});

describe("not fitted", () => {
  it.each([
    notFitted("electrics.air-conditioning"),
    notFitted("brakes.servo"),
    notFitted("electrics.lamps", "left-repeater"),
    notFitted("underbody.torque-boxes", "left-front"),
  ])("is an answer of equipment, without conditions to note: $item", (finding) => {
    expect(check(finding)).toMatchObject({ ok: true, advisories: [] });
  });

  it("is refused where every car has the thing, and says what would work", () => {
    expect(problemsOf(notFitted("steering.free-play"))).toEqual([
      [
        "/answer/kind",
        'Every car has “Steering free play”, or the sheet has no use for "not-fitted" there: answer by "reading", or "not-seen" with a reason and a note.',
      ],
    ]);
  });
});

describe("several answers at once", () => {
  it("are taken where two can be true", () => {
    expect(problemsOf(chosen("engine.noise", "tick-warm", "knock"))).toEqual([]);
    expect(problemsOf(chosen("engine.oil", "milky", "low"))).toEqual([]);
  });

  it.each([
    [
      chosen("brakes.pedal-sink", "slow", "to-floor"),
      "/answer/also",
      "“Pedal sinks under held force” takes one answer: keep the one that counts, and write the rest in the note.",
    ],
    [chosen("engine.noise", "knock", "knock"), "/answer/also", "An option is named twice: name each once."],
    [
      chosen("engine.noise", "quiet", "knock"),
      "/answer/also",
      '"quiet" cannot be true beside another option: leave it out, or name it alone.',
    ],
    [
      chosen("engine.oil", "low", "not-known"),
      "/answer/also",
      '"not-known" cannot be true beside another option: leave it out, or name it alone.',
    ],
    [
      chosen("road.noise", "wind", "hum"),
      "/answer/also/0",
      '“Driving noise” has no option "hum": name none, wind, clunk, rumble, whine or not-known.',
    ],
  ])("are refused otherwise: %j", (finding, at, reason) => {
    expect(problemsOf(finding)).toEqual([[at, reason]]);
  });
});

describe("what only a seller can claim", () => {
  const claim = { item: "engine.rebuild-claim", answer: { kind: "choice", option: "rebuilt" } };

  it("stands in a statement without a word", () => {
    expect(check(claim, statement)).toMatchObject({ ok: true, advisories: [] });
  });

  it("is said of an inspector's report, which keeps it", () => {
    expect(check(claim)).toMatchObject({
      ok: true,
      advisories: [
        { at: "/item", reason: expect.stringMatching(/^“Engine rebuild” is what a seller claims/) },
      ],
    });
  });
});

const horn = (first: unknown, more: object = { look: "second" }) => ({
  item: "electrics.horn",
  answer: { kind: "working", value: "yes" },
  first: { answer: first },
  ...more,
});

describe("a first answer beside a second", () => {
  it("is an answer of the same item", () => {
    expect(check(horn({ kind: "working", value: "no" })).ok).toBe(true);
    expect(problemsOf(horn({ kind: "grade", scale: "house", value: "as-new" }))).toEqual([
      ["/first/answer/kind", expect.stringContaining("Horn")],
    ]);
  });

  it("stands beside a second one only", () => {
    expect(problemsOf(horn({ kind: "working", value: "no" }, {}))).toEqual([
      ["/look", "A first answer stands beside a second one: write second, or leave first out."],
    ]);
  });
});
