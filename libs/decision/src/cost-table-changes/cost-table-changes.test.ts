import type { CostRow, CostTable } from "@evenhand/shared/cost-table";
import { describe, expect, it } from "vitest";
import { costTableChanges } from "./index.ts";

const row = (name: string, likely: number, more: Partial<CostRow> = {}): CostRow => ({
  row: name,
  per: "place",
  words: `a ${name}`,
  low: 100,
  likely,
  high: 900,
  occurs: {},
  ...more,
});
const table = (...rows: CostRow[]): CostTable => ({
  format: "evenhand-cost-table",
  version: 1,
  name: "Own",
  currency: "USD",
  correlationWithinSection: 0,
  rows,
});
const said = (before: CostTable | null, after: CostTable) =>
  costTableChanges(before, after).map((each) => [
    each.row,
    each.before?.likely ?? null,
    each.after?.likely ?? null,
  ]);

const by = (unit: "mm" | "in", high: number) =>
  table(row("tire", 200, { perExtent: { unit, low: 1, likely: 2, high } }));

describe("what has changed in a table of costs", () => {
  it("is every row of the first one", () => {
    expect(said(null, table(row("tire", 200), row("battery", 150)))).toEqual([
      ["tire", null, 200],
      ["battery", null, 150],
    ]);
  });

  it("is what was put in, changed and taken out, the last at the end", () => {
    const before = table(row("belt", 120), row("tire", 200), row("battery", 150));
    const after = table(row("hose", 130), row("tire", 250), row("battery", 150));
    expect(said(before, after)).toEqual([
      ["hose", null, 130],
      ["tire", 200, 250],
      ["belt", 120, null],
    ]);
  });

  it("is nothing where only order, name or the order of the chances is another", () => {
    const before = table(row("tire", 200, { occurs: { differ: 0.9, unseen: 0.2 } }), row("battery", 150));
    const after = table(row("battery", 150), row("tire", 200, { occurs: { unseen: 0.2, differ: 0.9 } }));
    expect(said(before, { ...after, name: "Other" })).toEqual([]);
  });

  it.each<[string, Partial<CostRow>]>([
    ["how it falls due", { per: "car" }],
    ["its words", { words: "one tire" }],
    ["its least", { low: 101 }],
    ["its most", { high: 901 }],
    ["a chance", { occurs: { differ: 0.5 } }],
    ["what a trifle costs", { small: { low: 1, likely: 2, high: 3 } }],
    ["what it costs by extent", { perExtent: { unit: "mm", low: 1, likely: 2, high: 3 } }],
  ])("is a row of which %s is another", (_, more) => {
    expect(said(table(row("tire", 200)), table(row("tire", 200, more)))).toHaveLength(1);
  });

  it("tells two units and two amounts of an extent apart", () => {
    expect(said(by("mm", 3), by("in", 3))).toHaveLength(1);
    expect(said(by("mm", 3), by("mm", 4))).toHaveLength(1);
    expect(said(by("mm", 3), by("mm", 3))).toEqual([]);
  });
});
