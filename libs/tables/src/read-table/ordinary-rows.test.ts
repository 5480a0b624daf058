import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { expect, test } from "vitest";
import { readCsv } from "../read-csv/index.ts";
import { readTable } from "./index.ts";
import type { TableDraft } from "./index.ts";

const read = (csv: string): TableDraft =>
  readTable({ form: "csv", grids: [readCsv(csv)], aside: [] }, sheetVersion1);

/** What each row below the first comes to: its findings in short, or how it ends. */
const rows = (csv: string): string[][] =>
  read(csv)
    .rows.slice(1)
    .map(({ end, findings }) =>
      end === "finding"
        ? findings.map(({ finding: { item, position = "", answer } }) => {
            const { kind, ...said } = answer;
            return `${item}${position === "" ? "" : `@${position}`} ${kind} ${JSON.stringify(said)}`;
          })
        : [end],
    );

const row = (written: string, heading = "Item,Result,Remarks"): string =>
  rows(`${heading}\n${written}\nHorn,ok,\n`)[0]?.join("; ") ?? "";

const sure = (csv: string): readonly boolean[] =>
  read(csv).rows.flatMap(({ findings }) => findings.map((one) => one.sure));

test("facts of the visit in pairs are facts wherever they stand", () => {
  for (const facts of [
    "Inspector: J. Pell,Date: 14/05/2024",
    "Client: R. Ode,Vehicle: Torrent Six",
    "Seen at: a barn,Weather: dry",
  ])
    expect(rows(`Survey 12,\n${facts}\nItem,Result\nHorn,ok\n`)[0]).toEqual(["note"]);
});

test("a good word for a bare name is said of no part it does not speak of", () => {
  expect(row("Ball joints,ok,")).toBe("refused");
  expect(row("Ball joint boots,ok,")).toContain("steering.ball-joint-seals@left-upper");
  for (const written of ["Seat belts,OK,", "Seat belts,good,", "Safety belts,pass,"]) {
    expect(row(written)).toContain("interior.belt-webbing");
    expect(row(written)).not.toContain("belt-latch");
  }
  for (const written of ["Seat belts,all latch,", "Seat belt buckles,ok,", "Seat belts,work,"])
    expect(row(written)).toContain("interior.belt-latch");
  expect(row("Windscreen,ok,")).toBe('brightwork.glass-faults@windshield faults {"found":[],"denied":"all"}');
  expect(row("Rear window,good,")).toContain("brightwork.glass-faults@rear-window");
  expect(row("Floor pans,ok,")).toContain("underbody.floor-pans@left-front");
});

test("a mark beside a spare is that it is there", () => {
  for (const written of ["Spare tire,x,,full size", "Spare wheel,ok,,", "Spare,✓,,"])
    expect(rows(`Item,Pass,Fail,Remarks\nTIRES,,,\n${written}\nHorn,,x,\n`)[1]).toEqual([
      'trunk.spare presence {"value":"present"}',
    ]);
});

test("what works by its own word and is slow by the remark works at times", () => {
  for (const written of [
    "Heater fan,Working,slow speed only",
    "Wipers,work,slow",
    "Clock,works,now and then",
    "Wipers,Functioning,sticks at times",
  ])
    expect(row(written)).toMatch(/^electrics\.\w+ working \{"value":"intermittent"\}$/);
  expect(row("Wipers,Working,blades split")).toBe('electrics.wipers working {"value":"yes"}');
  expect(row("Speedometer,fail,needle jumps")).toBe('electrics.speedometer working {"value":"intermittent"}');
});

test("beside a good word, a figure with its unit is of what its words name", () => {
  const both =
    'engine.coolant choice {"option":"clean"}; engine.freeze-point reading {"unit":"degC","values":[{"value":-30}]}';
  for (const written of [
    'Coolant,"ok, good to -30 C",',
    "Coolant,ok,good to -30 C",
    "Coolant,pass,protects to -30C",
    "Antifreeze,good,tested to -30 C",
  ])
    expect(row(written)).toBe(both);
  expect(row("Front pads,ok,6 mm")).not.toContain("option");
  expect(row("Tyre LF,ok,6 mm")).toBe(
    'wheels.tread-depth@left-front reading {"unit":"mm","values":[{"value":6}]}',
  );
});

test("lowest and highest side by side are two readings, and beside a result they are its limits", () => {
  for (const [low, high] of [
    ["Low (um)", "High (um)"],
    ["Min (um)", "Max (um)"],
    ["Lowest (µm)", "Highest (µm)"],
    ["Min. (um)", "Peak (um)"],
  ])
    expect(row("Roof,90,110", `PAINT,${low},${high}`)).toBe(
      'body.paint-thickness@roof reading {"unit":"um","values":[{"value":90}]}; body.paint-highest@roof reading {"unit":"um","values":[{"value":110}]}',
    );
  expect(row("Charging,13.5,14.8,14.1 V", "Item,Min,Max,Reading")).toBe(
    'electrics.volts-charging reading {"unit":"V","values":[{"value":14.1}]}',
  );
});

test("a column of faults that holds nothing but marks is one of ticks", () => {
  for (const heading of ["Fault", "Defect", "Faults", "Issue"])
    expect(row("Wipers,,x,slow", `Check,Good,${heading},Notes`)).toBe(
      'electrics.wipers working {"value":"intermittent"}',
    );
});

test("where the answer says where, the remark says what", () => {
  expect(row("Oil leaks,Rocker cover,weep")).toBe(
    'driveline.leaks-before@valve-covers choice {"option":"weep"}',
  );
  expect(row("Rust,N/S sill,bubbling")).toContain("body.faults@left-rocker");
});

test("what is bad at one of two is not said of both", () => {
  for (const written of [
    "O/S chassis leg,patched,",
    "Rear flexi,perished,",
    "Brake pipes,surface rust,",
    "Seat belts,bad,one frayed",
  ])
    expect(row(written)).toBe("refused");
  expect(row("Rear dampers,leaking,").split("; ")).toHaveLength(2);
});

test("of two bad answers in one cell neither is taken for all of it", () => {
  for (const written of ["Coolant,Rusty brown; the level was low,", 'Coolant,"rusty, low",'])
    expect(row(written)).toBe("refused");
});

test("an answer claims no more than its words", () => {
  expect(row("Title,in seller's name,")).toBe("refused");
  expect(row("Title,in seller's hand and name,")).toContain("seller-in-hand");
  expect(row("Tyre date LF,2014 dates,")).toBe("refused");
});

test("a question is answered by its remark as well: to which side, and how", () => {
  expect(row("Brakes pull to one side?,yes,left")).toBe('road.braking choice {"option":"pulls-left"}');
  expect(row("Any rust in the left sill?,Y,bubbles")).toContain('"kind":"blister"');
  expect(row("Idles smoothly?,no,rough until warm")).toBe('road.idle-quality choice {"option":"uneven"}');
});

test("what fails in front is the caliper and at the rear the cylinder, where a row is of either", () => {
  expect(row("Calipers / cylinders,dry,dry,damp,dry", "Check,LF,RF,LR,RR")).toMatch(
    /calipers@left-front.*calipers@right-front.*wheel-cylinders@left-rear.*wheel-cylinders@right-rear/,
  );
});

test("the heater's fan is meant by its speeds, and its heat by warmth", () => {
  expect(row("Heater,poor,only blows on high")).toContain("electrics.blower");
  expect(row("Heater,fail,blows cold")).toContain("electrics.heat");
});

test("a driver's belt is nowhere for sure while nobody says on which side the wheel is", () => {
  expect(sure("Item,Result\nDriver's door,dented\n")).toEqual([false]);
  expect(sure("Lorimer 8 (LHD),\nItem,Result\nDriver's door,dented\n")).toEqual([true]);
});

test("what does not do what it should is never said to work", () => {
  for (const word of ["Ineffective", "inoperable", "non-functional", "hardly works", "malfunctioning"])
    expect(row(`Handbrake,${word},Adjust`)).not.toContain('"yes"');
  expect(row("Handbrake,Ineffective,Adjust")).toBe('brakes.parking-brake working {"value":"no"}');
  expect(row("Handbrake,effective,")).toBe('brakes.parking-brake working {"value":"yes"}');
});

test("a good word for two names is said of each, and a bad one of neither", () => {
  for (const [written, items] of [
    ["Wipers and washers,Working,", ["electrics.wipers", "electrics.washers"]],
    ["Wipers / washers,ok,", ["electrics.wipers", "electrics.washers"]],
    ["Horn & clock,✓,", ["electrics.horn", "electrics.clock"]],
    ["Spare & jack,Present,", ["trunk.spare", "trunk.jack"]],
  ] as const)
    expect(row(written).match(/\b[a-z]+\.[a-z-]+(?= )/g)).toEqual(items);
  expect(row("Wipers and washers,fail,")).not.toContain("washers");
  expect(row("Jack and tools,present,").split("; ")).toHaveLength(1);
});

test("figures in a unit of their own are read beside what else is said of the same names", () => {
  for (const heading of ["Meter (mils)", "Gauge, mils", "Instrument (mils)"])
    expect(row("Roof,Straight,4.8,", `Panel,Condition,"${heading}",Notes`)).toContain(
      'body.paint-thickness@roof reading {"unit":"mil","values":[{"value":4.8}]}',
    );
});

test("a row that says only where is of the heading above it, which may have a letter of its own", () => {
  for (const heading of [",TYRES,,", "G,TYRES,,", "7.,Tyres,,"])
    expect(rows(`Ref,Component,Condition,Action\nA1,Horn,ok,\n${heading}\nG1,N/S/F,6 mm,None\n`)[2]).toEqual([
      'wheels.tread-depth@left-front reading {"unit":"mm","values":[{"value":6}]}',
    ]);
});

test("facts of the visit in pairs head no columns", () => {
  const csv = "Appraiser,T. Marrow,Location,Stow Lane\nRef,Component,Condition,Action\nA1,Horn,Works,\n";
  expect(read(csv).rows.map(({ end }) => end)).toEqual(["note", "note", "finding"]);
});

test("a fluid that is dark was looked at, and good tread is said of no sidewall", () => {
  expect(row("Brake fluid,Dark,flush")).toBe("refused");
  expect(row("Tires,Good tread,2019 date codes")).toBe("refused");
  expect(row("Engine oil,dark,")).toContain('"option":"used"');
});

test("the unit of an odometer stands in its name", () => {
  for (const name of ["Mileage km", "Odometer (km)", "Odometer kms", "Odometer, km"])
    expect(row(`"${name}",84310,`)).toContain('"unit":"km"');
});

test("slightly is no danger, to whichever side it pulls", () => {
  for (const words of ["Pulls slightly right", "slight pull to left", "pulls a little to the right"])
    expect(row(`Braking,${words},`)).toContain('"option":"slight-pull"');
  expect(row("Braking,pulls right,")).toContain('"option":"pulls-right"');
});

test("what does not apply is not fitted, in the remarks too", () => {
  expect(row("Sunroof,,N/A")).toBe("doors.sunroof not-fitted {}");
  expect(row("Horn,,see notes")).toBe("note");
});

test("a good word counts for the pedal's rubber only where that is named, and for the paint where a grade is given", () => {
  expect(row("Clutch pedal,Good,")).not.toContain("interior.pedals");
  expect(row("Pedal rubbers,Good,")).toContain("interior.pedals@clutch");
  expect(row("Right door,sags when opened,")).not.toContain("body.finish");
  const scale = "Item,Grade,Remarks\nA = like new B = good C = fair D = poor,,";
  expect(rows(`${scale}\nTrunk lid paint,B,\nHorn,A,\n`)[1]?.[0]).toContain("body.finish@trunk-lid grade");
});

test("a row of one place says of each column what was read there, the make of a tire aside", () => {
  const csv =
    "Position,Brand,Size,DOT,Tread 32nds,PSI\nLF,Corvane,P205/70R14,3519,7,32\nRR,Corvane,P205/70R14,1212,4,26\n";
  expect(rows(csv)[1]).toHaveLength(3);
  expect(rows(`TIRES,,,,,,\n${csv.replace("PSI\n", "PSI,Condition\n")}`)[2]).toHaveLength(4);
});

test("what one row says of one place stands before what another says of all", () => {
  const lamps = rows("Item,Found\nLights,all work except O/S tail\nIndicators,N/S front not flashing\n");
  expect(lamps[1]).toEqual(['electrics.lamps@left-front-turn working {"value":"no"}']);
  expect(lamps[0]).toContain('electrics.lamps@right-tail working {"value":"no"}');
  expect(lamps[0]?.join()).not.toContain("left-front-turn");
});

test("one place that is good under left and broken under right is neither", () => {
  expect(row("Exhaust hangers,Good,Broken", "Part,Left,Right")).toBe("refused");
  expect(row("Exhaust hangers,Good,Good", "Part,Left,Right")).toContain("hangers");
});

test("corners behind one another are no pair: worn on the left says not which", () => {
  expect(row("Control arm bushings,Cracked,ok", "Part,Left,Right")).not.toContain('"cracked"');
  expect(row("Rear dampers,leaking,")).toContain("right-rear");
});

test("where an exhaust leaks or is holed its words name by its parts", () => {
  for (const [words, part] of [
    ["blowing at front pipe", "head-pipes"],
    ["back box rusted through", "mufflers"],
    ["tailbox blowing", "mufflers"],
    ["manifold cracked", "manifolds"],
  ])
    expect(row(`Exhaust,${words},`)).toContain(`driveline.exhaust@${part}`);
});

test("what follows after is when it was read", () => {
  for (const words of ["80 C after 20 minutes", "80 C after a 20 mile drive", "80C after 10 miles"])
    expect(row(`Water temperature,${words},`)).toBe(
      'road.temperature-after-20 reading {"unit":"degC","values":[{"value":80}]}',
    );
});

test("an answer that says one thing but another is neither, and retrimmed seats are no trim of their car", () => {
  expect(row("Brake pedal,long but firm,")).toBe("refused");
  expect(row('Front seats,"reupholstered, as new",')).not.toContain("trim-history");
  expect(row("Interior trim,retrimmed to the correct pattern,")).toContain("retrimmed-right");
});

test("warning lamps that go out work, and doors are counted or looked at", () => {
  expect(row("Warning lights,Good,all go out")).toContain('"yes"');
  expect(row("Doors,4,")).toBe("note");
  expect(row("Doors,both hang well,")).toBe("refused");
  expect(row("Trim code,61 black vinyl,")).toBe('identity.trim-code code {"text":"61 black vinyl"}');
});

test("a column that groups says what part of the car its names are of", () => {
  expect(rows("Area,Point,Result\nWheels,Wheel rims,ok\nElectric,Horn,ok\n")[0]?.[0]).toContain(
    "wheels.wheel-faults",
  );
});

test("beside a grade of what has none each part of the remark is said", () => {
  const scale = "Item,Grade,Remarks\nA = like new B = good C = fair D = poor,,";
  expect(rows(`${scale}\nRR tire,D,"3/32, sidewall cracks"\nHorn,A,\n`)[1]).toHaveLength(2);
});

test("a part by what inspectors call it", () => {
  for (const [written, item] of [
    ["Washer jets,blocked,", "electrics.washers"],
    ["Heater controls,stuck,", "electrics.heat"],
    ["Seat adjustment,ok,", "interior.seat-adjusters"],
    ["Steering box,1 inch play,", "steering.free-play"],
    ["Back axle,whines,", "road.noise"],
    ["Subframe mountings,sound,", "underbody.subframe-bushings"],
  ] as const)
    expect(row(written)).toContain(item);
  expect(row("Power steering fluid,N/A,")).not.toContain("leaks");
});
