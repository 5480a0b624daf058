import { describe, expect, it } from "vitest";
import type { Entry } from "@evenhand/shared/comparison";
import type { CostRow, CostTable } from "@evenhand/shared/cost-table";
import { entry, readingFigures } from "../../testing/small-entries.ts";
import { finding, inspection, sheet } from "../../testing/small-reports.ts";
import { costsOf, expectedLoss } from "./index.ts";

const rowFor = (item: string, more: Partial<CostRow> = {}): CostRow => ({
  row: sheet.items.get(item)?.item.costRow ?? "",
  words: "put right",
  per: "place",
  low: 5_000,
  likely: 10_000,
  high: 30_000,
  occurs: { differ: 0.9, unstated: 0.8, unseen: 0.1, doubtful: 0.5, consistent: 0.2 },
  ...more,
});
const table = (...rows: CostRow[]): CostTable => ({
  format: "evenhand-cost-table",
  version: 1,
  name: "invented",
  currency: "USD",
  correlationWithinSection: 0,
  rows,
});
const rust = finding("trunk.floor", {
  kind: "faults",
  found: [{ kind: "corrosion", extent: { value: 30, unit: "cm" } }],
  denied: [],
});
const report = inspection([rust]);
const loss = (one: Entry, ...rows: CostRow[]) => expectedLoss(one, costsOf(table(...rows)), sheet, report);
const horn = (more: Partial<Entry>) => entry(more);

const found = (b: number | undefined, more: Partial<Entry> = {}) =>
  entry({
    item: "trunk.floor",
    outcome: "unstated",
    atom: { of: "fault", kind: "corrosion", b },
    finding: { a: null, b: 0 },
    ...more,
  });
describe("expectedLoss", () => {
  it.each([
    ["differ", 0.9],
    ["unstated", 0.8],
    ["unseen", 0.1],
    ["doubtful", 0.5],
    ["consistent", 0.2],
  ] as const)("takes the owner's probability for %s", (outcome, probability) => {
    expect(loss(horn({ outcome }), rowFor("electrics.horn"))).toEqual({
      state: "set",
      probability,
      middle: 10_000,
      minor: probability * 10_000,
    });
  });

  it("takes the unseen's probability for what was found and no yardstick judges", () => {
    const row = rowFor("electrics.horn");
    expect(loss(horn({ outcome: "unstated", marks: ["no-yardstick"] }), row)).toMatchObject({
      probability: 0.1,
    });
    expect(loss(horn({ outcome: "unstated" }), row)).toMatchObject({ probability: 0.8 });
  });

  it("takes a trifle's price for a trifle, where the row has one", () => {
    const row = rowFor("electrics.horn", { small: { low: 100, likely: 200, high: 300 } });
    expect(loss(horn({ outcome: "differ", severity: "small" }), row)).toMatchObject({ middle: 200 });
    expect(loss(horn({ outcome: "differ", severity: "repair" }), row)).toMatchObject({ middle: 10_000 });
    const unset = rowFor("electrics.horn");
    expect(loss(horn({ outcome: "differ", severity: "small" }), unset)).toMatchObject({ middle: 10_000 });
  });

  it("takes the interval's for readings without it", () => {
    const reading = entry({
      item: "engine.compression",
      outcome: "doubtful",
      figures: readingFigures(1, { probabilityWorse: 0.7 }),
    });
    expect(loss(reading, rowFor("engine.compression"))).toMatchObject({ probability: 0.7, minor: 7_000 });
  });

  it("takes the chance of worse by more than what matters, where it was worked out", () => {
    const reading = entry({
      item: "engine.compression",
      outcome: "doubtful",
      figures: readingFigures(0, { probabilityWorse: 0.5, chanceOff: 0.01 }),
    });
    expect(loss(reading, rowFor("engine.compression"))).toMatchObject({ probability: 0.01, minor: 100 });
  });

  it("is certain where both say it is bad, whatever was read", () => {
    const both = horn({ outcome: "agree", marks: ["both-bad"] });
    expect(loss(both, rowFor("electrics.horn"))).toMatchObject({ probability: 1, minor: 10_000 });
    const read = entry({
      item: "engine.compression",
      outcome: "agree",
      marks: ["both-bad"],
      figures: readingFigures(1, { probabilityWorse: 0.7, chanceOff: 0.2 }),
    });
    expect(loss(read, rowFor("engine.compression"))).toMatchObject({ probability: 1 });
  });

  it("is unset without a row, a probability, or anything to expect", () => {
    expect(loss(horn({ outcome: "differ" }))).toEqual({ state: "unset" });
    expect(loss(horn({ outcome: "differ" }), rowFor("electrics.horn", { occurs: {} }))).toEqual({
      state: "unset",
    });
    expect(loss(horn({ outcome: "agree" }), rowFor("electrics.horn"))).toEqual({ state: "unset" });
    expect(loss(horn({ outcome: "incomparable" }), rowFor("electrics.horn"))).toEqual({ state: "unset" });
    expect(loss(entry({ item: "identity.vin", outcome: "differ" }), rowFor("electrics.horn"))).toEqual({
      state: "unset",
    });
    expect(expectedLoss(horn({ outcome: "differ" }), costsOf(undefined), sheet, report)).toEqual({
      state: "unset",
    });
  });
});

describe("the extent found", () => {
  const perExtent = { unit: "mm" as const, low: 10, likely: 20, high: 40 };
  const row = rowFor("trunk.floor", { perExtent });

  it("adds to the middle cost, in its own units", () => {
    expect(loss(found(0), row)).toMatchObject({ middle: 10_000 + 20 * 300, minor: 0.8 * 16_000 });
  });

  it("is of the fault the entry names, in the finding it names", () => {
    const faults = finding("trunk.floor", {
      kind: "faults",
      found: [{ kind: "dent" }, { kind: "corrosion", extent: { value: 50, unit: "mm" } }],
      denied: [],
    });
    const other = inspection([finding("electrics.horn", { kind: "working", value: "no" }), faults]);
    const second = found(1, { finding: { a: null, b: 1 } });
    expect(expectedLoss(second, costsOf(table(row)), sheet, other)).toMatchObject({
      middle: 10_000 + 20 * 50,
    });
  });

  it("adds nothing where there is none", () => {
    expect(loss(found(undefined), row)).toMatchObject({ middle: 10_000 });
    expect(loss(found(1), row)).toMatchObject({ middle: 10_000 });
    expect(loss(found(0, { finding: { a: 0, b: null } }), row)).toMatchObject({ middle: 10_000 });
    expect(loss(found(0, { atom: { of: "answer" } }), row)).toMatchObject({ middle: 10_000 });
    expect(loss(found(0), rowFor("trunk.floor", { perExtent: { ...perExtent, unit: "psi" } }))).toMatchObject(
      { middle: 10_000 },
    );
  });

  it("adds nothing where the finding lists no faults", () => {
    const without = inspection([finding("electrics.horn", { kind: "working", value: "no" })]);
    expect(expectedLoss(found(0), costsOf(table(row)), sheet, without)).toMatchObject({ middle: 10_000 });
    expect(expectedLoss(found(0), costsOf(table(row)), sheet, inspection([]))).toMatchObject({
      middle: 10_000,
    });
  });

  it("never gives a fault's extents the probability of a reading", () => {
    const both = found(0, { outcome: "differ", figures: readingFigures(1, { probabilityWorse: 0.1 }) });
    expect(loss(both, row)).toMatchObject({ probability: 0.9 });
  });
});
