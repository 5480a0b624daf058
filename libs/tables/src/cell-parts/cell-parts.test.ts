import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { expect, test } from "vitest";
import { readCsv } from "../read-csv/index.ts";
import { readTable } from "../read-table/index.ts";
import { placedValue } from "./placed-value.ts";

const rowsOf = (csv: string) =>
  readTable({ form: "csv", grids: [readCsv(csv)], aside: [] }, sheetVersion1).rows.slice(1);
const said = (row: string): string[] =>
  rowsOf(`Item,Found\n${row}\nHorn,ok\n`)
    .slice(0, 1)
    .flatMap(({ findings }) =>
      findings.map(({ finding }) => {
        const { answer } = finding;
        const what =
          answer.kind === "reading"
            ? `${answer.values.map(({ value }) => value).join(" ")} ${answer.unit}`
            : JSON.stringify(answer);
        return `${finding.item}@${finding.position ?? ""} ${what}`;
      }),
    );

test("each place of a cell has its own figure, also where the unit stands but once", () => {
  const right = ["brakes.lining-thickness@left-front 8 mm", "brakes.lining-thickness@right-front 7 mm"];
  expect(said('Front pads,"L 8, R 7 mm"')).toEqual(right);
  expect(said("Front pads,8 mm n/s - 7 mm o/s")).toEqual(right);
});

test("two figures for two places, and nothing that says which is which, are no finding", () => {
  expect(said('Front discs,"11.8 / 11.9 mm, lipped"')).toEqual([]);
});

test("a tire's cell holds its size, tread and date", () => {
  expect(said('Tire LF,"185/70R13, 5 mm, date 1820"')).toEqual([
    'wheels.tire-size@left-front {"kind":"code","text":"185/70R13"}',
    "wheels.tread-depth@left-front 5 mm",
    'wheels.tire-identification@left-front {"kind":"code","text":"1820"}',
  ]);
});

test("figures of one gauge are of idle and of speed, and what is no fact of its own stays with the first", () => {
  expect(said('Oil pressure,"20 psi idle, 50 at 3000"')).toEqual([
    "engine.oil-pressure-idle@ 20 psi",
    "engine.oil-pressure-2000@ 50 psi",
  ]);
  expect(said('Left front fender,"dent 30 mm, stone chips"')).toEqual([
    'body.faults@left-front-fender {"kind":"faults","found":[{"kind":"dent","extent":{"value":30,"unit":"mm"}},{"kind":"chip"}],"denied":[]}',
  ]);
});

test("an exception is said of its place, and the rest of the others", () => {
  expect(said("Indicators,all ok except RR")).toEqual([
    'electrics.lamps@left-front-turn {"kind":"working","value":"yes"}',
    'electrics.lamps@right-front-turn {"kind":"working","value":"yes"}',
    'electrics.lamps@left-rear-turn {"kind":"working","value":"yes"}',
    'electrics.lamps@right-rear-turn {"kind":"working","value":"no"}',
  ]);
  expect(said("Brake hoses,all sound except one")).toEqual([]);
});

test("a side against the name's is left to be settled", () => {
  expect(said("R dampers,n/s wet")).toEqual([]);
});

test("what a part of a cell says is kept where another is not understood, but not of the same thing", () => {
  expect(said("Spare tire,zzz quux; 7 mm")).toHaveLength(1);
  expect(said('Frame rails,"solid, surface rust only"')).toEqual([]);
});

test("a place is told from a figure", () => {
  expect(placedValue("rears leaking")).toMatchObject({ rest: "leaking" });
  expect(placedValue("L 8 mm")?.rest).toBe("8 mm");
  expect(placedValue("slightly worn")).toBeUndefined();
});
