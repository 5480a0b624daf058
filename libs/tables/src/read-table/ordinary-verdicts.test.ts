import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { expect, test } from "vitest";
import { readCsv } from "../read-csv/index.ts";
import { readTable } from "./index.ts";
import type { RowOutcome } from "./index.ts";

const plainRow = (heading: string): string => (heading.includes("Unit") ? "Fuel tank,,sound,," : "Horn,ok,");

/** What the first row below the heading comes to, before a row that is plain. */
const outcome = (written: string, heading = "Item,Result,Note"): RowOutcome | undefined =>
  readTable(
    { form: "csv", grids: [readCsv(`${heading}\n${written}\n${plainRow(heading)}\n`)], aside: [] },
    sheetVersion1,
  ).rows[1];

/** Its findings in short, or how it ends. */
const row = (written: string, heading?: string): string => {
  const { end, findings = [] } = outcome(written, heading) ?? {};
  if (end !== "finding") return end ?? "";
  return findings
    .map(({ finding: { item, position = "", answer } }) => {
      const { kind: _kind, ...said } = answer;
      return `${item}${position === "" ? "" : `@${position}`} ${JSON.stringify(said)}`;
    })
    .join("; ");
};

test("a column that asks whether a figure passes is no side of the car, and says nothing beside the figure", () => {
  for (const heading of [
    "Pass?",
    "Pass ?",
    "PASS?",
    "Passed?",
    "Passes?",
    "Pass (Y/N)",
    "Pass? (Y/N)",
    "Pass / fail?",
    "Did it pass?",
  ]) {
    const columns = `Reading,Unit,Value,Limit,${heading}`;
    expect(row('"Paint, hood",um,115,200,Y', columns)).toBe(
      'body.paint-thickness@hood {"unit":"um","values":[{"value":115}]}',
    );
    expect(row("Tread LF,1/32,6,3,Y", columns)).toBe(
      'wheels.tread-depth@left-front {"unit":"1/32in","values":[{"value":6}]}',
    );
    expect(row("Idle speed,rpm,950,700-800,N", columns)).toBe(
      'road.idle {"unit":"rpm","values":[{"value":950}]}',
    );
    expect(row("Radio,,,,N", columns)).toBe('electrics.radio {"value":"no"}');
  }
});

test("beside a tick a figure with its unit in a column is what is said", () => {
  for (const heading of ["Pass", "Passed", "OK", "Good", "Acceptable", "Normal", "Satisfactory", "Fine"]) {
    const columns = `Reading,Unit,Value,${heading}`;
    expect(row('"Paint, roof",um,112,✓', columns)).toBe(
      'body.paint-thickness@roof {"unit":"um","values":[{"value":112}]}',
    );
    expect(row("Idle speed,rpm,750,✓", columns)).toBe('road.idle {"unit":"rpm","values":[{"value":750}]}');
  }
});

test("wipers whose blades are bad may wipe", () => {
  for (const written of [
    "Wipers,Attention,streaking",
    "Wipers,Fail,smearing",
    "Wipers,Attention,leave streaks",
    "Wipers,bad,blades split",
    "Wipers,Fail,new blades needed",
    "Wipers,Advisory,smears",
    "Wipers,Attention,worn rubbers",
    "Wipers,Fail,left blade perished",
    "Wipers,Attention,chattering",
  ])
    expect(row(written)).toBe("refused");
  expect(row("Wipers,OK,streaking")).toBe('electrics.wipers {"value":"yes"}');
  expect(row("Wipers,Fail,dead")).toBe('electrics.wipers {"value":"no"}');
  expect(row("Wipers,Attention,slow and streaky")).toBe('electrics.wipers {"value":"intermittent"}');
});

test("what asks for attention is not said to be dead by a remark that does not say so", () => {
  for (const written of [
    "Starter,Attention,noisy",
    "Heater,Attention,smells",
    "Parking brake,Attention,high travel",
    "Washers,Advisory,bottle low",
    "Headlights,Needs attention,one aimed low",
    "Blower,Amber,squeaks",
    "Clock,Advise,loses time",
    "Speedometer,Marginal,cable hums",
  ])
    expect(row(written)).toBe("refused");
  expect(row("Starter,Attention,does not work")).toBe('electrics.starter {"value":"no"}');
  expect(row("Starter,Fail,noisy")).toBe('electrics.starter {"value":"no"}');
  expect(row("Starter,Attention,")).toBe('electrics.starter {"value":"no"}');
});

test("a dial with a cracked glass may read", () => {
  for (const written of [
    "Clock,Attention,glass cracked",
    "Clock,Fail,face cracked",
    "Speedometer,Attention,lens cracked",
    "Fuel gauge,Attention,bezel broken",
    "Tachometer,bad,glass broken",
    "Temperature gauge,Attention,cracked glass",
    "Radio,Attention,knob missing",
    "Speedometer,Attention,trim ring bent",
  ])
    expect(row(written)).toBe("refused");
});

test("a mark beside a fault is as sure as the fault makes it", () => {
  const one = outcome("Speedometer,Fail,cable cracked")?.findings[0];
  expect(one?.finding.answer).toEqual({ kind: "working", value: "no" });
  expect(one?.sure).toBe(false);
  expect(outcome("Speedometer,Fail,dead")?.findings[0]?.sure).toBe(true);
});

test("a bare word for side windows is said neither of the glass nor of how they wind", () => {
  for (const written of [
    "Side windows,OK,",
    "Side windows,good,",
    "Side window,ok,",
    "Left side windows,fine,",
    "Side windows,pass,no remarks",
    "Side windows,✓,",
    "Side windows,satisfactory,",
    "Left front side window,OK,",
  ])
    expect(row(written)).toBe("refused");
  expect(row("Side windows,clear,")).toContain("brightwork.glass-faults@left-front-window");
  expect(row("Side window glass,OK,")).toContain("brightwork.glass-faults@left-front-window");
});

test("what eats a door from its bottom edge is asked of door bottoms, and a dent there of the door", () => {
  for (const [written, kind] of [
    ["Door LF,bubbling along bottom edge,", "blister"],
    ["Left front door,Attention,bottom edge blistered", "blister"],
    ["Left front door,Fail,rusted along the bottom", "corrosion"],
    ["Left front door,lower edge rusty,", "corrosion"],
    ["Left front door,rust at lower seam,", "corrosion"],
    ["Left front door,rust bubbles at the base,", "blister"],
    ["Left front door,perforated along lower lip,", "perforation"],
    ["Left front door,bottom patched,", "patch"],
  ] as const)
    expect(row(written)).toBe(`doors.bottoms@left-front-door {"found":[{"kind":"${kind}"}],"denied":[]}`);
  expect(row("LR door,dent near bottom,")).toContain("body.faults@left-rear-door");
  expect(row("LR door,ding + rust bubbles at btm,")).toContain('{"kind":"ding"},{"kind":"blister"}');
  expect(row("Left fender,rusty along bottom edge,")).toContain("body.faults@left-front-fender");
});

test("an inner fender beside its other name is the wheelhouse", () => {
  for (const name of [
    "Inner fender / wheelhouse",
    "Inner fender/wheelhouse",
    "Inner fender (wheelhouse)",
    "Wheelhouse / inner fender",
    "Inner fender and wheelhouse",
    "Inner fender wheel well",
    "Fender well",
    "Inner fender - wheelhouse",
  ])
    expect(row(`${name},surface rust,solid`, "Item,LF,RR")).toBe(
      'underbody.outer-wheelhouses@left-front {"found":[{"kind":"corrosion"}],"denied":[]}; underbody.outer-wheelhouses@right-rear {"found":[],"denied":"all"}',
    );
});

test("a name with its place behind a comma is one name, and a remark of two facts beside a grade is both", () => {
  const both =
    'wheels.tread-depth@right-rear {"unit":"mm","values":[{"value":2}]}; wheels.tire-faults@right-rear {"found":[{"kind":"crack"}],"denied":[]}';
  for (const written of [
    '"Tyre, RR",Poor,"2 mm, cracked"',
    '"Tyre, right rear",Fail,"2 mm, cracked"',
    '"Tire, RR",Attention,"2 mm, cracked"',
    "Tyre / RR,Poor,2 mm; cracked",
    "Tyre (RR),Poor,2 mm; cracked",
    '"Tyre, rear right",bad,"2 mm, dry rot"',
    '"Tyre, o/s rear",Poor,"2 mm, cracked"',
    'RR tyre,Poor,"2 mm, sidewall cracked"',
  ])
    expect(row(written)).toBe(both);
  expect(row('Front pads,Poor,"2 mm, hose cracked"')).not.toContain("engine.hoses");
});

test("dry rot of a tire is cracks", () => {
  for (const said of [
    "dry rot",
    "dry rotted",
    "weather checked",
    "dryrot",
    "some dry rot",
    "sidewall checking",
    "weather checking",
    "starting to dry rot",
  ])
    expect(row(`RR tire,${said},`)).toContain('"kind":"crack"');
});

test("what a sheet marks as bad is where its remark says, though it be no fault to us", () => {
  for (const [said, places] of [
    ["front misting", ["left-front", "right-front"]],
    ["rears misting", ["left-rear", "right-rear"]],
    ["slight film on fronts", ["left-front", "right-front"]],
    ["rear pair misting", ["left-rear", "right-rear"]],
    ["both fronts damp", ["left-front", "right-front"]],
    ["left rear misting", ["left-rear"]],
    ["misting RR", ["right-rear"]],
    ["LF and LR misting", ["left-front", "left-rear"]],
  ] as const)
    expect(outcome(`Shocks,Attention,${said}`)?.findings.map(({ finding }) => finding.position)).toEqual(
      places,
    );
  expect(outcome("Shocks,Attention,misting")?.findings.map(({ sure }) => sure)).not.toContain(true);
});

test("a buckle or a reel that is bad is the belt's latch, and no wear of its webbing", () => {
  for (const written of [
    "Seat belt LF,Fail,buckle stuck",
    "Seat belt LF,Fail,does not latch",
    "Seat belt LF,Attention,jammed",
    "Seat belt LF,Fail,retractor dead",
    "Seat belt LF,bad,reel jams",
    "Seat belt LF,Fail,won't lock",
    "Left front seat belt,Fail,latch broken",
    "Seat belt LF,Fail,will not retract",
  ])
    expect(row(written)).toBe('interior.belt-latch@left-front {"value":"no"}');
  expect(row("Seat belt LF,Attention,frayed")).toContain("interior.belt-webbing@left-front");
});

test("a gauge that reads low may read true", () => {
  for (const written of [
    "Fuel gauge,Attention,reads low",
    "Fuel gauge,Fail,reading low",
    "Temp gauge,Attention,reads high",
    "Temperature gauge,Attention,reads a bit hot",
    "Oil pressure gauge,Attention,reads low",
    "Oil gauge,Advisory,shows low",
    "Temp gauge,Amber,reads cold",
    "Fuel gauge,Attention,shows too low",
  ])
    expect(row(written)).toBe("refused");
  expect(row("Fuel gauge,Attention,dead")).toBe('electrics.fuel-gauge {"value":"no"}');
});
