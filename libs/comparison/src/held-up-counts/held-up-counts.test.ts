import { describe, expect, it } from "vitest";
import type { Entry } from "@evenhand/shared/comparison";
import type { Direction, Standing } from "@evenhand/shared/outcome";
import { sheet } from "../../testing/small-reports.ts";
import { heldUpCounts } from "./index.ts";

const entry = (standing: Standing, direction: Direction = "neither", more: Partial<Entry> = {}): Entry => ({
  item: "electrics.horn",
  position: "",
  atom: { of: "answer" },
  outcome: "agree",
  calls: { a: null, b: null },
  severity: null,
  marks: [],
  reason: "same-answer",
  direction,
  standing,
  firmness: { a: "asserted", b: "asserted" },
  finding: { a: 0, b: 0 },
  ...more,
});
const counts = (entries: Entry[], settled: number[] = []) =>
  heldUpCounts(entries, sheet, new Set(settled)).get("electrics");

describe("heldUpCounts", () => {
  it("counts what was confirmed, not contradicted, or fell", () => {
    expect(
      counts([
        entry("confirmed"),
        entry("agreed-fault"),
        entry("not-contradicted"),
        entry("differs", "stated-better"),
        entry("differs"),
        entry("contradicted-by-figures"),
      ]),
    ).toEqual({ confirmed: 2, notContradicted: 1, fell: 3, leftOut: 0 });
  });

  it("passes over what says nothing of whether it held up", () => {
    const silent = (["in-doubt", "too-coarse", "unseen", "not-mentioned", "not-comparable"] as const).map(
      (standing) => entry(standing),
    );
    expect(counts(silent)).toBeUndefined();
    expect(
      counts([entry("differs", "found-better"), entry("confirmed", "neither", { coverageOnly: true })]),
    ).toBeUndefined();
  });

  it("leaves out what money settled, and says how much", () => {
    expect(counts([entry("differs", "stated-better"), entry("confirmed")], [0])).toEqual({
      confirmed: 1,
      notContradicted: 0,
      fell: 0,
      leftOut: 1,
    });
  });

  it("counts by section, and knows no item the sheet does not hold", () => {
    const sections = heldUpCounts(
      [
        entry("confirmed"),
        entry("confirmed", "neither", { item: "trunk.jack" }),
        entry("confirmed", "neither", { item: "trunk.cannon" }),
      ],
      sheet,
      new Set(),
    );
    expect(Array.from(sections.keys())).toEqual(["electrics", "trunk"]);
  });
});
