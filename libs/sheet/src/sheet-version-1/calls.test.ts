import { describe, expect, test } from "vitest";
import { Sheet } from "@evenhand/shared/sheet";
import type { Item } from "@evenhand/shared/sheet";
import type { Answer } from "@evenhand/shared/answer";
import { isBadCall } from "@evenhand/shared/severity";
import { callOf } from "../call/index.ts";
import type { CallContext } from "../call/index.ts";
import { yardsticks } from "../version-1/yardsticks.ts";
import { sheetVersion1 } from "./index.ts";

const faultKinds = new Map(sheetVersion1.faultKinds.map((kind) => [kind.id, kind]));

function itemOf(id: string): Item {
  const item = sheetVersion1.items.find((each) => each.id === id);
  if (item === undefined) throw new Error(`the sheet has no ${id}`);
  return item;
}

const call = (id: string, answer: Answer, context: CallContext = {}) =>
  callOf(answer, itemOf(id), { faultKinds, ...context });

const read = (value: number, unit: Extract<Answer, { kind: "reading" }>["unit"]): Answer => ({
  kind: "reading",
  unit,
  values: [{ value }],
});
const chosen = (option: string, ...also: string[]): Answer => ({
  kind: "choice",
  option,
  ...(also.length === 0 ? {} : { also }),
});
const fault = (kind: string, value?: number, spot?: string): Answer => ({
  kind: "faults",
  found: [
    {
      kind,
      ...(value === undefined ? {} : { extent: { value, unit: "mm" as const } }),
      ...(spot === undefined ? {} : { spot }),
    },
  ],
  denied: [],
});
const working = (value: "yes" | "no" | "intermittent"): Answer => ({ kind: "working", value });

const typical = (item: Item) => {
  const { reading } = item;
  const position = item.positions === "corners-and-spare" ? "left-front" : "";
  return reading?.typical === undefined
    ? "no-yardstick"
    : callOf({ kind: "reading", unit: reading.unit, values: [{ value: reading.typical }] }, item, {
        position,
        form: { systemVolts: 12 },
      });
};

const drifts = ({ reading, choice }: Item) =>
  reading?.dayToDay !== undefined || choice?.drifting !== undefined;

describe("every answer has a call", () => {
  const readings = sheetVersion1.items.filter(({ reading }) => reading !== undefined);

  test.each(readings.map((item) => [item.id, item] as const))(
    "%s has a limit, an alarm figure or the reason why none can be",
    (_, { reading }) => {
      const figures = (reading?.limits.length ?? 0) + (reading?.alarms.length ?? 0);
      expect(figures > 0).toBe(reading?.noAlarmBecause === undefined);
    },
  );

  test("figures of the table belong to readings of the sheet", () => {
    const known = new Set(readings.map(({ id }) => id));
    expect(Object.keys(yardsticks).filter((id) => !known.has(id))).toEqual([]);
  });

  test("an alarm figure lies where it can be passed", () => {
    const outside = readings.flatMap(({ id, reading }) =>
      (reading?.alarms ?? [])
        .filter(({ value, isReadingOf }) => {
          const [least, most] = reading?.plausible ?? [0, 0];
          return isReadingOf === undefined && (value <= least || value >= most);
        })
        .map(({ value }) => `${id} ${String(value)}`),
    );
    expect(outside).toEqual([]);
  });

  test("the reading of an ordinary sound car is good, or has no yardstick where none can be", () => {
    const judged = readings.filter(
      ({ circumstance, reading }) =>
        circumstance !== true &&
        reading?.noAlarmBecause === undefined &&
        reading?.alarms.every(({ isReadingOf }) => isReadingOf === undefined) === true,
    );
    expect(judged.length).toBeGreaterThan(25);
    expect(judged.filter((item) => typical(item) !== "good").map(({ id }) => id)).toEqual([]);
    expect(readings.filter((item) => isBadCall(typical(item))).map(({ id }) => id)).toEqual([]);
  });

  test("not known stands last in every list and is never judged", () => {
    const lists = sheetVersion1.items.flatMap(({ choice }) => (choice === undefined ? [] : [choice]));
    const last = lists.map(({ options }) => options.at(-1)).map((option) => [option?.id, option?.call]);
    expect(last).toEqual(lists.map(() => ["not-known", "no-yardstick"]));
  });

  test("a later option of an ordered choice of one answer is never judged milder", () => {
    const order = ["good", "no-yardstick", "small", "repair", "worth", "danger", "halt"];
    const milder = sheetVersion1.items.filter(({ choice }) => {
      if (choice?.ordered !== true || choice.several === true) return false;
      const ranks = choice.options.slice(0, -1).map((option) => order.indexOf(option.call));
      return ranks.some((rank, index) => index > 0 && rank < (ranks[index - 1] ?? 0));
    });
    expect(milder.map(({ id }) => id)).toEqual([]);
  });

  test("what drifts by day has an allowance or drifting options, and what is steady has none", () => {
    const compared = sheetVersion1.items.filter(
      (item) => item.circumstance !== true && item.presence === undefined,
    );
    const wrong = compared.filter((item) =>
      item.time === "drifts"
        ? item.reading?.noAlarmBecause === undefined && !drifts(item)
        : item.time === "steady" && drifts(item),
    );
    expect(wrong.map(({ id }) => id)).toEqual([]);
  });

  test("the sheet is valid by its contract, and what its data names is there", () => {
    const sheet = Sheet.parse(sheetVersion1);
    const ids = new Set(sheet.items.map(({ id }) => id));
    const sections = new Set(sheet.sections.map(({ id }) => id));
    const missing = sheet.items.flatMap((item) => {
      const { choice, reading, qualifies } = item;
      const limits = [...(reading?.limits ?? []), ...(reading?.alarms ?? [])];
      const named = limits.flatMap(({ byReading, byOption, isReadingOf }) =>
        [byReading?.item, byOption?.item, isReadingOf?.item].filter((each) => each !== undefined),
      );
      const asked = [
        ...(item.sameConditions ?? []),
        ...(item.yardstickNeeds ?? []).map(({ condition }) => condition),
        ...limits.flatMap(({ when }) => when ?? []).map(({ condition }) => condition),
        ...(reading?.sound?.when ?? []).map(({ condition }) => condition),
      ];
      const options = new Set(choice?.options.map(({ id }) => id));
      return [
        ...[...named, ...(qualifies?.items ?? [])].filter((id) => !ids.has(id)),
        ...(qualifies?.sections ?? []).filter((id) => !sections.has(id)),
        ...asked.filter((id) => !item.conditions.includes(id)),
        ...(choice?.drifting ?? []).filter((id) => !options.has(id)),
        ...(choice?.degrees ?? []).flat().filter((id) => !options.has(id)),
      ].map((each) => `${item.id}: ${each}`);
    });
    expect(missing).toEqual([]);
  });
});

describe("what an experienced inspector would call bad", () => {
  const warm = { conditions: { warm: true, "throttle-open": true } };
  const twelve = { form: { systemVolts: 12 as const } };
  const six = { form: { systemVolts: 6 as const } };
  const wheel = (inches: number): CallContext => ({
    other: (id) => (id === "interior.steering-wheel-diameter" ? read(inches, "in") : undefined),
  });

  test.each<[string, string, Answer, CallContext, string]>([
    ["a ball joint with 3.2 mm", "steering.ball-joint-play", read(3.2, "mm"), {}, "danger"],
    ["a ball joint with 0.3 mm", "steering.ball-joint-play", read(0.3, "mm"), {}, "good"],
    ["24 mil on a panel", "body.paint-thickness", read(24, "mil"), {}, "worth"],
    ["300 µm on a panel", "body.paint-thickness", read(300, "um"), {}, "no-yardstick"],
    ["wheel-bearing play of 0.25 mm", "steering.wheel-bearing-play", read(0.25, "mm"), {}, "repair"],
    ["wheel-bearing play of 2 mm", "steering.wheel-bearing-play", read(2, "mm"), {}, "danger"],
    ["oil at 5 psi", "engine.oil-pressure-idle", read(5, "psi"), {}, "worth"],
    ["wheel nuts at 12 lbf·ft", "wheels.torque", read(12, "lbf.ft"), { position: "left-front" }, "danger"],
    ["toe of 18 mm", "steering.toe", read(18, "mm"), {}, "danger"],
    ["toe of 8 mm", "steering.toe", read(8, "mm"), {}, "repair"],
    ["a short pedal", "brakes.pedal-reserve", read(15, "%"), {}, "danger"],
    ["60 psi in a tire", "wheels.pressure", read(60, "psi"), { position: "left-front" }, "danger"],
    ["61 psi in the spare", "wheels.pressure", read(61, "psi"), { position: "spare" }, "small"],
    [
      "a hot tire is not judged",
      "wheels.pressure",
      read(60, "psi"),
      { position: "left-front", conditions: { "tire-cold": false } },
      "no-yardstick",
    ],
    ["60 psi of compression", "engine.compression", read(60, "psi"), warm, "worth"],
    ["95 psi of compression", "engine.compression", read(95, "psi"), warm, "no-yardstick"],
    [
      "a cold engine's 60 psi",
      "engine.compression",
      read(60, "psi"),
      { conditions: { warm: false } },
      "no-yardstick",
    ],
    ["leak-down of 34 %", "engine.leak-down", read(34, "%"), {}, "worth"],
    ["12.0 V at rest", "electrics.volts-rest", read(12, "V"), twelve, "small"],
    ["6.28 V at rest of 6 V", "electrics.volts-rest", read(6.28, "V"), six, "good"],
    ["6.28 V at rest of 12 V", "electrics.volts-rest", read(6.28, "V"), twelve, "repair"],
    [
      "just off the charger",
      "electrics.volts-rest",
      read(13, "V"),
      { ...twelve, conditions: { "charger-off": 0.5 } },
      "no-yardstick",
    ],
    [
      "a generator at idle",
      "electrics.volts-charging",
      read(12.4, "V"),
      { ...twelve, conditions: { "engine-speed": 600 } },
      "no-yardstick",
    ],
    ["free play of 2.3 in", "steering.free-play", read(2.3, "in"), wheel(16), "danger"],
    ["free play of 2.3 in, a wheel of 20 in", "steering.free-play", read(2.3, "in"), wheel(20), "good"],
    ["2 mm of lining", "brakes.lining-thickness", read(2, "mm"), {}, "repair"],
    [
      "a worn drum",
      "brakes.drum-diameter",
      read(9.12, "in"),
      { position: "left-rear", other: () => read(9.06, "in") },
      "danger",
    ],
    [
      "a drum without a figure",
      "brakes.drum-diameter",
      read(9.12, "in"),
      { position: "left-rear" },
      "no-yardstick",
    ],
    ["a door that hangs 8 mm", "doors.drop", read(8, "mm"), {}, "repair"],
    ["a gap of 14 mm", "gaps.width-bottom", read(14, "mm"), {}, "worth"],
    [
      "tires over ten years",
      "wheels.tire-age",
      chosen("over-ten-years"),
      { position: "left-front" },
      "danger",
    ],
    ["a spare over ten years", "wheels.tire-age", chosen("over-ten-years"), { position: "spare" }, "small"],
    ["another engine", "identity.originality", chosen("other-type"), {}, "worth"],
    ["another name on the title", "identity.title-holder", chosen("other-name"), {}, "halt"],
    ["an open lien", "identity.lien", chosen("open"), {}, "halt"],
    ["a plate put on again", "identity.plate-fixing", chosen("other-fixing"), {}, "halt"],
    ["a salvage brand", "identity.title-brand", chosen("salvage"), {}, "halt"],
    ["a pedal that sinks", "brakes.pedal-sink", chosen("slow"), {}, "danger"],
    ["low oil", "engine.oil", chosen("low"), {}, "small"],
    ["milky oil, low too", "engine.oil", chosen("low", "milky"), {}, "worth"],
    ["not known", "identity.lien", chosen("not-known"), {}, "no-yardstick"],
    ["a fuel leak", "driveline.leaks-before", chosen("weep"), { position: "fuel" }, "danger"],
    ["a weep of oil", "driveline.leaks-before", chosen("weep"), { position: "oil-pan" }, "small"],
    ["a stop lamp out", "electrics.lamps", working("no"), { position: "left-stop" }, "danger"],
    ["a dome lamp out", "electrics.lamps", working("no"), { position: "interior" }, "small"],
    ["a door that opens by itself", "doors.latches", working("no"), { position: "left-rear-door" }, "danger"],
    [
      "a chip of 2 mm in the glass",
      "brightwork.glass-faults",
      fault("chip", 2),
      { position: "windshield" },
      "small",
    ],
    [
      "a crack before the driver",
      "brightwork.glass-faults",
      fault("crack", 200),
      { position: "windshield" },
      "danger",
    ],
    [
      "a crack in a side window",
      "brightwork.glass-faults",
      fault("crack", 200),
      { position: "left-front-window" },
      "repair",
    ],
    [
      "a hole in a frame rail",
      "underbody.rails",
      fault("perforation", 20),
      { position: "left-rear" },
      "danger",
    ],
    [
      "a hole in the floor",
      "underbody.floor-pans",
      fault("perforation", 40),
      { position: "left-front" },
      "worth",
    ],
    ["a hole in a rocker", "body.faults", fault("perforation", 50), { position: "left-rocker" }, "danger"],
    ["a cracked tire", "wheels.tire-faults", fault("crack", 20), { position: "left-front" }, "danger"],
    ["a cracked spare", "wheels.tire-faults", fault("crack", 20), { position: "spare" }, "repair"],
    ["a swollen brake hose", "brakes.hoses", fault("swelling"), { position: "left-front" }, "danger"],
    [
      "a rusty brake line",
      "driveline.lines",
      fault("corrosion", 30),
      { position: "brake-line-rear" },
      "danger",
    ],
    ["a cracked wheel", "wheels.wheel-faults", fault("crack", 15), { position: "left-front" }, "danger"],
    ["a torn seat", "interior.seat-faults", fault("tear", 60), { position: "left-front" }, "small"],
    [
      "a build sheet nobody promised",
      "identity.build-sheet",
      { kind: "presence", value: "absent" },
      {},
      "good",
    ],
    [
      "an engine that was warmed",
      "visit.warmed-beforehand",
      { kind: "presence", value: "present" },
      {},
      "repair",
    ],
    ["the light of the day", "visit.light", chosen("indoor-dim"), {}, "no-yardstick"],
  ])("%s", (_, id, answer, context, wanted) => {
    expect(call(id, answer, context)).toBe(wanted);
  });

  test("every kind of fault at every item that asks for it is called bad", () => {
    const asked = sheetVersion1.items.flatMap((item) =>
      (item.faults?.kinds ?? []).map((kind) => [item.id, kind] as const),
    );
    expect(asked.length).toBeGreaterThan(150);
    expect(asked.filter(([id, kind]) => !isBadCall(call(id, fault(kind, 10))))).toEqual([]);
  });
});
