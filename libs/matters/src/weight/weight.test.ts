import { describe, expect, it } from "vitest";
import { admitted, line, unasked, unseen } from "../../testing/lines.ts";
import { certaintyOf, isOfMatter, weightOf } from "./index.ts";

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
