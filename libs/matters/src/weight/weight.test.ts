import { describe, expect, it } from "vitest";
import type { Entry } from "@evenhand/shared/comparison";
import type { Finding } from "@evenhand/shared/finding";
import type { CrossCheck } from "@evenhand/shared/cross-check";
import { admitted, line, unasked, unseen } from "../../testing/lines.ts";
import { certaintyOf, isGap, isOfMatter, isOpenCheck, isUnasked, isUnknown, weightOf } from "./index.ts";

describe("weightOf", () => {
  it("goes by severity, and holds back what is in doubt or unknown", () => {
    const halt = { severity: "halt" } as const;
    expect(weightOf(line("identity.vin", halt))).toBe(0);
    expect(weightOf(line("identity.vin", { ...halt, outcome: "doubtful" }))).toBe(0.25);
    expect(weightOf(line("brakes.hoses"))).toBe(1);
    expect(weightOf(unseen("identity.lien", halt))).toBe(1.5);
    expect(weightOf(unasked("identity.lien", halt))).toBe(2.5);
    expect(weightOf(line("wheels.pressure", { outcome: "doubtful", marks: ["perhaps-unit"] }))).toBe(2.5);
  });

  it("never puts what nobody spoke of behind the trifles", () => {
    expect(weightOf(unasked("body.color", { severity: "worth" }))).toBeLessThan(4);
  });

  it("takes a paper the inspector was not let see for something found, and a carpet not lifted for a gap", () => {
    const kept = { severity: "halt", reason: "not-seen-not-permitted" } as const;
    expect(weightOf(unseen("identity.title-holder", kept))).toBe(0.25);
    expect(weightOf(unseen("interior.silt", kept))).toBe(1.5);
  });
});

describe("isOfMatter", () => {
  it.each([
    ["differs", line("brakes.hoses"), true],
    ["is bad, and admitted", admitted("brakes.hoses"), true],
    ["unseen", unseen("brakes.hoses"), true],
    ["unseen, a repair nobody spoke of", unasked("electrics.clock", { severity: "repair" }), false],
    ["unseen, a repair that was claimed", unseen("electrics.clock", { severity: "repair" }), true],
    [
      "good",
      line("brakes.hoses", { outcome: "agree", severity: null, calls: { a: "good", b: "good" } }),
      false,
    ],
    ["counted in coverage alone", line("brakes.hoses", { outcome: "consistent", coverageOnly: true }), false],
    [
      "falls to figures, nobody having looked",
      line("brakes.hoses", { coverageOnly: true, standing: "contradicted-by-figures" }),
      true,
    ],
    ["of no severity", line("brakes.hoses", { severity: null }), false],
    ["unseen, grave, and nobody spoke of it", unasked("brakes.hoses"), true],
    [
      "bad on both sides, by its mark alone",
      line("electrics.clock", {
        outcome: "agree",
        severity: "repair",
        marks: ["both-bad"],
        calls: { a: null, b: null },
      }),
      true,
    ],
    [
      "agreed, and nothing bad about it",
      line("brakes.hoses", { outcome: "consistent", calls: { a: "good", b: "good" } }),
      false,
    ],
    [
      "cannot be compared, and is a repair",
      line("electrics.clock", { outcome: "incomparable", severity: "repair", calls: { a: null, b: null } }),
      false,
    ],
    [
      "cannot be compared, and grave",
      line("brakes.hoses", { outcome: "incomparable", calls: { a: null, b: null } }),
      true,
    ],
  ])("%s: %#", (_, entry, is) => {
    expect(isOfMatter(entry)).toBe(is);
  });
});

describe("certaintyOf", () => {
  const seen = {
    item: "x.y",
    position: "",
    answer: { kind: "working", value: "no" },
    firmness: "asserted",
    basis: "seen",
  } as const;
  it("takes figures before eyes, eyes before words, and knows what nobody knows", () => {
    expect(certaintyOf(line("brakes.hoses", { marks: ["by-figures"] }), seen)).toBe("measured");
    expect(certaintyOf(line("brakes.hoses"), seen)).toBe("seen");
    expect(certaintyOf(line("brakes.hoses"), { ...seen, basis: "told" })).toBe("told");
    expect(certaintyOf(line("brakes.hoses", { outcome: "doubtful" }), seen)).toBe("doubtful");
    expect(certaintyOf(unseen("brakes.hoses"), undefined)).toBe("unknown");
    expect(certaintyOf(line("brakes.hoses", { outcome: "unstated", marks: ["no-yardstick"] }), seen)).toBe(
      "unknown",
    );
  });
});

describe("what nobody knows", () => {
  it("was not seen, cannot be compared, or was found and nothing judges it", () => {
    const unjudged = line("brakes.hoses", { outcome: "unstated", marks: ["no-yardstick"] });
    expect(
      [unseen("brakes.hoses"), unjudged, line("brakes.hoses", { outcome: "incomparable" })].map(isUnknown),
    ).toEqual([true, true, true]);
    expect([line("brakes.hoses"), line("brakes.hoses", { marks: ["no-yardstick"] })].map(isUnknown)).toEqual([
      false,
      false,
    ]);
    expect(isGap(unseen("identity.lien", { reason: "not-seen-not-permitted" }))).toBe(false);
    expect(isGap(unseen("identity.lien"))).toBe(true);
  });

  it("was spoken of by one side, or by none", () => {
    const asked = [
      { a: null, b: null },
      { a: 0, b: null },
      { a: null, b: 0 },
    ].map((finding) => isUnasked(line("brakes.hoses", { finding })));
    expect(asked).toEqual([true, false, false]);
  });

  it("or is perhaps a slip of the pen weighs less than what was found", () => {
    for (const mark of ["perhaps-unit", "perhaps-other-side"] as const)
      expect(weightOf(line("brakes.hoses", { outcome: "doubtful", marks: [mark] }))).toBe(2.5);
  });
});

describe("a reading", () => {
  const seen: Finding = {
    item: "x.y",
    position: "",
    answer: { kind: "reading", unit: "mm", values: [{ value: 1 }] },
    firmness: "asserted",
    basis: "seen",
  };
  const side = {
    mean: 1,
    count: 1,
    standardUncertainty: 1,
    degreesOfFreedom: 30,
    scatterReplaced: false,
    byEye: false,
  };
  const figures: Entry["figures"] = {
    of: "reading",
    unit: "mm",
    a: side,
    b: side,
    difference: 0,
    standardUncertainty: 1,
    degreesOfFreedom: 60,
    coverageFactor: 2,
    expandedUncertainty: 2,
    delta: 2,
    zetaScore: 0,
    eNumber: 0,
    pValue: 1,
    qValue: null,
    probabilityWorse: 0.5,
  };

  it("is measured by an instrument, seen by eye, and measured where it is past a limit or figures contradict it", () => {
    expect(certaintyOf(line("brakes.hoses", { figures }), seen)).toBe("measured");
    expect(certaintyOf(line("brakes.hoses", { figures, marks: ["by-eye"] }), seen)).toBe("seen");
    expect(certaintyOf(line("brakes.hoses", { marks: ["over-limit"] }), seen)).toBe("measured");
    expect(certaintyOf(line("brakes.hoses", { standing: "contradicted-by-figures" }), undefined)).toBe(
      "measured",
    );
    expect(certaintyOf(line("brakes.hoses"), undefined)).toBe("told");
    expect(certaintyOf(line("brakes.hoses", { outcome: "incomparable" }), seen)).toBe("unknown");
  });
});

it("a check stands beside the lines where it is broken, or undecided where that matters", () => {
  const check: CrossCheck = {
    rule: "odometer",
    verdict: "breaks",
    reason: "tired",
    severity: null,
    figures: {},
    over: "both-reports",
    strength: "contradicts",
    reads: [],
    claim: null,
    bad: [],
    decides: [],
  };
  const undecided = { ...check, verdict: "cannot-tell" } as const;
  expect(isOpenCheck(check)).toBe(true);
  expect(isOpenCheck({ ...undecided, severity: "worth" })).toBe(true);
  expect(isOpenCheck(undecided)).toBe(false);
  expect(isOpenCheck({ ...check, verdict: "holds", severity: "worth" })).toBe(false);
});
