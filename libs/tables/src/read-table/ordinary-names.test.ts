import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { expect, test } from "vitest";
import { readCsv } from "../read-csv/index.ts";
import { readTable } from "./index.ts";

const outcomes = (csv: string) =>
  readTable({ form: "csv", grids: [readCsv(csv)], aside: [] }, sheetVersion1).rows;

/** What one row says: its items with where, and its answers; or how it ends. */
const row = (written: string, heading = "Item,Result,Remarks"): string => {
  const one = outcomes(`${heading}\n${written}\nHorn,ok,\n`)[1];
  return one?.end === "finding"
    ? one.findings
        .map(({ finding: { item, position = "", answer } }) => {
          const { kind: _kind, ...said } = answer;
          return `${item}@${position} ${Object.values(said)
            .map((value) => JSON.stringify(value))
            .join(" ")}`;
        })
        .join("; ")
    : (one?.end ?? "");
};

test("a section called inside or outside is no corner", () => {
  for (const section of ["Inside", "Outside", "Top", "Inside:"]) {
    const [, , horn] = outcomes(`Item,Result\n${section},\nHorn,ok\nClock,dead\n`);
    expect(horn?.findings.map(({ finding }) => finding.item)).toEqual(["electrics.horn"]);
  }
});

test("fair is not bad: beside what has no grades the remark says what it is, and alone it says nothing", () => {
  const scale = "Item,Rating,Remarks\nE = excellent G = good F = fair P = poor,,";
  const wipers = (rating: string): string =>
    outcomes(`${scale}\nWipers,${rating}\nHeadliner,G,\nDash top,F,\nCarpet,P,\nClock,E,\n`)
      .slice(2, 3)
      .map(({ end, findings }) => `${end} ${JSON.stringify(findings[0]?.finding.answer)}`)
      .join("");
  expect(wipers("F,slow")).toContain('"intermittent"');
  expect(wipers("P,")).toContain('"no"');
  expect(wipers("F,")).toContain("refused");
});

test("paint that is good has a good finish, and no panel is free of dents for that", () => {
  for (const word of ["Good", "ok", "tidy", "very good"]) {
    expect(row(`Paintwork,${word},`)).toContain("body.finish@hood");
    expect(row(`Paintwork,${word},`)).not.toContain("body.faults");
  }
});

test("a name in whatever length is that of its item", () => {
  for (const [written, item] of [
    ["Condition of paintwork generally,Good,", "body.finish@hood"],
    ["Condition of exterior mirrors,Good,", "brightwork.mirrors@left"],
    ["Condition of chassis members,sound,", "underbody.rails@left-front"],
    ["License lamp,ok,", "electrics.lamps@plate"],
    ["Overdrive operation,not tested,", "road.lock-up@"],
    ["Dash top,fine,", "interior.dash-top@"],
  ] as const)
    expect(row(written)).toContain(item);
});

test("what a bare name does not speak of is not made of it, however often the row is there", () => {
  const again = outcomes(
    "Item,Result\nLeft fender rust,none\nLeft fender rust,ok\nLeft door,ok\nLeft door,ok\n",
  );
  const items = again.flatMap(({ findings }) => findings.map(({ finding }) => finding.item));
  expect(items.filter((item) => /magnet|patch|weld|material|latch|hinge|drop/.test(item))).toEqual([]);
  expect(row('Left rocker,"filler, magnet falls off",')).toContain("body.magnet@left-rocker");
  expect(row("Left front door,closes well,")).toContain("doors.latches@left-front-door");
});

test("a fender at the rear is the quarter panel", () => {
  const said = row(
    "Fender edge rust,None,None,Bubbles,None",
    "Corner,Left Front,Right Front,Left Rear,Right Rear",
  );
  expect(said).toContain("body.faults@left-front-fender");
  expect(said).toContain('body.faults@left-quarter [{"kind":"blister"}]');
});

test("of two rows for one item the one that finds something is meant, and nothing about it is sure", () => {
  const both = outcomes("Item,Result\nRadiator hoses,good\nHeater hoses,soft\n");
  expect(both.map(({ end }) => end)).toEqual(["note", "refused", "finding"]);
  expect(both[2]?.findings.map(({ sure }) => sure)).toEqual([false]);
  const wipers = outcomes("Item,Works (Y/N)\nWipers front,Y\nWiper rear,N\n");
  expect(wipers.map(({ end }) => end)).toEqual(["note", "finding", "refused"]);
});

test("what is said of all panels at once is never sure", () => {
  const [, paint] = outcomes("Item,Result\nPaintwork,Good\nHorn,ok\n");
  expect(paint?.findings.some(({ sure }) => sure)).toBe(false);
});

test("a gap is no paint, and a figure on one side of four doors is of no one door", () => {
  for (const written of ["Door gap LF,5 mm,", "Front door to rear door gap,5 mm,"])
    expect(row(written)).not.toContain("paint");
  expect(row("Door hinges,3 mm play offside,")).toBe("refused");
  expect(row("Front pads,6 mm,").split("; ")).toHaveLength(2);
  expect(row("Rear lining thickness,3.5 mm,")).toContain("brakes.lining-thickness@left-rear");
});

test("side and tail lamps are two kinds of lamp, and eight years are a tire's age", () => {
  expect(row("Side and tail lamps,Pass,").match(/left-front-parking|right-tail/g)).toHaveLength(2);
  expect(row("Tyre age,Eight years,")).toContain('"over-six-years"');
});

test("what is missing is not worn, an overdrive that works is at no gear, and a fire extinguisher starts nothing", () => {
  expect(row("Sidescreens,Missing,")).toBe("refused");
  expect(row("Overdrive,Works,")).toBe("refused");
  expect(row("Fire extinguisher,Pass,")).toBe("refused");
  expect(row("Seat trim,Original leather,")).not.toContain("trim-history");
  expect(row("Original bill of sale,No,")).toBe('identity.invoice@ "absent"');
  expect(row("Engine mountings,Oil soaked,").split("; ")).toHaveLength(2);
});

test("a cracked lens is no dead lamp, and a fluid that is full no dry joint", () => {
  expect(row("Tail lights,fail,right lens cracked")).not.toContain("electrics.lamps");
  expect(row("Power steering fluid,ok,")).not.toContain("leaks");
  expect(row("Power steering fluid leak,none,")).toContain('driveline.leaks-before@power-steering "none"');
});

test("cracking is a fault of what cracks, and a wear of what wears", () => {
  expect(row("Tyre sidewall LF,Cracking,")).toContain('wheels.tire-faults@left-front [{"kind":"crack"}]');
  expect(row("Fan belt,cracking,")).toContain('"heavy-wear"');
});

test("of a panel with a column for dents and one for rust both are said, and neither denies the other", () => {
  const heading = "Panel,Gauge (um),Dents,Rust,Comment";
  for (const [written, found] of [
    ["Roof,122,One small,None,", ["dent"]],
    ["Roof,100,None,Bubbles,", ["blister"]],
    ["Roof,100,None,Surface,", ["corrosion"]],
    ["Roof,100,two,slight,", ["dent", "corrosion"]],
    ["Roof,100,None,None,", []],
  ] as const) {
    const [, one] = outcomes(`${heading}\n${written}\nHood,99,None,None,\n`);
    const faults = one?.findings.map(({ finding }) => finding.answer).find(({ kind }) => kind === "faults");
    expect(faults).toMatchObject({ found: found.map((kind) => ({ kind })) });
  }
  const [, none] = outcomes(`${heading}\nRoof,100,None,None,\nHood,99,None,None,\n`);
  expect(
    none?.findings.find(({ finding }) => finding.answer.kind === "faults")?.finding.answer,
  ).toMatchObject({
    denied: ["dent", "corrosion"],
  });
});

test("oil pressure is of the speed it was read at, and gauges by no name are none of them", () => {
  expect(row("Oil pressure hot,45 psi at 2000 rpm,")).toContain("engine.oil-pressure-2000");
  expect(row("Oil pressure hot,20 psi at idle,")).toContain("engine.oil-pressure-idle");
  expect(row("Gauges,ok,")).toBe("refused");
  expect(row("Frost protection,-25 C,")).toContain("engine.freeze-point");
});

test("a figure measured counts before the grade beside it", () => {
  const scale = "Component,Grade,Measured,Comments\nA excellent / B good / C average / D poor,,,";
  for (const [written, item] of [
    ["Hood,B,5 mils,", "body.paint-thickness"],
    ["LF tire,B,8/32,", "wheels.tread-depth"],
    ["Battery,B,12.5 V,", "electrics.volts-rest"],
    ["Steering play,C,2 in,", "steering.free-play"],
  ]) {
    const [, , one] = outcomes(`${scale}\n${written}\nHeadliner,B,,\nCarpet,C,,\n`);
    expect(one?.findings.map(({ finding }) => [finding.item, finding.answer.kind])).toEqual([
      [item, "reading"],
    ]);
  }
});

test("why a part was not seen its remark says, and one pair of brakes is neither the pedal nor the road", () => {
  const key = "Item,Code,Detail\nOK = satisfactory; W = worn; D = defective; NE = not examined,,";
  const [, , one] = outcomes(`${key}\nRear brakes,NE,drums not removed\nHorn,OK,\nClock,D,\n`);
  expect(one?.findings[0]?.finding.answer).toEqual({ kind: "not-seen", reason: "needs-dismantling" });
  expect(row("Front brakes,OK,")).toBe("refused");
  expect(row("Brakes,OK,")).toContain("road.braking");
  expect(row("Turn signals,fail,none work").split("; ")).toHaveLength(4);
});

test("the color of a car is a fact, be it green", () => {
  expect(outcomes("Vehicle: Penhallow Courier,Colour: green\nItem,Result\nHorn,ok\n")[0]?.end).toBe("note");
});

test("of a name that is wide a good word makes no answer of a narrow one", () => {
  for (const name of [
    "Exterior",
    "Cooling system",
    "Fuel system",
    "Engine",
    "Power steering",
    "Trunk",
    "Undercoat",
    "Ball joints",
  ])
    expect(row(`${name},good,`)).toBe("refused");
  for (const [written, item] of [
    ["Cooling system pressure test,good,", "engine.cooling-pressure"],
    ["Engine,runs quietly,", "engine.noise"],
    ["Tappets,ok,", "engine.noise"],
    ["Dome lamp,works,", "electrics.lamps@interior"],
    ["Engine compartment,good,", "engine.finish"],
    ["Trunk,dry,", "trunk.damp"],
    ["Trunk floor,good,", "trunk.floor"],
    ["Power steering,leaking,", "driveline.leaks-before@power-steering"],
  ] as const)
    expect(row(written)).toContain(item);
});

test("what is without effect or defective does not work", () => {
  for (const words of ["without effect", "no effect", "defective", "faulty"])
    expect(row(`Handbrake,${words},`)).toBe('brakes.parking-brake@ "no"');
  expect(row("Indicators,front right defective,")).toBe('electrics.lamps@right-front-turn "no"');
  expect(row("Transmission,4,", "Item,Rating (1-5),Notes")).toContain("road.shifts");
});
