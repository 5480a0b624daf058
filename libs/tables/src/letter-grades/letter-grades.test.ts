import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { expect, test } from "vitest";
import { readCsv } from "../read-csv/index.ts";
import { readTable } from "../read-table/index.ts";
import { letterGradesOf } from "./index.ts";

const answers = (csv: string) =>
  readTable({ form: "csv", grids: [readCsv(csv)], aside: [] }, sheetVersion1).rows.flatMap(({ findings }) =>
    findings.map(({ finding: { item, answer } }) => [item, "value" in answer ? answer.value : answer.kind]),
  );

test("P is poor beside G and F, with a key, a heading, or by its use; what is fair neither works nor fails", () => {
  const rows = "Grille,G,\nConsole,P,\nDash pad,F,\nHorn,P,\nWipers,F,\nClock,G,\n";
  const right = [
    ["brightwork.grille", "good"],
    ["interior.console", "poor"],
    ["interior.dash-top", "fair"],
    ["electrics.horn", "no"],
    ["electrics.clock", "yes"],
  ];
  expect(answers(`Item,G/F/P,Notes\n${rows}`)).toEqual(right);
  expect(answers(`Item,Rating,Notes\n${rows}`)).toEqual(right);
  expect(answers(`G = good  F = fair  P = poor,,\nItem,Rating,Notes\n${rows}`)).toEqual(right);
});

test("P beside F alone is a pass", () => {
  expect(letterGradesOf([readCsv("Item,P/F\nHorn,P\nClock,F\nWipers,P\nRadio,F\n")])).toBeUndefined();
  expect(answers("Item,P/F\nHorn,P\nClock,F\n")).toEqual([
    ["electrics.horn", "yes"],
    ["electrics.clock", "no"],
  ]);
});
