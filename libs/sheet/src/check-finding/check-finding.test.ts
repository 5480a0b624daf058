import { readFileSync } from "node:fs";
import { Report } from "@evenhand/shared/report";
import { describe, expect, it } from "vitest";
import { sheetVersion1 as sheet } from "../sheet-version-1/index.ts";
import { checkFinding } from "./index.ts";

const file = new URL("../../../../fixtures/sheet/one-of-each.json", import.meta.url);
const report = Report.parse(JSON.parse(readFileSync(file, "utf8")));
const check = (finding: unknown, header = report) => checkFinding(finding, header, sheet);

const problemsOf = (finding: unknown) => {
  const result = check(finding);
  return result.ok ? [] : result.problems.map(({ at, reason }) => [at, reason]);
};
const reading = (unit: unknown, ...values: unknown[]) => ({
  kind: "reading",
  unit,
  values: values.map((value) => ({ value })),
});
const tread = (answer: unknown, more: object = {}) => ({
  item: "wheels.tread-depth",
  position: "left-front",
  answer,
  ...more,
});
const faults = (answer: object) => ({
  item: "body.faults",
  position: "hood",
  answer: { kind: "faults", ...answer },
});
const grade = (scale: string, value: unknown) => ({
  item: "interior.headliner",
  answer: { kind: "grade", scale, value },
});

describe("checkFinding accepts", () => {
  it.each(report.findings.map((finding) => [finding.item, finding] as const))(
    "%s as the fixture has it",
    (_, finding) => {
      expect(check(finding)).toEqual({ ok: true, finding, advisories: [] });
    },
  );

  it("and fills in what a person leaves out", () => {
    expect(check({ item: "electrics.horn", answer: { kind: "working", value: "no" } })).toMatchObject({
      ok: true,
      finding: { position: "", firmness: "asserted", basis: "seen" },
    });
  });

  it.each([
    tread(reading("1/32in", 0)),
    tread(reading("1/32in", 40)),
    tread(reading("mm", 31.75)),
    faults({ found: [], denied: "all" }),
    faults({ found: [{ kind: "dent" }], denied: ["filler"] }),
    faults({ found: [{ kind: "dent", extent: { value: 2, unit: "in" } }] }),
    grade("percent", 0),
    grade("percent", 100),
    { ...tread({ kind: "not-seen", reason: "covered" }), position: "spare" },
  ])("what lies just within: %j", (finding) => {
    expect(check(finding).ok).toBe(true);
  });
});

describe("checkFinding advises", () => {
  const compression = {
    item: "engine.compression",
    position: "cylinder-1",
    answer: reading("psi", 150, 152),
  };

  it("to note the conditions an item asks for, and refuses nothing for it", () => {
    const result = check({ ...compression, conditions: { warm: true } });
    expect(result.ok).toBe(true);
    expect(result.advisories).toEqual([
      {
        at: "/conditions/throttle-open",
        reason:
          "“Compression” asks for “throttle held open” to be noted: without it some checks cannot tell.",
        item: "engine.compression",
        position: "cylinder-1",
      },
    ]);
  });

  it("by its id of a condition that the sheet has no words for", () => {
    const wordless = { ...sheet, conditions: [] };
    expect(checkFinding(compression, report, wordless).advisories.map(({ reason }) => reason)).toEqual([
      "“Compression” asks for “warm” to be noted: without it some checks cannot tell.",
      "“Compression” asks for “throttle open” to be noted: without it some checks cannot tell.",
    ]);
  });

  it("nothing about what was not seen", () => {
    expect(check({ ...compression, answer: { kind: "not-seen", reason: "no-tool" } }).advisories).toEqual([]);
  });

  it("also beside a problem", () => {
    expect(check({ ...compression, person: "nobody" })).toMatchObject({
      ok: false,
      advisories: [{ at: "/conditions/warm" }, {}],
    });
  });
});

describe("checkFinding refuses", () => {
  it.each([
    [
      "an item with a slip of the pen, naming the one meant",
      { item: "engine.compresion", position: "cylinder-1", answer: reading("psi", 150) },
      "/item",
      'Sheet evenhand version 1 has no item "engine.compresion": perhaps engine.compression.',
    ],
    [
      "an item like no other",
      { item: "zz.qq", answer: { kind: "working", value: "yes" } },
      "/item",
      'Sheet evenhand version 1 has no item "zz.qq": take the id from the sheet.',
    ],
    [
      "an item that does not apply to the car",
      {
        item: "interior.top",
        position: "fabric",
        answer: { kind: "grade", scale: "house", value: "as-new" },
      },
      "/item",
      "“Convertible top” does not apply to this car: leave it out, or correct the vehicle's form.",
    ],
    [
      "a position where there is none",
      { item: "electrics.horn", position: "left-front", answer: { kind: "working", value: "yes" } },
      "/position",
      "“Horn” is asked once for the whole car: leave the position out.",
    ],
    [
      "no position where one is needed",
      { ...tread(reading("1/32in", 5)), position: "" },
      "/position",
      "“Tread depth” needs a position: left-front, left-rear, spare, right-rear or right-front.",
    ],
    [
      "a position of another car",
      {
        item: "engine.compression",
        position: "cylinder-9",
        answer: reading("psi", 150),
        conditions: { warm: true, "throttle-open": true },
      },
      "/position",
      '"cylinder-9" does not apply to this car: “Compression” is asked at cylinder-1, cylinder-2, cylinder-3, cylinder-4, cylinder-5 or cylinder-6.',
    ],
    [
      "a position there is on no car",
      { ...tread(reading("1/32in", 5)), position: "front-left" },
      "/position",
      '“Tread depth” has no position "front-left": name left-front, left-rear, spare, right-rear or right-front.',
    ],
    [
      "another kind of answer than the item's",
      tread({ kind: "grade", scale: "house", value: "as-new" }),
      "/answer/kind",
      '“Tread depth” is answered by "reading", not by "grade": answer so, or "not-seen" with a reason.',
    ],
    [
      "a missing unit",
      tread({ kind: "reading", values: [{ value: 5 }] }),
      "/answer/unit",
      "The unit is missing: write 1/32in, mm or in.",
    ],
    [
      "an unknown unit",
      tread(reading("furlong", 5)),
      "/answer/unit",
      'There is no unit "furlong": write 1/32in, mm or in.',
    ],
    [
      "a unit of another dimension",
      tread(reading("psi", 5)),
      "/answer/unit",
      "psi is a unit of pressure, and “Tread depth” is a length: write it in 1/32in, mm or in.",
    ],
    [
      "a negative tread",
      tread(reading("1/32in", 5, -1)),
      "/answer/values/1/value",
      "-1⁄32 in cannot be: “Tread depth” lies between 0⁄32 in and 40⁄32 in.",
    ],
    [
      "too much tread, in a unit of one's own",
      tread(reading("in", 2)),
      "/answer/values/0/value",
      "2 in (64⁄32 in) cannot be: “Tread depth” lies between 0⁄32 in and 40⁄32 in.",
    ],
    [
      "900 psi",
      {
        item: "engine.compression",
        position: "cylinder-1",
        answer: reading("psi", 900),
        conditions: { warm: true, "throttle-open": true },
      },
      "/answer/values/0/value",
      "900 psi cannot be: “Compression” lies between 0 psi and 400 psi.",
    ],
    [
      "a ratio, which has no unit to show",
      { item: "driveline.axle-ratio", answer: reading("1", 35.8) },
      "/answer/values/0/value",
      "35.8 cannot be: “Axle ratio” lies between 1.5 and 8.",
    ],
    [
      "a spot the item does not have",
      tread({ kind: "reading", unit: "mm", values: [{ value: 5, spot: "edge" }] }),
      "/answer/values/0/spot",
      '“Tread depth” has no spot "edge": name inner, center or outer.',
    ],
    [
      "an unknown option",
      {
        item: "brakes.pedal-sink",
        answer: { kind: "choice", option: "fine" },
        conditions: { "seconds-held": 10 },
      },
      "/answer/option",
      '“Pedal sinks under held force” has no option "fine": name holds, slow, to-floor or not-known.',
    ],
    [
      "an unknown kind of fault",
      {
        item: "underbody.jacking-damage",
        position: "left-front",
        answer: { kind: "faults", found: [{ kind: "rust" }] },
      },
      "/answer/found/0/kind",
      '“Jacking damage” has no fault "rust": name dent, bend, buckle or crushed-seam.',
    ],
    [
      "an extent of another dimension",
      faults({ found: [{ kind: "dent", extent: { value: 3, unit: "kg" } }] }),
      "/answer/found/0/extent",
      "The extent of dent is a length: write it in mm, not in kg.",
    ],
    [
      "a spot off the drawing",
      faults({ found: [{ kind: "dent", spot: "north" }] }),
      "/answer/found/0/spot",
      'The drawing of “Panel faults” has no spot "north": name upper-front, upper-center, upper-rear, middle-front, middle-center, middle-rear, lower-front, lower-center or lower-rear.',
    ],
    [
      "a spot where there is no drawing",
      {
        item: "steering.ball-joint-seals",
        position: "left-upper",
        answer: { kind: "faults", found: [{ kind: "cut", spot: "front" }] },
      },
      "/answer/found/0/spot",
      "“Ball joint seals” has no drawing: leave the spot out, and say where in the note.",
    ],
    [
      "one of several faults found and denied",
      faults({ found: [{ kind: "dent" }, { kind: "filler" }], denied: ["filler"] }),
      "/answer/denied/0",
      "“filler” is both found and denied: take one of the two away.",
    ],
    [
      "a fault found and denied",
      faults({ found: [{ kind: "dent" }], denied: ["filler", "dent"] }),
      "/answer/denied/1",
      "“dent” is both found and denied: take one of the two away.",
    ],
    [
      "faults beside none at all",
      faults({ found: [{ kind: "dent" }], denied: "all" }),
      "/answer/denied",
      'Faults are found and "none at all" is said: take one of the two away.',
    ],
    [
      "a denial of what there is no kind of",
      {
        item: "underbody.jacking-damage",
        position: "left-front",
        answer: { kind: "faults", found: [], denied: ["rust"] },
      },
      "/answer/denied/0",
      '“Jacking damage” has no fault "rust": name dent, bend, buckle or crushed-seam.',
    ],
    [
      "faults that say nothing",
      faults({ found: [], denied: [] }),
      "/answer",
      'Neither a fault nor that there is none is said: name one, deny kinds, or deny "all".',
    ],
    [
      "an unknown house grade",
      grade("house", "mint"),
      "/answer/value",
      'The scale house has no grade "mint": name spent, heavy-wear, even-wear, light-wear or as-new.',
    ],
    [
      "a grade its own scale does not have",
      grade("three-steps", "great"),
      "/answer/value",
      'The scale three-steps has no grade "great": name poor, fair or good.',
    ],
    [
      "an unknown scale",
      grade("stars", "five"),
      "/answer/scale",
      'The report has no scale "stars": name house, percent or three-steps, or add it to the report\'s scales.',
    ],
    [
      "more than all per cent",
      grade("percent", 101),
      "/answer/value",
      '"101" is no percentage: give a number from 0 to 100.',
    ],
    [
      "less than nothing",
      grade("percent", -1),
      "/answer/value",
      '"-1" is no percentage: give a number from 0 to 100.',
    ],
    [
      "a word for a percentage",
      grade("percent", "most"),
      "/answer/value",
      '"most" is no percentage: give a number from 0 to 100.',
    ],
    [
      "an unknown instrument",
      tread(reading("mm", 5), { instrument: "ruler" }),
      "/instrument",
      'The report has no instrument "ruler": name tread-gauge or compression-gauge, or add it to the report\'s instruments.',
    ],
    [
      "an instrument that measures something else",
      tread(reading("mm", 5), { instrument: "compression-gauge" }),
      "/instrument",
      'The resolution of "compression-gauge" is given in psi, a unit of pressure, and “Tread depth” is a length: give it in 1/32in, or name another instrument.',
    ],
    [
      "an unknown person",
      tread(reading("mm", 5), { person: "nobody" }),
      "/person",
      'The report has no person "nobody": name rowan, or add it to the report\'s persons.',
    ],
    [
      "a condition noted as another kind of value",
      { item: "electrics.volts-rest", answer: reading("V", 12.6), conditions: { "charger-off": "two" } },
      "/conditions/charger-off",
      '“hours off a charger” is noted as a number in h, not as "two".',
    ],
    [
      "a field there is not",
      tread(reading("mm", 5), { color: "red" }),
      "/color",
      "There is no field color here: leave it out, or write it in the note.",
    ],
    [
      "an answer that is missing",
      { item: "electrics.horn" },
      "/answer",
      "answer is missing: give an object.",
    ],
    [
      "a firmness there is not",
      tread(reading("mm", 5), { firmness: "sure" }),
      "/firmness",
      "firmness cannot be read: give asserted, hedged or second-hand.",
    ],
    [
      "a time that is none",
      tread(reading("mm", 5), { time: "noon" }),
      "/time",
      "time is no instant in UTC: write it as 2026-05-04T15:00:00Z.",
    ],
    [
      "a value in quotation marks",
      tread(reading("mm", "5")),
      "/answer/values/0/value",
      "value cannot be read: give a plain number.",
    ],
    ["no value at all", tread(reading("mm")), "/answer/values", "List at least 1."],
    [
      "a kind of answer there is not",
      { item: "electrics.horn", answer: { kind: "guess" } },
      "/answer/kind",
      "kind cannot be read: give reading, color, grade, working, presence, choice, code, faults, not-fitted or not-seen.",
    ],
    [
      "an item written otherwise",
      { item: "Horn", answer: { kind: "working", value: "yes" } },
      "/item",
      "item is written in a way that is not read: lower-case words joined by dots, such as wheels.tread-depth.",
    ],
    [
      "a negative extent",
      faults({ found: [{ kind: "dent", extent: { value: -1, unit: "mm" } }] }),
      "/answer/found/0/extent/value",
      "Give a number of at least 0.",
    ],
    [
      "an empty code",
      { item: "identity.engine-number", answer: { kind: "code", text: " " } },
      "/answer/text",
      "Write at least 1 character.",
    ],
    [
      "denials that are no list",
      faults({ found: [], denied: 5 }),
      "/answer/denied",
      "denied cannot be read: give all or a list.",
    ],
  ])("%s", (_, finding, at, reason) => {
    expect(problemsOf(finding)).toEqual([[at, reason]]);
  });

  it.each([[5], [null], ["text"], [undefined]])("%j, which is no finding", (finding) => {
    const result = check(finding);
    expect(result.ok ? [] : result.problems).toHaveLength(1);
    expect(result.ok ? [] : result.problems[0]).toMatchObject({ at: "" });
  });

  it("everything wrong at once, each once", () => {
    const finding = tread(
      { kind: "reading", unit: "mm", values: [{ value: -1, spot: "edge" }] },
      { position: "middle", instrument: "ruler", person: "nobody", firmness: "sure" },
    );
    expect(problemsOf(finding).map(([at]) => at)).toEqual([
      "/firmness",
      "/position",
      "/answer/values/0/value",
      "/answer/values/0/spot",
      "/instrument",
      "/person",
    ]);
  });

  it("a percentage without a step in the report", () => {
    const without = { ...report, scales: report.scales.filter(({ id }) => id !== "percent") };
    const reason =
      'A percentage needs its step: add a scale "percent" with its step to the report\'s scales.';
    expect(check(grade("percent", 80), without)).toMatchObject({
      ok: false,
      problems: [{ at: "/answer/scale", reason }],
    });
    const stepless = { ...report, scales: report.scales.map(({ step: _step, ...scale }) => scale) };
    expect(check(grade("percent", 80), stepless)).toMatchObject({
      ok: false,
      problems: [{ at: "/answer/scale", reason }],
    });
  });

  it("an instrument by the unit of its accuracy, and says how to add one where there is none", () => {
    const gauge = { id: "g", name: "g", accuracy: { absolute: { value: 1, unit: "V" as const }, share: 0 } };
    const withGauge = check(tread(reading("mm", 5), { instrument: "g" }), {
      ...report,
      instruments: [gauge],
    });
    expect(withGauge.ok ? "" : withGauge.problems[0]?.reason).toContain('The accuracy of "g" is given in V');
    const withNone = check(tread(reading("mm", 5), { instrument: "g" }), { ...report, instruments: [] });
    expect(withNone).toMatchObject({
      ok: false,
      problems: [{ reason: 'The report has no instrument "g": add it to the report\'s instruments.' }],
    });
  });

  it("with item and position beside each problem", () => {
    const result = check(tread(reading("psi", 5)));
    expect(result.ok ? [] : result.problems[0]).toMatchObject({
      item: "wheels.tread-depth",
      position: "left-front",
    });
  });
});

describe("a sentence", () => {
  const wrongAnswers: readonly unknown[] = [
    { kind: "reading", unit: "psi", values: [{ value: 1e9, spot: "nowhere" }] },
    { kind: "reading", unit: "lbf.ft", values: [{ value: 1 }] },
    { kind: "choice", option: "fine", also: ["fine"] },
    { kind: "faults", found: [{ kind: "moth", spot: "nowhere" }], denied: ["moth"] },
    { kind: "grade", scale: "house", value: "splendid" },
    { kind: "working", value: "yes" },
    { kind: "not-fitted" },
    { kind: "not-seen", reason: "no-time" },
  ];

  it("names every item of the sheet by its words, and never by its id", () => {
    const ids = sheet.items.map(({ id }) => id);
    const said = sheet.items.flatMap(({ id }) =>
      ["", "nowhere"].flatMap((position) =>
        wrongAnswers.flatMap((answer) => {
          const result = check({ item: id, position, answer, conditions: { "charger-off": "two" } });
          return [...(result.ok ? [] : result.problems), ...result.advisories].map(({ reason }) => reason);
        }),
      ),
    );
    expect(said.length).toBeGreaterThan(5_000);
    expect([...new Set(said)].filter((reason) => ids.some((id) => reason.includes(id)))).toEqual([]);
  });
});
