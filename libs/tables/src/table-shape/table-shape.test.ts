import { expect, test } from "vitest";
import { readCsv } from "../read-csv/index.ts";
import { tablesOf } from "./index.ts";

const none = (): boolean => false;
const rolesOf = (csv: string): (readonly [number, number, readonly string[]])[] =>
  tablesOf(readCsv(csv), none).map(({ headings, rows, groups }) => [
    headings.length,
    rows.length,
    groups.map((columns) => columns.map(({ role }) => role).join(" ")),
  ]);

test.each([
  ["Item,Pass,Fail,N/A,Comments\nHorn,x,,,\n", [[1, 1, ["label tick tick tick note"]]]],
  [
    "A title,,\n,,\nCheck,LF,RF\nTread,7,6\n",
    [
      [0, 1, ["label"]],
      [1, 1, ["label at at"]],
    ],
  ],
  [
    "Brakes,OK?,Note,Electrics,OK?,Note\nPads,Y,,Horn,Y,\n",
    [[1, 1, ["label value note", "label value note"]]],
  ],
  ["Front,,Rear,\nLeft,Right,Left,Right\n7,7,6,6\n", [[2, 1, ["at at at at"]]]],
  ["Horn,ok\nRadio,dead\n", [[0, 2, ["label value"]]]],
  // A column headed "No" beside one headed "Yes" is one of ticks, and no running numbers.
  ["Item,Yes,No,Remarks\nHorn,x,,\nRadio,,x,\n", [[1, 2, ["label tick tick note"]]]],
  ["Area,What I found\nHorn,dead\n", [[1, 1, ["label value"]]]],
])("%j is taken apart", (csv, shape) => {
  const own = rolesOf(csv).map(([headings, rows, groups]) => [
    headings,
    rows,
    groups.map((group) => group.replaceAll(/( unknown)+$/g, "")),
  ]);
  expect(own).toEqual(shape);
});

test("a row of answers is no heading", () => {
  expect(
    rolesOf("Check,LF,RF\nBrake hoses,ok,cracked\nShocks,dry,leaking\n").map(([headings, rows]) => [
      headings,
      rows,
    ]),
  ).toEqual([[1, 2]]);
});
