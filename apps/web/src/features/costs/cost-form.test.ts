import type { CostTable } from "@evenhand/shared/cost-table";
import { describe, expect, test } from "vitest";
import { filledFrom, isUnset, tableOf, typedOf, wrongWith, type TypedRow } from "./cost-form";

const costed = [
  { row: "tires", section: "wheels", words: "renew a tire", items: ["tread depth"] },
  { row: "battery", section: "electrics", words: "renew the battery", items: ["battery age"] },
];
const table: CostTable = {
  format: "evenhand-cost-table",
  version: 1,
  name: "Own",
  currency: "USD",
  correlationWithinSection: 0.3,
  rows: [
    {
      row: "paint",
      per: "car",
      words: "a respray",
      low: 250_050,
      likely: 400_000,
      high: 900_000,
      small: { low: 2_000, likely: 6_050, high: 9_000 },
      perExtent: { unit: "mm", low: 1, likely: 2, high: 3 },
      occurs: { differ: 0.9, unseen: 0 },
    },
    { row: "tires", per: "place", words: "a tire", low: 9_000, likely: 14_000, high: 30_000, occurs: {} },
  ],
};
const row = (more: Partial<TypedRow>): TypedRow => {
  const [first] = typedOf(table, costed).rows;
  if (first === undefined) throw new Error("the table has rows");
  return { ...first, ...more };
};

describe("a table of costs in its fields", () => {
  test("has the sheet's rows in their order, unset ones by its words, and others at the end", () => {
    const { rows } = typedOf(table, costed);
    expect(rows.map((each) => [each.row, each.words, each.low])).toEqual([
      ["tires", "a tire", "90"],
      ["battery", "renew the battery", ""],
      ["paint", "a respray", "2500.5"],
    ]);
    expect(typedOf(null, costed).rows.map(({ words }) => words)).toEqual([
      "renew a tire",
      "renew the battery",
    ]);
  });

  test("is saved as it was where nothing is typed, and without the rows that are unset", () => {
    const saved = tableOf(typedOf(table, costed));
    expect(saved).toEqual({ ...table, rows: [table.rows[1], table.rows[0]] });
  });

  test("keeps what is typed", () => {
    const typed = typedOf(table, costed);
    const rows = typed.rows.map((each) =>
      each.row === "battery"
        ? {
            ...each,
            low: "110",
            likely: "1,60",
            high: "260.50",
            chances: { ...each.chances, doubtful: "25" },
          }
        : each,
    );
    expect(tableOf({ ...typed, rows }).rows.find((each) => each.row === "battery")).toEqual({
      row: "battery",
      per: "place",
      words: "renew the battery",
      low: 11_000,
      likely: 16_000,
      high: 26_050,
      occurs: { doubtful: 0.25 },
    });
  });
});

describe("what is wrong with a row", () => {
  test.each<[string, Partial<TypedRow>, string | null]>([
    ["nothing", {}, null],
    ["nothing, where all is empty", { low: "", likely: " ", high: "" }, null],
    ["an amount left out", { likely: "" }, "figures"],
    ["no number", { low: "ninety" }, "figures"],
    ["less than nothing", { low: "-1" }, "figures"],
    ["the likely under the least", { likely: "80" }, "figures"],
    ["the likely over the most", { likely: "301" }, "figures"],
    ["nothing of trifles", { small: { low: "", likely: "", high: " " } }, null],
    ["a trifle's amount left out", { small: { low: "1", likely: "", high: "3" } }, "small"],
    ["a trifle's likely over its most", { small: { low: "1", likely: "4", high: "3" } }, "small"],
    ["a chance over one", { chances: { ...row({}).chances, differ: "101" } }, "chance"],
    ["a chance under none", { chances: { ...row({}).chances, unseen: "-1" } }, "chance"],
    ["no chance", { chances: { ...row({}).chances, unseen: "often" } }, "chance"],
  ])("%s", (_, more, wrong) => {
    expect(wrongWith(row(more), "USD")).toBe(wrong);
  });
});

describe("beginning with a firm's figures", () => {
  const firm: CostTable = {
    ...table,
    name: "The firm's",
    rows: [
      { row: "battery", per: "car", words: "a battery", low: 1, likely: 2, high: 3, occurs: {} },
      ...table.rows,
    ],
  };

  test("fills what is unset and leaves what is typed", () => {
    const typed = typedOf({ ...table, rows: table.rows.map((each) => ({ ...each, low: 100 })) }, costed);
    const { rows, name } = filledFrom(typed, firm);
    expect(rows.map((each) => [each.row, each.low])).toEqual([
      ["tires", "1"],
      ["battery", "0.01"],
      ["paint", "1"],
    ]);
    expect(name).toBe("Own");
  });

  test("takes the currency and name where nothing was set, and nothing where amounts would mix", () => {
    const yen = { ...firm, currency: "JPY" };
    expect(filledFrom(typedOf(null, costed), yen)).toMatchObject({ currency: "JPY", name: "The firm's" });
    const typed = typedOf(table, costed);
    expect(filledFrom(typed, yen)).toBe(typed);
    expect(typed.rows.filter(isUnset)).toHaveLength(1);
  });
});
