import type { Entry, ReadingFigures } from "@evenhand/shared/comparison";
import { CostTable } from "@evenhand/shared/cost-table";
import { Report } from "@evenhand/shared/report";
import { Item } from "@evenhand/shared/sheet";
import type { Sheet } from "@evenhand/shared/sheet";
import { expect, test } from "vitest";
import { costsAtStake } from "./index.ts";

const item = (id: string, costRow: string | null): Item =>
  Item.parse({
    id,
    section: id.split(".")[0],
    words: { american: id },
    how: "Look.",
    answer: "faults",
    consequence: "structure",
    severity: "worth",
    strict: true,
    time: "steady",
    core: true,
    stage: "lift",
    depth: "first-look",
    minutes: 1,
    needs: [],
    costRow,
    faults: { kinds: ["corrosion"] },
  });

const sheet: Sheet = {
  id: "small",
  version: 1,
  title: "Small",
  positionSets: [],
  drawings: [],
  cautions: [],
  stations: [],
  places: [],
  conditions: [],
  costRows: [],
  faultKinds: [],
  sections: [{ id: "floor", number: 1, words: { american: "floor", synonyms: [] } }],
  items: [
    item("floor.pans", "floor"),
    item("engine.noise", "engine"),
    item("engine.smoke", "engine"),
    item("papers.title", null),
  ],
};

const found = Report.parse({
  format: "evenhand-report",
  version: 1,
  kind: "inspection",
  sheet: { id: "small", version: 1 },
  vehicle: {
    make: "Uthwick",
    model: "Larksong",
    modelYear: 1979,
    identification: "U79L1",
    form: {
      body: "pickup",
      doors: 2,
      cylinders: 6,
      construction: "body-on-frame",
      gearbox: "manual",
      driven: "rear",
      fuelSystem: "carburetor",
      systemVolts: 12,
      brakes: { front: "drum", rear: "drum" },
    },
  },
  author: { organization: "Kestrelmere Motor Surveys", role: "inspector" },
  visit: { started: "2026-05-12T14:00:00Z", zone: "America/Chicago" },
  findings: [
    {
      item: "floor.pans",
      position: "left",
      answer: { kind: "faults", found: [{ kind: "corrosion", extent: { value: 10, unit: "cm" } }] },
    },
  ],
});

const entry = (over: Partial<Entry>): Entry => ({
  item: "floor.pans",
  position: "left",
  atom: { of: "answer" },
  outcome: "differ",
  calls: { a: null, b: null },
  severity: null,
  marks: [],
  reason: "values-differ",
  direction: "stated-better",
  standing: "differs",
  firmness: { a: null, b: null },
  finding: { a: null, b: null },
  ...over,
});

const table = CostTable.parse({
  format: "evenhand-cost-table",
  version: 1,
  name: "Invented",
  currency: "USD",
  correlationWithinSection: 0.4,
  rows: [
    {
      row: "floor",
      words: "floor pan",
      low: 1000,
      likely: 2000,
      high: 5000,
      occurs: { differ: 0.9, unstated: 0.8 },
      perExtent: { unit: "mm", low: 1, likely: 2, high: 3 },
    },
    {
      row: "engine",
      per: "car",
      words: "engine",
      low: 100,
      likely: 200,
      high: 300,
      occurs: { differ: 0.4, unseen: 0.2 },
    },
  ],
});

const atStake = (...entries: Entry[]): ReturnType<typeof costsAtStake> =>
  costsAtStake({ comparison: { entries }, found, sheet, table });

test("a fault found costs by its extent, in the table's own unit", () => {
  const fault = entry({
    outcome: "unstated",
    atom: { of: "fault", kind: "corrosion", b: 0 },
    finding: { a: null, b: 0 },
  });
  expect(atStake(fault).costs).toEqual([
    { row: "floor", entries: [0], group: "floor", probability: 0.8, low: 1100, likely: 2200, high: 5300 },
  ]);
});

test("what is only a trifle costs what its row says of trifles, beside anything graver the whole work", () => {
  const small = { low: 10, likely: 40, high: 90 };
  const rows = table.rows.map((row) => (row.row === "floor" ? { ...row, small } : row));
  const priced = (...severities: Entry["severity"][]) =>
    costsAtStake({
      comparison: { entries: severities.map((severity) => entry({ severity })) },
      found,
      sheet,
      table: { ...table, rows },
    }).costs;
  expect(priced("small")).toMatchObject([small]);
  expect(priced("small", "small")).toMatchObject([small]);
  expect(priced("small", "repair")).toMatchObject([{ low: 1000, likely: 2000, high: 5000, entries: [1] }]);
  expect(priced("repair")).toMatchObject([{ likely: 2000 }]);
  expect(atStake(entry({ severity: "small" })).costs).toMatchObject([{ likely: 2000 }]);
});

test("a trifle that is certain makes no certain work of what is only possible", () => {
  const small = { low: 10, likely: 40, high: 90 };
  const rows = table.rows.map((row) => (row.row === "engine" ? { ...row, small } : row));
  const ticks = entry({
    item: "engine.noise",
    outcome: "agree",
    standing: "agreed-fault",
    severity: "small",
  });
  const claim = entry({ item: "engine.smoke", outcome: "unseen", standing: "unseen", severity: "worth" });
  const priced = (...entries: Entry[]) =>
    costsAtStake({ comparison: { entries }, found, sheet, table: { ...table, rows } }).costs;
  // 1 × 43 for the tick, 0.2 × 200 for the engine: the tick is dearer, and nobody is charged for an engine.
  expect(priced(ticks, claim)).toMatchObject([{ ...small, probability: 1, entries: [0] }]);
  const dear = rows.map((row) => (row.row === "engine" ? { ...row, high: 900 } : row));
  const { costs } = costsAtStake({
    comparison: { entries: [ticks, claim] },
    found,
    sheet,
    table: { ...table, rows: dear },
  });
  expect(costs).toMatchObject([{ likely: 200, probability: 0.2, entries: [1] }]);
});

test("what was found and no yardstick judges is as likely to cost as what nobody saw", () => {
  const rows = table.rows.map((row) =>
    row.row === "floor" ? { ...row, occurs: { unstated: 0.8, unseen: 0.1 } } : row,
  );
  const priced = (marks: Entry["marks"]) =>
    costsAtStake({
      comparison: { entries: [entry({ outcome: "unstated", marks })] },
      found,
      sheet,
      table: { ...table, rows },
    }).costs;
  expect(priced(["no-yardstick"])).toMatchObject([{ probability: 0.1 }]);
  expect(priced([])).toMatchObject([{ probability: 0.8 }]);
});

test("of several faults at one place the longest is what the work costs by", () => {
  const long = { outcome: "unstated", atom: { of: "fault", kind: "corrosion", b: 0 } } as const;
  const { costs } = atStake(
    entry({ ...long, finding: { a: null, b: 0 } }),
    entry({ ...long, finding: { a: null, b: null } }),
  );
  expect(costs).toMatchObject([{ entries: [0, 1], low: 1100, likely: 2200, high: 5300 }]);
});

test("a row of the whole car is asked for once, with the strongest probability", () => {
  const { costs } = atStake(
    entry({ item: "engine.noise", position: "" }),
    entry({ item: "engine.smoke", position: "", outcome: "unseen", standing: "unseen" }),
  );
  expect(costs).toHaveLength(1);
  expect(costs[0]).toMatchObject({ row: "engine", probability: 0.4, entries: [0, 1] });
  const ends = atStake(
    entry({ item: "engine.noise", position: "front" }),
    entry({ item: "engine.smoke", position: "rear" }),
  );
  expect(ends).toMatchObject({ costs: [{ row: "engine", entries: [0, 1] }], unset: [] });
});

test("a row of places is asked for at each place", () => {
  const { costs } = atStake(
    entry({ position: "left" }),
    entry({ position: "left" }),
    entry({ position: "right" }),
  );
  expect(costs.map(({ entries }) => entries)).toEqual([[0, 1], [2]]);
});

test("a reading brings its own probability, and a fault both name is certain", () => {
  const side = {
    mean: 5,
    count: 3,
    standardUncertainty: 0.3,
    degreesOfFreedom: 30,
    scatterReplaced: false,
    byEye: false,
  };
  const figures: ReadingFigures = {
    of: "reading",
    unit: "1/32in",
    a: { ...side, mean: 8 },
    b: side,
    difference: 3,
    standardUncertainty: 0.42,
    degreesOfFreedom: 60,
    coverageFactor: 2,
    expandedUncertainty: 0.85,
    delta: 2,
    zetaScore: 7,
    eNumber: 3.5,
    pValue: 1e-9,
    qValue: null,
    probabilityWorse: 0.97,
  };
  expect(atStake(entry({ figures })).costs[0]?.probability).toBe(0.97);
  expect(atStake(entry({ figures, outcome: "doubtful" })).costs[0]?.probability).toBe(0.97);
  // Worse by more than what matters, and not by anything.
  const open = { ...figures, chanceOff: 0.04 };
  expect(atStake(entry({ figures: open })).costs[0]?.probability).toBe(0.04);
  expect(atStake(entry({ figures: open, outcome: "doubtful" })).costs[0]?.probability).toBe(0.04);
  expect(atStake(entry({ figures: open, standing: "agreed-fault" })).costs[0]?.probability).toBe(1);
  // What nobody disputes is priced as its owner says, figures or not.
  expect(atStake(entry({ figures, outcome: "unstated" })).costs[0]?.probability).toBe(0.8);
  expect(atStake(entry({ outcome: "agree", standing: "agreed-fault" })).costs[0]?.probability).toBe(1);
});

test("what is confirmed, found better, only in coverage or never put right costs nothing", () => {
  const quiet = atStake(
    entry({ outcome: "agree", standing: "confirmed" }),
    entry({ direction: "found-better" }),
    entry({ coverageOnly: true }),
    entry({ item: "papers.title" }),
  );
  expect(quiet).toMatchObject({ costs: [], unset: [], currency: "USD", correlation: 0.4 });
});

test("an extent adds nothing where the row has no price of it, or the line is no fault", () => {
  const fault = { atom: { of: "fault", kind: "corrosion", b: 0 }, finding: { a: null, b: 0 } } as const;
  expect(atStake(entry({ ...fault, item: "engine.noise" })).costs[0]).toMatchObject({ low: 100, high: 300 });
  expect(atStake(entry({ finding: { a: null, b: 0 } })).costs[0]).toMatchObject({ low: 1000, high: 5000 });
  const elsewhere = { ...fault, finding: { a: null, b: null } };
  expect(atStake(entry(elsewhere)).costs[0]).toMatchObject({ low: 1000, high: 5000 });
});

test("no row and no probability are said, never guessed", () => {
  const unseen = entry({ outcome: "unseen", standing: "unseen" });
  expect(atStake(unseen).costs).toEqual([]);
  expect(atStake(unseen).unset).toEqual([{ row: "floor", because: "no-probability", entries: [0] }]);
  const bare = costsAtStake({
    comparison: { entries: [unseen] },
    found,
    sheet,
    table: { ...table, rows: [] },
  });
  expect(bare.unset).toEqual([{ row: "floor", because: "no-row", entries: [0] }]);
});
