import { describe, expect, it } from "vitest";
import {
  changed,
  collectionOf,
  foundAt,
  millimeters,
  transportSheet,
} from "../../testing/hand-over-reports.ts";
import { asLookedAt } from "./index.ts";

const answersOf = (item: string, ...others: Parameters<typeof changed>) =>
  asLookedAt(collectionOf(changed(...others)), transportSheet)
    .report.findings.filter((each) => each.item === item)
    .map(({ answer }) => answer);

describe("what was looked at in bad light or on a wet car", () => {
  it.each([
    ["visit.light", "dark", "dark"],
    ["visit.light", "dim", "dark"],
    ["visit.body-surface", "wet", "wet"],
    ["visit.body-surface", "dirty", "dirty"],
    ["visit.body-surface", "covered", "covered"],
  ] as const)("%s %s: no panel counts as seen", (item, option, reason) => {
    const answers = answersOf("body.faults", [item, "", { kind: "choice", option }]);
    expect(new Set(answers.map((answer) => JSON.stringify(answer)))).toEqual(
      new Set([JSON.stringify({ kind: "not-seen", reason })]),
    );
  });

  it("keeps what was found in the dark, and takes back that nothing else was", () => {
    const dent = { kind: "dent", extent: millimeters(80) };
    const answers = answersOf(
      "body.faults",
      ["visit.light", "", { kind: "choice", option: "dark" }],
      ["body.faults", "hood", foundAt("body.faults", dent)],
    );
    expect(answers).toContainEqual({ kind: "faults", found: [dent], denied: [] });
  });

  it("leaves what is read, counted and tried: the dark hides no odometer", () => {
    const dark = ["visit.light", "", { kind: "choice", option: "dark" }] as const;
    expect(answersOf("identity.odometer", dark)).toEqual(answersOf("identity.odometer"));
    expect(answersOf("road.moves", dark)).toEqual(answersOf("road.moves"));
  });

  it("leaves all of a report from a clean car in daylight", () => {
    const report = collectionOf(changed());
    expect(asLookedAt(report, transportSheet).report).toEqual(report);
  });
});
