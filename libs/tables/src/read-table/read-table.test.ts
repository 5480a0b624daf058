import * as fc from "fast-check";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { expect, test } from "vitest";
import type { Book } from "../grid/index.ts";
import { readCsv } from "../read-csv/index.ts";
import { readTable } from "./index.ts";

const bookOf = (csv: string): Book => ({ form: "csv", grids: [readCsv(csv)], aside: [] });
const read = (csv: string) => readTable(bookOf(csv), sheetVersion1);
const said = (csv: string) =>
  read(csv).rows.flatMap(({ findings }) =>
    findings.map(({ finding }) => [finding.item, finding.position ?? "", finding.answer]),
  );

const tread = (value: number) => ({ kind: "reading", unit: "mm", values: [{ value }] });

test("a column a corner and a row a corner come to the same findings", () => {
  const right = [
    ["wheels.tread-depth", "left-front", tread(5)],
    ["wheels.tread-depth", "right-front", tread(4.5)],
  ];
  expect(said("Check,LF,RF\nTread (mm),5,4.5\n")).toEqual(right);
  expect(said("Corner,Tread (mm),Notes\nLF,5,\nRF,4.5,\n")).toEqual(right);
});

test("what is beside the point is a note, and what cannot be placed is refused with a reason", () => {
  const rows = read(
    "Item,Result,Notes\nInspector,J. Quill,\nBrake hoses,cracked,\nUnobtainium flux,ok,\nHorn,,\n",
  ).rows;
  expect(rows.map(({ end, note, refused }) => [end, note ?? refused[0]?.why])).toEqual([
    ["note", "heading"],
    ["note", "fact"],
    ["refused", "no-place"],
    ["refused", "no-item"],
    ["note", "left-blank"],
  ]);
});

test("one place is answered once: what a later row says of it is refused, and said to be", () => {
  const rows = read("Item,Result\nHorn,ok\nHorn,no\n").rows;
  expect(rows.map(({ end }) => end)).toEqual(["note", "finding", "refused"]);
  expect(rows[2]?.refused[0]?.why).toBe("twice");
});

test("two rows of one name share its items as fits best", () => {
  expect(
    said("Item,Result\nOil pressure at 2000 rpm,44 psi\nOil pressure,20 psi\n").map(([item]) => item),
  ).toEqual(["engine.oil-pressure-2000", "engine.oil-pressure-idle"]);
});

test("hedged and second-hand words are kept as such and left to be settled", () => {
  const [hedged, told] = read(
    "Item,Result\nFrame rails,looks solid\nEngine oil,clean per seller\n",
  ).rows.slice(1);
  expect(hedged?.findings[0]).toMatchObject({ finding: { firmness: "hedged" }, sure: false });
  expect(told?.findings[0]).toMatchObject({ finding: { firmness: "second-hand" }, sure: false });
});

/** Items with where and what, in short. */
const short = (csv: string): string[] =>
  read(csv).rows.flatMap(({ findings }) =>
    findings.map(
      ({ finding }) => `${finding.item}@${finding.position ?? ""} ${JSON.stringify(finding.answer)}`,
    ),
  );

test("red, amber and green say good and bad, with a key or without, and are neither grades nor sides", () => {
  for (const key of ["", "R = red do now, A = amber soon, G = green\n"]) {
    const rows = `Check,RAG,Observation\nHorn,G,\nFan belt,A,cracked\nIndicators,R,N/S/R out\n${key}`;
    expect(short(rows)).toEqual([
      'electrics.horn@ {"kind":"working","value":"yes"}',
      'engine.belts@ {"kind":"grade","scale":"house","value":"heavy-wear"}',
      'electrics.lamps@left-rear-turn {"kind":"working","value":"no"}',
    ]);
  }
});

test("a row of answers is no heading, nor one of what was not fitted: what stands below is read as before", () => {
  const rows = "Point,LF,RF,LR,RR\nWindow,works,works,works,slow\nDamper,dry,dry,leaks,dry\n";
  expect(read(rows).rows.map(({ note }) => note)).toEqual(["heading", undefined, undefined]);
  const fitted = short("Item,Result,Notes\nRadio,N/A,none fitted\nHorn,ok,\n");
  expect(fitted).toEqual([
    'electrics.radio@ {"kind":"not-fitted"}',
    'electrics.horn@ {"kind":"working","value":"yes"}',
  ]);
});

test("a figure for each cylinder in one cell, whatever stands between them", () => {
  for (const written of ["165 160 158 psi", "165/160/158 psi", "165, 160, 158 psi"])
    expect(short(`Item,Result\nHorn,ok\nCompressions,"${written}"\n`).slice(1)).toEqual(
      [165, 160, 158].map(
        (value, at) =>
          `engine.compression@cylinder-${String(at + 1)} {"kind":"reading","unit":"psi","values":[{"value":${String(value)}}]}`,
      ),
    );
});

test("what a figure was read at is no figure, and a letter behind a temperature is its unit", () => {
  expect(
    short(
      "Item,Result\nCharging,14.1 V at 2000\nBrake fluid boiling F,310\nOil pressure hot at 3000,52 psi\n",
    ),
  ).toEqual([
    'electrics.volts-charging@ {"kind":"reading","unit":"V","values":[{"value":14.1}]}',
    'brakes.fluid-boiling-point@ {"kind":"reading","unit":"degF","values":[{"value":310}]}',
    'engine.oil-pressure-2000@ {"kind":"reading","unit":"psi","values":[{"value":52}]}',
  ]);
});

test("a mark in a column of marks is a grade of what has grades, and of nothing else a figure", () => {
  const key = "\nRating: 1 = as new; 2 = normal wear; 3 = worn; 4 = replace\n";
  expect(
    short(
      `No,Check point,Rating 1-4,Measured,Remark${key}1,Headlining,2,,\n2,Brake pads left front,2,8 mm,\n3,Horn,4,,no sound\n4,Wipers,2,,\n5,Steering play,3,,\n6,Compression cyl 1-3,2,"11.8 / 11.6 / 11.9 bar",\n`,
    ),
  ).toEqual([
    'interior.headliner@ {"kind":"grade","scale":"grades","value":"2"}',
    'brakes.lining-thickness@left-front {"kind":"reading","unit":"mm","values":[{"value":8}]}',
    'electrics.horn@ {"kind":"working","value":"no"}',
    'electrics.wipers@ {"kind":"working","value":"yes"}',
    ...[11.8, 11.6, 11.9].map(
      (value, at) =>
        `engine.compression@cylinder-${String(at + 1)} {"kind":"reading","unit":"bar","values":[{"value":${String(value)}}]}`,
    ),
  ]);
});

test("a seal is at the end it is said to be, and a cross makes no part another car's", () => {
  expect(short("Item,Result,Notes\nEngine oil leaks,bad,rear seal drips\nHorn,ok,\n")[0]).toContain(
    "driveline.leaks-before@rear-main-seal",
  );
  expect(short("Item,Result,Notes\nHorn,ok,\nGearbox,fail,weak on second\n")).toHaveLength(1);
});

const words = fc.constantFrom(
  "Horn",
  "Tread",
  "LF",
  "RR",
  "Front",
  "ok",
  "x",
  "✓",
  "fail",
  "n/a",
  "not tested",
  '7/32"',
  "5,5",
  "12.4 V",
  "rust",
  "Item",
  "Result",
  "Notes",
  "Yes",
  "No",
  "Good",
  "Fair",
  "Poor",
  "BRAKES",
  "Cyl 1",
  "1",
  "2",
  "3",
  "",
  "",
  "",
  "=1+1",
  "#REF!",
  "Oil: clean",
  "A = good  B = bad",
  "Comments",
  "Seats",
  "Hood",
  "Compression",
);
const row = fc.array(fc.oneof(words, fc.string({ maxLength: 12 })), { maxLength: 7 });

test("every row that holds something ends as finding, note or refused, whatever stands in it", () => {
  fc.assert(
    fc.property(fc.array(row, { maxLength: 9 }), (rows) => {
      const grid = {
        name: "",
        rows: rows
          .map((cells, at) => ({ number: at + 1, cells: cells.map((text) => ({ text: text.trim() })) }))
          .filter(({ cells }) => cells.some(({ text }) => text !== "")),
      };
      const draft = readTable({ form: "csv", grids: [grid], aside: [] }, sheetVersion1);
      expect(draft.rows.map((one) => one.row)).toEqual(grid.rows.map(({ number }) => number));
      for (const { end, findings, refused } of draft.rows) {
        expect(end === "finding").toBe(findings.length > 0);
        expect(end !== "refused" || refused.length > 0).toBe(true);
      }
      const places = draft.rows.flatMap(({ findings }) =>
        findings.map(({ finding }) => `${finding.item} ${finding.position ?? ""}`),
      );
      expect(new Set(places).size).toBe(places.length);
    }),
    { numRuns: 1000 },
  );
});

test("a line somebody has settled is read as that, on the next car too", () => {
  const first = read("Check,Result\nWhirligig,✓\nHorn,✓\n");
  const [refused] = first.rows.flatMap((one) => one.refused);
  expect(refused?.why).toBe("no-item");
  const settled = new Map([[refused?.line ?? "", { item: "electrics.wipers", positions: [""] }]]);
  const again = readTable(bookOf("Check,Result\nHorn,✓\nWHIRLIGIG ,✗\n"), sheetVersion1, { settled });
  expect(again.rows.find(({ text }) => text.startsWith("WHIRLIGIG"))).toMatchObject({
    end: "finding",
    findings: [
      { finding: { item: "electrics.wipers", answer: { kind: "working", value: "no" } }, sure: true },
    ],
  });
});

test("what was settled of a place this car does not have is read as if nothing had been settled", () => {
  const csv = "Check,Result\nRear door window,✓\n";
  const [line] = read(csv).rows.flatMap(({ findings, refused }) =>
    [...findings, ...refused].map((one) => one.line),
  );
  const settled = new Map([[line ?? "", { item: "no.such-item", positions: ["left-front"] }]]);
  expect(readTable(bookOf(csv), sheetVersion1, { settled }).rows).toEqual(read(csv).rows);
});

test("what a row's remark says of a place is of the cross under it, and of no other", () => {
  expect(short("Check,LF,RF,LR,RR,Remarks\nBrake hoses,✓,✓,X,✓,LR cracked at ferrule\n").at(-2)).toBe(
    'brakes.hoses@left-rear {"kind":"faults","found":[{"kind":"crack"}],"denied":[]}',
  );
  expect(short("Check,LF,RF,LR,RR,Remarks\nBrake hoses,✓,✓,X,✓,RR cracked at ferrule\n")).toHaveLength(3);
});

test("a ticked row is no heading, and a cross says nothing of what kind a thing is", () => {
  const rows = "Horn,✓,,\nNoise,,✓,see note\nHandbrake,,✓,\nHeater,✓,,\n";
  expect(short(`Engine,OK,Not OK,Remarks\n${rows}`)).toContain(
    'brakes.parking-brake@ {"kind":"working","value":"no"}',
  );
  expect(short("Check,LF,RF\nWheel kind,✓,X\n")).toEqual([]);
});

const working = (item: string, value: string) => `${item} {"kind":"working","value":"${value}"}`;

test("a good word is not good where what follows it is bad, nor a part of a cell without the rest", () => {
  expect(short('Item,Result\nHorn,ok\nWipers,"ok, slow on low"\n').at(-1)).toBe(
    working("electrics.wipers@", "intermittent"),
  );
  expect(short('Item,Result\nHorn,ok\nFrame rails,"solid, surface rust only"\n')).toHaveLength(1);
  expect(short('Item,Result\nHorn,ok\nLeft rocker,"replaced, welds neat"\n')).toHaveLength(1);
});

test("of an exception what is said is never good, and others are those not spoken of", () => {
  const lamps = short("Item,Result\nHorn,ok\nLights,all work exc LR turn and plate\n");
  expect(lamps).toContain(working("electrics.lamps@left-rear-turn", "no"));
  expect(lamps).toContain(working("electrics.lamps@plate", "no"));
  expect(lamps).toContain(working("electrics.lamps@left-stop", "yes"));
  expect(short('Item,Result\nHorn,ok\nPower windows,"LR dead, others slow"\n').slice(1)).toEqual([
    working("doors.regulators@left-rear-window", "no"),
    working("doors.regulators@left-front-window", "intermittent"),
    working("doors.regulators@right-rear-window", "intermittent"),
    working("doors.regulators@right-front-window", "intermittent"),
  ]);
  expect(short("Item,Result\nHorn,ok\nOther seats,ok\n")).toHaveLength(1);
});

test("figures with words between are of several things, and none of them is taken for all", () => {
  const [, travel] = read(
    "Item,Result\nHorn,ok\nBrake pedal travel,12 cold then 9 pumped 14 held\n",
  ).rows.slice(1);
  expect(travel?.findings).toEqual([]);
  expect(short("Item,Result\nHorn,ok\nBattery,12.3 rest / 9.4 crank / 13.8 run\n").slice(1)).toHaveLength(3);
  expect(short("Item,Result\nHorn,ok\nCompression 1,165 dry / 175 wet\n").at(-1)).toContain(
    '[{"value":165}]',
  );
});

test("what a row asks of the panels over its columns is not taken for something else", () => {
  const rows = short("Panel:,Bonnet,Roof\nDents,none,none\nFlumped?,no,yes\n");
  expect(rows.filter((line) => !line.startsWith("body.faults"))).toEqual([]);
});

test("places and cylinders may stand across, under a name with a colon", () => {
  expect(short("Corner:,Front left,Front right\nTread mm,6,5\n")).toHaveLength(2);
  expect(short("Cylinder:,1,2,3\nPlug,tan,tan,oily\n").at(-1)).toBe(
    'engine.plugs@cylinder-3 {"kind":"choice","option":"oily"}',
  );
});

test("colors in words are marks, and what was seen beside them says more", () => {
  const rows = "Hood,Yellow,rock chips\nHorn,Green,\nClock,Red,dead\nRadio,Green,\nTires LF,Green,8/32\n";
  const found = short(`Item,Rating,Seen\n${rows}`);
  expect(found[0]).toContain('"kind":"chip"');
  expect(found.at(-1)).toContain("wheels.tread-depth@left-front");
});

test("in a sheet with decimal commas a point parts thousands, whatever its rows are numbered by", () => {
  const rows = "1.1;Tread LF;6,5;mm\n1.2;Tread RF;6,0;mm\n1.3;Odometer reading;87.412;km\n";
  expect(short(`Pos.;Point;Value;Unit\n${rows}`).at(-1)).toContain('[{"value":87412}]');
});

test("numbers that a key explains as good and bad are marks of a column of codes, and no figures", () => {
  const csv =
    "Codes: 1 = OK, 2 = watch, 3 = repair, 0 = not checked\nItem,Code,Details\nHorn,1,\nClock,3,\nRadio,0,\nTyre RL,3,1.4 mm\n";
  expect(short(csv)).toEqual([
    working("electrics.horn@", "yes"),
    working("electrics.clock@", "no"),
    'electrics.radio@ {"kind":"not-seen","reason":"not-tested"}',
    'wheels.tread-depth@left-rear {"kind":"reading","unit":"mm","values":[{"value":1.4}]}',
  ]);
});

test("a grade that is ticked says little of what has no grades: what was seen counts", () => {
  const rows = "Wiring,,x,,spliced\nOil,,x,,dark\nBelts,,x,,\nHorn,x,,,\n";
  expect(short(`Part,Good,Fair,Poor,Comments\n${rows}`)).toEqual([
    'engine.wiring@ {"kind":"choice","option":"spliced"}',
    'engine.oil@ {"kind":"choice","option":"used"}',
    'engine.belts@ {"kind":"grade","scale":"grades-3-poor","value":"fair"}',
    working("electrics.horn@", "yes"),
  ]);
});

test("yes to a question that names a fault is never the best answer, and no figure is a second best one", () => {
  expect(short("Question,Y/N\nHorn works?,Y\nIs the gearbox oil leaking?,Y\n").slice(1).join()).not.toContain(
    "clean",
  );
  expect(short("Question,Y/N\nDoes the driver's door lock?,N\n")).toEqual([
    working("doors.locks@left-front-door", "no"),
  ]);
  expect(short("Part,Result,Unit\nHorn,ok,\nCompression cyl 3 / 4,142,psi\n")).toHaveLength(1);
});

test("as the other side is what stands under the other side", () => {
  expect(short("Part,L/H,R/H\nFront damper,weeping,as l/h\n").at(-1)).toBe(
    'steering.dampers@right-front {"kind":"choice","option":"leaking"}',
  );
});

test("of two columns of words the second names what was looked at, the first only groups it", () => {
  const rows =
    "Body,Sill right,OK,\nBody,Sill left,NOK,rusted through\nEngine,Coolant hoses,OK,\nEngine,V-belt,NOK,cracked\n";
  const found = short(`Group,Subject of test,OK/NOK,Deviation\n${rows}`);
  expect(found).toEqual([
    'body.faults@right-rocker {"kind":"faults","found":[],"denied":"all"}',
    'body.faults@left-rocker {"kind":"faults","found":[{"kind":"perforation"}],"denied":[]}',
    'engine.hoses@ {"kind":"faults","found":[],"denied":"all"}',
    'engine.belts@ {"kind":"grade","scale":"house","value":"heavy-wear"}',
  ]);
});

test("cold and hot, dry and wet, before and after are told apart, and what is not asked is left", () => {
  expect(short("Measured,Cold,Hot,Unit\nOil pressure at idle,55,22,psi\n")).toEqual([
    'engine.oil-pressure-idle@ {"kind":"reading","unit":"psi","values":[{"value":22}]}',
  ]);
  expect(short("Leaks,Before road,After road\nSump,dry,weep\n")).toEqual([
    'driveline.leaks-before@oil-pan {"kind":"choice","option":"none"}',
    'driveline.leaks-after@oil-pan {"kind":"choice","option":"weep"}',
  ]);
});

test("several readings under a wider heading are one", () => {
  expect(short("Panel,Paint thickness (µm),,,Remarks\n,front,centre,rear,\nRoof,95,99,97,\n")).toEqual([
    'body.paint-thickness@roof {"kind":"reading","unit":"um","values":[{"value":95},{"value":99},{"value":97}]}',
  ]);
});

test("what a remark finds wrong beside a good word or a fair one is what is found", () => {
  const rows = "Bonnet,Good,two stone chips\nLeft door,Fair,blistering at bottom\nRoof,Good,\n";
  expect(short(`Panel,Condition,Remarks\n${rows}`)).toEqual([
    'body.faults@hood {"kind":"faults","found":[{"kind":"chip"}],"denied":[]}',
    'doors.bottoms@left-front-door {"kind":"faults","found":[{"kind":"blister"}],"denied":[]}',
    'body.faults@roof {"kind":"faults","found":[],"denied":"all"}',
  ]);
});

test("where a sheet says that the wheel is on the right, the driver's side is; where it says nothing, somebody settles it", () => {
  const rows = "Feature,Result\nD/S front wing,dented\n";
  expect(short(`Car: Lorimer 8 (RHD)\n${rows}`).join()).toContain("body.faults@right-front-fender");
  expect(read(rows).rows[1]?.findings[0]).toMatchObject({
    finding: { position: "left-front-fender" },
    sure: false,
  });
});

test("a list of notes in somebody's own words is read note by note", () => {
  const notes =
    "horn works\nradio dead\nLF tire 5/32\nbattery 12.6 volts\nright rocker solid\nleft stop lamp out\nhoses ok\ncall Bo about parts\n";
  const found = read(`sat morning\n${notes}`).rows;
  expect(found.map(({ end }) => end)).toEqual(["note", ...Array<string>(7).fill("finding"), "note"]);
  expect(short(`sat morning\n${notes}`)).toContain(working("electrics.lamps@left-stop", "no"));
});

test("a row of answers under headings is no heading, and no under yes says no", () => {
  const rows = "Heater,Yes,No,\nRadio,No,,\nHorn,Yes,Yes,\nClock,Yes,No,\n";
  expect(short(`Equipment,Fitted?,Works?,Comment\n${rows}`)).toEqual([
    working("electrics.heat@", "no"),
    'electrics.radio@ {"kind":"not-fitted"}',
    working("electrics.horn@", "yes"),
    working("electrics.clock@", "no"),
  ]);
  expect(short("Item,Yes,No\nHorn,No,\nRadio,x,\n")).toEqual([
    working("electrics.horn@", "no"),
    working("electrics.radio@", "yes"),
  ]);
});

test("a worksheet or a heading named after a corner says where all below it was read", () => {
  const grids = ["LF corner", "RR corner"].map((name) => ({
    ...readCsv("Check,Finding,Unit\nTread inner,4,mm\nDamper,dry,\n"),
    name,
  }));
  const found = readTable({ form: "xlsx", grids, aside: [] }, sheetVersion1).rows.flatMap(({ findings }) =>
    findings.map(({ finding }) => `${finding.item}@${finding.position ?? ""}`),
  );
  expect(found).toEqual([
    "wheels.tread-depth@left-front",
    "steering.dampers@left-front",
    "wheels.tread-depth@right-rear",
    "steering.dampers@right-rear",
  ]);
});
