import { describe, expect, it } from "vitest";
import type { Answer } from "@evenhand/shared/answer";
import type { Comparison, Entry } from "@evenhand/shared/comparison";
import type { Finding } from "@evenhand/shared/finding";
import type { Instrument, VehicleForm } from "@evenhand/shared/report";
import type { UnitSymbol } from "@evenhand/shared/unit";
import { form, inspection, sheet, statement } from "../../testing/small-reports.ts";
import { finding } from "../../testing/small-reports.ts";
import { analyze } from "./index.ts";

/** Everyday situations in plain words, each through the whole analysis. Invented cars; common practice, no source. */

const instruments: Instrument[] = [
  { id: "tester", name: "compression tester, screwed in", accuracy: { share: 0.02 } },
  { id: "cone", name: "compression tester, pushed in", accuracy: { share: 0.1 } },
  { id: "dial", name: "dial indicator" },
  { id: "gauge", name: "tread gauge" },
];
const four: VehicleForm = { ...form, cylinders: 4 };

const say = (item: string, answer: Answer, position = "", more: Partial<Finding> = {}): Finding =>
  finding(item, answer, { position, ...more });
const chosen = (item: string, option: string, position?: string) =>
  say(item, { kind: "choice", option }, position);
const code = (item: string, text: string, position?: string) => say(item, { kind: "code", text }, position);
const works = (item: string, value: "yes" | "no") => say(item, { kind: "working", value });
const read = (
  item: string,
  unit: UnitSymbol,
  values: readonly number[],
  position?: string,
  more?: Partial<Finding>,
) => say(item, { kind: "reading", unit, values: values.map((value) => ({ value })) }, position, more);

const compared = (
  stated: readonly Finding[],
  found: readonly Finding[],
  car: VehicleForm = form,
): Comparison => {
  const of = (report: ReturnType<typeof statement>) => ({
    ...report,
    instruments,
    vehicle: { ...report.vehicle, form: car },
  });
  return analyze(of(statement([...stated])), of(inspection([...found])), sheet);
};
const linesOf = ({ entries }: Comparison, item: string, position = ""): Entry[] =>
  entries.filter((entry) => entry.item === item && entry.position === position);
const lineOf = (comparison: Comparison, item: string, position = ""): Entry | undefined =>
  linesOf(comparison, item, position)[0];
const rulesOf = ({ crossChecks }: Comparison, rule: string) =>
  crossChecks.filter((check) => check.rule === rule);

/** What is said of a line, short. */
const said = (entry: Entry | undefined): string =>
  [entry?.outcome, entry?.severity, ...(entry?.marks ?? []), entry?.coverageOnly === true ? "folded" : ""]
    .filter((part) => part !== "" && part !== null && part !== undefined)
    .join(" ");

const warm = { conditions: { warm: true, "throttle-open": true }, instrument: "tester" };
const cylinders = (psi: readonly number[], more: Partial<Finding> = warm) =>
  psi.map((value, index) => read("engine.compression", "psi", [value, value], `cylinder-${index + 1}`, more));
const rebuilt = chosen("engine.rebuild-claim", "rebuilt");

describe("an engine called rebuilt", () => {
  it("with 150, 140, 155 and 90 in its cylinders is not, and the low cylinder is named", () => {
    const comparison = compared([rebuilt], cylinders([150, 140, 155, 90]), four);
    expect(said(lineOf(comparison, "engine.rebuild-claim"))).toBe("differ worth by-figures");
    expect(said(lineOf(comparison, "engine.compression", "cylinder-4"))).toContain("unstated worth");
    expect(lineOf(comparison, "engine.compression", "cylinder-1")?.outcome).not.toBe("unstated");
  });

  it("with 60 all round is tired, however even it is", () => {
    const comparison = compared([rebuilt], cylinders([60, 60, 60, 60]), four);
    expect(said(lineOf(comparison, "engine.rebuild-claim"))).toBe("differ worth by-figures");
    for (const position of ["cylinder-1", "cylinder-4"]) {
      expect(said(lineOf(comparison, "engine.compression", position))).toContain("unstated worth");
    }
  });
});

it("one wheel turned for the ratio: 1.77 turns are 3.54 with the other wheel held, and never 7.10", () => {
  const turns = read("driveline.axle-turns", "1", [1.77, 1.77], "", { conditions: { "both-wheels": false } });
  const comparison = compared([read("driveline.axle-ratio", "1", [3.54])], [turns]);
  const figures = rulesOf(comparison, "turns-ratio").flatMap((check) =>
    Object.values(check.figures).map(({ value }) => value),
  );
  expect(figures.filter((value) => value > 5)).toEqual([]);
  expect(lineOf(comparison, "driveline.axle-ratio")?.outcome).not.toBe("differ");
});

it("a silent dealer with tires of eighteen years: every one is shown as dangerous, the spare as a trifle", () => {
  const tires = ["left-front", "right-front", "left-rear", "right-rear"];
  const comparison = compared(
    [],
    tires.map((position) => code("wheels.tire-identification", "U2LL LMLR 1208", position)),
  );
  for (const position of tires) {
    expect(said(lineOf(comparison, "wheels.tire-identification", position))).toBe(
      "unstated danger by-figures",
    );
  }
});

it("a car that was not lifted: what was said of the underside is unseen, at what it covers, and not agreed", () => {
  const none: Answer = { kind: "faults", found: [], denied: "all" };
  const comparison = compared(
    [say("underbody.rails", none, "left-front"), chosen("underbody.lift-points", "sound", "left-front")],
    [say("underbody.rails", { kind: "not-seen", reason: "not-reached" }, "left-front")],
  );
  expect(said(lineOf(comparison, "underbody.rails", "left-front"))).toBe("unseen danger");
  expect(said(lineOf(comparison, "underbody.lift-points", "left-front"))).toBe("unseen danger");
});

it("five digits and a higher entry on an old paper: the miles cannot be actual", () => {
  const five = { conditions: { "odometer-digits": 5 } };
  const comparison = compared(
    [chosen("identity.odometer-disclosure", "actual"), read("identity.odometer", "mi", [61_240], "", five)],
    [
      read("identity.odometer", "mi", [61_244], "", five),
      read("identity.odometer-on-papers", "mi", [97_410], "entry-1", {
        conditions: { "entry-date": "1986-03-02" },
      }),
    ],
  );
  expect(said(lineOf(comparison, "identity.odometer-disclosure"))).toBe("differ worth by-figures");
  expect(lineOf(comparison, "identity.odometer-on-papers", "entry-1")?.coverageOnly).toBeUndefined();
});

it("compression cold against hot: not set against each other, and neither is called sound for it", () => {
  const cold = { conditions: { warm: false, "throttle-open": true }, instrument: "tester" };
  const comparison = compared(cylinders([150]), cylinders([128], cold));
  expect(lineOf(comparison, "engine.compression", "cylinder-1")).toMatchObject({
    outcome: "incomparable",
    reason: "other-conditions",
    calls: { a: "good", b: "no-yardstick" },
  });
});

const joint = (value: number, loaded: boolean) =>
  read("steering.ball-joint-play", "mm", [value, value], "left-lower", {
    conditions: { loaded },
    instrument: "dial",
  });

it("cannot be compared", () => {
  expect(
    said(lineOf(compared([joint(0.2, true)], [joint(0.9, false)]), "steering.ball-joint-play", "left-lower")),
  ).toMatch(/^incomparable/);
});

describe("a ball joint read loaded against unloaded", () => {
  it("is dangerous past the alarm all the same", () => {
    const line = lineOf(
      compared([joint(0.2, true)], [joint(3.2, false)]),
      "steering.ball-joint-play",
      "left-lower",
    );
    expect(said(line)).toMatch(/^incomparable danger/);
  });
});

const dentAt = (position: string): Finding =>
  say(
    "body.faults",
    {
      kind: "faults",
      found: [{ kind: "dent", spot: "middle-rear", extent: { value: 40, unit: "mm" } }],
      denied: [],
    },
    position,
  );
const noFaultsAt = (position: string) =>
  say("body.faults", { kind: "faults", found: [], denied: "all" }, position);

it("a dent disclosed on the other side: in doubt, perhaps left for right, one line, and nobody accused", () => {
  const comparison = compared(
    [dentAt("left-front-fender"), noFaultsAt("right-front-fender")],
    [noFaultsAt("left-front-fender"), dentAt("right-front-fender")],
  );
  expect(said(lineOf(comparison, "body.faults", "right-front-fender"))).toContain("doubtful");
  expect(lineOf(comparison, "body.faults", "right-front-fender")?.marks).toContain("perhaps-other-side");
  const open = comparison.entries.filter(
    ({ item, outcome }) => item === "body.faults" && ["differ", "doubtful", "unstated"].includes(outcome),
  );
  expect(open).toHaveLength(1);
});

const rust = (kind: string, value: number) =>
  say(
    "body.faults",
    { kind: "faults", found: [{ kind, spot: "lower-rear", extent: { value, unit: "mm" } }], denied: [] },
    "left-rocker",
  );

it("bubbles stated and corrosion found at the same place: agreed, and bad", () => {
  const comparison = compared([rust("blister", 40)], [rust("corrosion", 45)]);
  expect(linesOf(comparison, "body.faults", "left-rocker").map(said)).toEqual([
    expect.stringMatching(/^agree .*both-bad/),
  ]);
});

it("factory air conditioning that was taken out: claimed to work it differs, said by both it is no question", () => {
  const gone = say("electrics.air-conditioning", { kind: "not-fitted" });
  expect(
    said(
      lineOf(compared([works("electrics.air-conditioning", "yes")], [gone]), "electrics.air-conditioning"),
    ),
  ).toMatch(/^differ/);
  expect(said(lineOf(compared([gone], [gone]), "electrics.air-conditioning"))).toBe("agree not-fitted");
});

it("another number with other rivets: stops the money, by the number and by the plate", () => {
  const comparison = compared(
    [code("identity.vin", "AM58-10442", "main-plate"), chosen("identity.plate-fixing", "original")],
    [code("identity.vin", "AM57-20917", "main-plate"), chosen("identity.plate-fixing", "other-fixing")],
  );
  expect(said(lineOf(comparison, "identity.vin", "main-plate"))).toMatch(/^differ halt/);
  expect(said(lineOf(comparison, "identity.plate-fixing"))).toMatch(/^differ halt/);
  expect(comparison.order.slice(0, 2).map((index) => comparison.entries[index]?.severity)).toEqual([
    "halt",
    "halt",
  ]);
});

it("a silent dealer and a car hit at the front, with another engine and a filled roof: each is a line of its own", () => {
  const comparison = compared(
    [],
    [
      read("underbody.wheelbase", "mm", [2895, 2896], "left"),
      read("underbody.wheelbase", "mm", [2878, 2879], "right"),
      chosen("identity.originality", "other-type", "engine"),
      read("body.paint-thickness", "mil", [24, 25, 24], "roof"),
    ],
  );
  for (const [item, position] of [
    ["underbody.wheelbase", "right"],
    ["identity.originality", "engine"],
    ["body.paint-thickness", "roof"],
  ] as const) {
    const line = lineOf(comparison, item, position);
    expect(said(line)).toMatch(/^unstated worth/);
    expect(comparison.order.map((index) => comparison.entries[index])).toContain(line);
  }
});

const tread = (...values: number[]) =>
  read("wheels.tread-depth", "1/32in", values, "left-front", { instrument: "gauge" });

it("tread at the limit: exactly 2/32 in passes, a hair under fails, and neither is agreed with 8/32 in", () => {
  const at = lineOf(compared([tread(2, 2, 2)], [tread(2, 2, 2)]), "wheels.tread-depth", "left-front");
  expect(at?.limits?.[0]?.b?.plain).toBe("pass");
  expect(at?.calls.b).toBe("good");
  const under = lineOf(
    compared([tread(2.2, 2.2, 2.2)], [tread(1.9, 1.9, 1.9)]),
    "wheels.tread-depth",
    "left-front",
  );
  expect(said(under)).toBe("doubtful danger over-limit");
  expect(
    lineOf(compared([tread(8, 8, 8)], [tread(1.9, 1.9, 1.9)]), "wheels.tread-depth", "left-front")?.outcome,
  ).toBe("differ");
});

it("60 psi in a tire on both sides: agreed, both bad, dangerous, and first in the order", () => {
  const tire = read("wheels.pressure", "psi", [60], "left-front", { conditions: { "tire-cold": true } });
  const comparison = compared([tire], [tire]);
  expect(said(lineOf(comparison, "wheels.pressure", "left-front"))).toBe("agree danger both-bad over-limit");
  expect(comparison.entries[comparison.order[0] ?? -1]?.item).toBe("wheels.pressure");
});

const readWith = (instrument: string) => cylinders([118], { ...warm, instrument });

const outcomeWith = (instrument: string) =>
  lineOf(compared(cylinders([150]), readWith(instrument)), "engine.compression", "cylinder-1")?.outcome;

it("compression pushed in against screwed in: the coarse tester accuses nobody, the fine one does", () => {
  expect(["consistent", "doubtful"]).toContain(outcomeWith("cone"));
  expect(outcomeWith("tester")).toBe("differ");
});
