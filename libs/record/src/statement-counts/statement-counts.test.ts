import { describe, expect, it } from "vitest";
import type { Comparison, Entry } from "@evenhand/shared/comparison";
import type { Direction, Standing } from "@evenhand/shared/outcome";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { statementCounts } from "./index.ts";

const sheet = compileSheet(sheetVersion1);
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
const row = (of: string, onSheet: number, stated: number) => ({
  of,
  onSheet,
  stated,
  seen: 0,
  statedAndSeen: 0,
  seenSoundNotStated: 0,
});
const coverage: Comparison["coverage"] = {
  bySection: [row("electrics", 40, 31), row("trunk", 9, 0)],
  bySeverity: [],
  whole: row("whole", 49, 31),
};
const counts = (entries: Entry[]) => statementCounts({ entries, coverage }, sheet);
const line = "electrics.horn||answer";
const NONE = { confirmed: 0, notContradicted: 0, falls: [], statedWorse: 0 };

describe("statementCounts", () => {
  it("credits a fault made out worse than found, in no other count, and never what is in doubt", () => {
    const bad = { calls: { a: "repair", b: "good" } } as const;
    const { electrics } = counts([
      entry("differs", "found-better", { ...bad, outcome: "differ" }),
      // Better than stated, and no fault was stated; stated worse, and perhaps not by what matters.
      entry("differs", "found-better", { outcome: "differ", calls: { a: "good", b: "good" } }),
      entry("in-doubt", "found-better", { ...bad, outcome: "doubtful" }),
    ]);
    expect(electrics).toEqual({ places: 40, stated: 31, ...NONE, statedWorse: 1 });
  });

  it("counts what was confirmed, not contradicted, or found worse, and says what figures uphold", () => {
    const { electrics } = counts([
      entry("confirmed"),
      entry("agreed-fault"),
      entry("not-contradicted"),
      entry("differs", "stated-better"),
      entry("differs"),
      entry("contradicted-by-figures"),
      entry("differs", "stated-better", { marks: ["looked-twice"] }),
    ]);
    expect(electrics).toEqual({
      places: 40,
      stated: 31,
      confirmed: 2,
      notContradicted: 1,
      statedWorse: 0,
      falls: [
        { line, by: null },
        { line, by: null },
        { line, by: "figures" },
        { line, by: "second-look" },
      ],
    });
  });

  it("passes over what says nothing of whether it held up", () => {
    const silent = (["in-doubt", "too-coarse", "unseen", "not-mentioned", "not-comparable"] as const).map(
      (standing) => entry(standing),
    );
    expect(
      counts([
        ...silent,
        entry("differs", "found-better"),
        entry("confirmed", "neither", { coverageOnly: true }),
      ])["electrics"],
    ).toEqual({ places: 40, stated: 31, ...NONE });
  });

  it("counts by section, those of which nothing was stated too, and knows no item the sheet does not hold", () => {
    const all = counts([
      entry("confirmed", "neither", { item: "trunk.jack" }),
      entry("confirmed", "neither", { item: "trunk.cannon" }),
    ]);
    expect(all).toEqual({
      electrics: { places: 40, stated: 31, ...NONE },
      trunk: { places: 9, stated: 0, ...NONE, confirmed: 1 },
    });
  });
});
