import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { expect, test } from "vitest";
import { readCsv } from "../read-csv/index.ts";
import { readTable } from "./index.ts";

/** What each row comes to: its findings in short, or how it ends. */
const rows = (csv: string): string[] =>
  readTable({ form: "csv", grids: [readCsv(csv)], aside: [] }, sheetVersion1).rows.map(({ end, findings }) =>
    end === "finding"
      ? findings
          .map(({ finding: { item, position = "", answer } }) => {
            const { kind: _kind, ...said } = answer;
            return `${item}@${position} ${Object.values(said)
              .map((one) => JSON.stringify(one))
              .join(" ")}`;
          })
          .join("; ")
      : end,
  );

const row = (written: string, heading = "Item,Result,Remarks"): string =>
  rows(`${heading}\n${written}\nHorn,ok,\n`)[1] ?? "";

test("a row with a figure, a unit and a mark heads nothing", () => {
  const csv = [
    "Item,Position,Reading,Unit,OK?,Comment",
    "Tyre pressure,FL,30,psi,Y,",
    "Brake pad,FR,6,mm,Y,",
    "Battery,at rest,12.4,V,Y,",
    "Compression,cyl 2,158,psi,Y,",
    "Oil pressure,hot idle,20,psi,Y,",
    "Headlamp,RH,,,N,not working",
    "Seat,rear,,,N,torn",
  ].join("\n");
  expect(rows(csv)).toEqual([
    "note",
    'wheels.pressure@left-front "psi" [{"value":30}]',
    'brakes.lining-thickness@right-front "mm" [{"value":6}]',
    'electrics.volts-rest@ "V" [{"value":12.4}]',
    'engine.compression@cylinder-2 "psi" [{"value":158}]',
    'engine.oil-pressure-idle@ "psi" [{"value":20}]',
    'electrics.lamps@right-headlamp "no"',
    'interior.seat-faults@rear [{"kind":"tear"}] []',
  ]);
});

test("a section beside a word for what was seen heads columns, whatever the section", () => {
  for (const section of ["BODYWORK", "Cabin", "UNDERNEATH", "Engine", "Electrical", "Road test"])
    for (const heading of ["Observations", "Findings", "Remarks", "What was seen"])
      expect(rows(`${section},${heading}\nHorn,Works well.\nRadiator,No leaks.\n`)).toEqual([
        "note",
        'electrics.horn@ "yes"',
        'engine.radiator@ "none"',
      ]);
});

test("the hood is the lid over the engine, but where a sheet says bonnet", () => {
  expect(row("Hood,OK,")).toBe('body.faults@hood [] "all"');
  expect(row("Hood,8,", "Item,Score (1-10),Notes")).toBe('body.faults@hood [] "all"');
  expect(rows("Item,Result\nBonnet,dented\nHood,torn\n").slice(1)).toEqual([
    'body.faults@hood [{"kind":"dent"}] []',
    'interior.top@fabric "house" "heavy-wear"',
  ]);
});

test("each figure is of the cylinder whose number stands before it", () => {
  for (const written of [
    "Cyl 1 120, cyl 2 118 psi",
    "#1 120 #2 118 psi",
    "cylinder 1: 120, cylinder 2: 118 psi.",
  ])
    expect(row(`Compression,"${written}",`)).toBe(
      'engine.compression@cylinder-1 "psi" [{"value":120}]; engine.compression@cylinder-2 "psi" [{"value":118}]',
    );
});

test("a unit at the end of a sentence is one, and a length after a fault is how long it is", () => {
  expect(row("Dynamo,Charging at 14.1 volts.,")).toBe('electrics.volts-charging@ "V" [{"value":14.1}]');
  for (const length of ["about 100 mm.", "100 mm", "approx. 100 mm"])
    expect(row(`Offside front wing,"Filler along the edge, ${length}",`)).toBe(
      'body.faults@right-front-fender [{"kind":"filler","extent":{"value":100,"unit":"mm"}}] []',
    );
});

test("what works but slowly works at times, and bubbling rust is blisters", () => {
  for (const words of ["Work but slow.", "Working, slow", "work intermittently", "works but sticks"])
    expect(row(`Wipers,"${words}",`)).toBe('electrics.wipers@ "intermittent"');
  for (const words of ["rust bubbling", "rust bubbles", "bubbling"])
    expect(row(`N/S sill,${words},`)).toBe('body.faults@left-rocker [{"kind":"blister"}] []');
});

test("a row of three words of which the last may answer heads nothing", () => {
  const csv =
    "Section,Check,Finding\nInterior,Console,Good\nElectrics,Battery isolator,Works\nUnderside,Jacking points,Patched\nElectrics,Ammeter,Reads correctly\n";
  expect(rows(csv)).toEqual([
    "note",
    'interior.console@ "words" "good"',
    'electrics.battery-cutoff@ "yes"',
    "refused",
    'electrics.charge-gauge@ "yes"',
  ]);
  expect(rows("Item,Works,Notes\nHorn,yes,\n")).toEqual(["note", 'electrics.horn@ "yes"']);
});

test("of two names for one thing the first row is meant", () => {
  expect(rows("Item,Y/N\nHeadlamps,Y\nHigh beam,Y\n").map((one) => one.slice(0, 9))).toEqual([
    "note",
    "electrics",
    "refused",
  ]);
});

test("a row of two answers below headings is a row, and a value in money is none", () => {
  const csv =
    "INTERIOR,Driver side,Passenger side,Comments\nDoor panel,Good,Good,\nWindow,Works,Slow,\nAppraised value,18500,,\n";
  expect(rows(csv).slice(2)).toEqual([
    'doors.regulators@left-front-window "yes"; doors.regulators@right-front-window "intermittent"',
    "note",
  ]);
});

test("a grade between commas is one where nothing beside it says otherwise", () => {
  expect(row('Rear seat,"retrimmed in vinyl, good",')).toBe('interior.seats@rear "words" "good"');
  expect(row('Carpets,"Replaced recently, good.",')).toContain('"as-new"');
});
