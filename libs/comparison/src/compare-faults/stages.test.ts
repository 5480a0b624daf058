import { describe, expect, it } from "vitest";
import type { AnswerOf } from "@evenhand/shared/answer";
import { faultKind, faults } from "../../testing/small-items.ts";
import { frameOf } from "../fault-matches/index.ts";
import { saidOfAtoms } from "../../testing/said-of-atoms.ts";
import { compareFaults } from "./index.ts";

type Faults = AnswerOf<"faults">;

const stages = frameOf({
  faultKinds: new Map([
    ["blister", faultKind("blister", { family: "rust", rank: 0 })],
    ["corrosion", faultKind("corrosion", { family: "rust", rank: 1 })],
    ["perforation", faultKind("perforation", { family: "rust", rank: 2, neverTrifling: true })],
    ["dent", faultKind("dent")],
  ]),
  drawing: undefined,
});
const rusted = (a: Faults, b: Faults) =>
  saidOfAtoms((say) =>
    compareFaults(
      {
        a,
        b,
        item: { consequence: "appearance" },
        frame: stages,
        severityOf: () => "small",
        sharedEye: false,
      },
      say,
    ),
  ).map(({ atom, said }) => [atom.of === "fault" ? atom.kind : atom.of, said.outcome, said.reason]);
const rust = (kind: string, millimeters?: number) => ({
  kind,
  ...(millimeters === undefined ? {} : { extent: { value: millimeters, unit: "mm" as const } }),
});

describe("rust at a later stage than was shown", () => {
  it("is no news where bubbles were shown, and news where it is a hole", () => {
    expect(rusted(faults([rust("blister")]), faults([rust("corrosion")]))[0]?.slice(1)).toEqual([
      "consistent",
      "extents-not-given",
    ]);
    expect(rusted(faults([rust("corrosion")]), faults([rust("perforation")]))).toEqual([
      ["corrosion", "agree", "disclosed-milder"],
      ["perforation", "unstated", "graver-stage"],
    ]);
  });

  it("contradicts who showed the rust and said that it is not rusted through", () => {
    const shown = faults([rust("corrosion", 60)], ["perforation"]);
    expect(rusted(shown, faults([rust("perforation", 15)]))).toEqual([
      ["corrosion", "agree", "disclosed-milder"],
      ["perforation", "differ", "denied-found"],
    ]);
  });

  it("leaves all that was shown owned up to, as far as it went", () => {
    const shown = faults([rust("corrosion", 40), rust("corrosion", 300)]);
    expect(rusted(shown, faults([rust("perforation", 10)]))).toEqual([
      ["corrosion", "agree", "disclosed-milder"],
      ["corrosion", "agree", "disclosed-milder"],
      ["perforation", "unstated", "graver-stage"],
    ]);
  });

  it("owns up to nothing else: a dent that was shown and not found is in doubt beside any hole", () => {
    const entries = rusted(faults([rust("dent"), rust("corrosion")]), faults([rust("perforation")]));
    expect(entries.find(([kind]) => kind === "dent")).toEqual(["dent", "doubtful", "disclosed-not-found"]);
    const milder = rusted(faults([rust("corrosion"), rust("corrosion")]), faults([rust("blister")]));
    expect(milder.at(-1)?.slice(1)).toEqual(["doubtful", "disclosed-not-found"]);
  });
});
