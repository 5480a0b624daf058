import { isBadCall } from "@evenhand/shared/severity";
import { convert, dimensionOf } from "@evenhand/measurement/unit";
import { Sheet } from "@evenhand/shared/sheet";
import { describe, expect, it } from "vitest";
import { sheetVersion1 as sheet } from "./index.ts";

const idsOf = (list: readonly { id: string }[]) => list.map(({ id }) => id);
const readings = sheet.items.flatMap((item) =>
  item.reading === undefined ? [] : [{ id: item.id, item, spec: item.reading }],
);

function frozenAll(value: unknown): boolean {
  if (typeof value !== "object" || value === null) return true;
  return Object.isFrozen(value) && Object.values(value).every(frozenAll);
}

const used = (values: (string | null | undefined)[]) =>
  new Set(values.filter((value) => value !== undefined && value !== null));

const strict = (consequence: string) => consequence === "safety" || consequence === "structure";

describe("the sheet as data", () => {
  it("is what its contract reads, with nothing left to default", () => {
    expect(Sheet.parse(sheet)).toEqual(sheet);
  });

  it("cannot be changed, at any depth", () => {
    expect(frozenAll(sheet)).toBe(true);
  });

  it.each([
    ["sections", sheet.sections],
    ["position sets", sheet.positionSets],
    ["drawings", sheet.drawings],
    ["fault kinds", sheet.faultKinds],
    ["cautions", sheet.cautions],
    ["stations", sheet.stations],
    ["conditions", sheet.conditions],
    ["cost rows", sheet.costRows],
    ["items", sheet.items],
    ...sheet.positionSets.map((set): [string, readonly { id: string }[]] => [
      `positions of ${set.id}`,
      set.positions,
    ]),
    ...sheet.drawings.map((drawing): [string, readonly { id: string }[]] => [
      `cells of ${drawing.id}`,
      drawing.cells,
    ]),
  ])("names each of its %s once", (_, list) => {
    expect(new Set(idsOf(list)).size).toBe(list.length);
  });

  it.each([
    ["position sets", sheet.positionSets, used(sheet.items.map(({ positions }) => positions))],
    ["cautions", sheet.cautions, used(sheet.items.flatMap(({ cautions }) => cautions))],
    ["cost rows", sheet.costRows, used(sheet.items.map(({ costRow }) => costRow))],
    ["conditions", sheet.conditions, used(sheet.items.flatMap(({ conditions }) => conditions))],
    ["fault kinds", sheet.faultKinds, used(sheet.items.flatMap(({ faults }) => faults?.kinds))],
    ["drawings", sheet.drawings, used(sheet.items.map(({ faults }) => faults?.drawing))],
    ["sections", sheet.sections, used(sheet.items.map(({ section }) => section))],
    [
      "stations",
      sheet.stations,
      used([
        ...sheet.positionSets.flatMap(({ positions }) => positions.map(({ station }) => station)),
        ...sheet.sections.map(({ station }) => station),
      ]),
    ],
  ])("uses all its %s and no others", (_, list, uses) => {
    expect([...uses].toSorted()).toEqual(idsOf(list).toSorted());
  });

  it("lists each cost row under a section, and numbers sections and stations without holes", () => {
    const sections = idsOf(sheet.sections);
    expect(sheet.costRows.filter(({ section }) => !sections.includes(section))).toEqual([]);
    expect(sheet.sections.map(({ number }) => number)).toEqual(sections.map((_, index) => index));
    for (const plan of ["outside", "underneath"]) {
      const numbers = sheet.stations.filter((station) => station.plan === plan).map(({ number }) => number);
      expect(numbers).toEqual(numbers.map((_, index) => index + 1));
    }
  });

  it("gives every place on the car's outside and underside a station", () => {
    const sets = [
      "panels",
      "lower-panels",
      "gaps",
      "glasses",
      "corners",
      "corners-under",
      "floor-quarters",
      "rails",
    ];
    const without = sheet.positionSets
      .filter(({ id }) => sets.includes(id))
      .flatMap(({ positions }) => positions.filter(({ station }) => station === undefined));
    expect(without).toEqual([]);
  });
});

describe("every item", () => {
  it("stands in its section, and sections stand in order", () => {
    const order = idsOf(sheet.sections);
    expect(sheet.items.filter(({ id, section }) => id.split(".")[0] !== section)).toEqual([]);
    const places = sheet.items.map(({ section }) => order.indexOf(section));
    expect(places).toEqual(places.toSorted((a, b) => a - b));
  });

  it("carries the particulars of its own kind and of no other", () => {
    const kinds = ["reading", "color", "grade", "working", "presence", "choice", "code", "faults"] as const;
    const wrong = sheet.items.filter((item) =>
      kinds.some((kind) => (item[kind] !== undefined) !== (kind === item.answer)),
    );
    expect(idsOf(wrong)).toEqual([]);
  });

  it("says how in a sentence, and is strict where safety or structure hangs on it", () => {
    expect(idsOf(sheet.items.filter(({ how }) => !/^[A-Z].{8,}\.$/.test(how)))).toEqual([]);
    expect(idsOf(sheet.items.filter((item) => item.strict !== strict(item.consequence)))).toEqual([]);
  });

  it("asks more in all than anybody does in a day", () => {
    const core = sheet.items.filter((item) => item.core);
    const minutes = (items: typeof core) => items.reduce((sum, item) => sum + item.minutes, 0);
    expect(sheet.items.length).toBeGreaterThanOrEqual(220);
    expect(core.length).toBeGreaterThanOrEqual(65);
    expect(minutes(sheet.items)).toBeGreaterThan(480);
  });

  it("has a priced row unless nothing is put right: papers, identity, or a figure that others are judged by", () => {
    const unpriced = sheet.items.filter(
      ({ costRow, consequence }) =>
        costRow === null && consequence !== "papers" && consequence !== "identity",
    );
    expect(idsOf(unpriced)).toEqual([
      ...["engine-cold", "battery-on-charger", "warmed-beforehand", "washed-beforehand"].map(
        (id) => `visit.${id}`,
      ),
      "body.panel-material",
      "interior.steering-wheel-diameter",
      ...["system-voltage", "polarity", "charger-kind"].map((id) => `electrics.${id}`),
      ...["axle-ratio-tag", "axle-turns", "ring-teeth", "pinion-teeth"].map((id) => `driveline.${id}`),
      "brakes.lining-kind",
      "brakes.drum-cast-figure",
      "brakes.circuit",
      ...["pressure", "fixing-kind", "torque", "rollout"].map((id) => `wheels.${id}`),
      "engine.bore",
      "engine.stroke",
      ...[
        "gear",
        "gear-ratio",
        "lock-up",
        "revolutions",
        "indicated-revolutions",
        "indicated-speed",
        "gps-speed",
      ].map((id) => `road.${id}`),
    ]);
  });

  it.each(
    sheet.items.filter(({ choice }) => choice !== undefined).map((item) => [item.id, item.choice] as const),
  )("ends the options of %s with not known, which is never bad", (_, choice) => {
    const options = choice?.options ?? [];
    expect(options.map(({ id }) => id).indexOf("not-known")).toBe(options.length - 1);
    expect(options.at(-1)?.call).toBe("no-yardstick");
    expect(isBadCall(options[0]?.call)).toBe(false);
    expect(new Set(idsOf(options)).size).toBe(options.length);
  });

  it("orders options so that what is bad claims less than what is not", () => {
    const mixed = sheet.items.filter(({ choice }) => {
      if (choice === undefined || !choice.ordered) return false;
      const bad = choice.options.slice(0, -1).map(({ call }) => isBadCall(call));
      return bad.some((isBad, index) => isBad && bad.slice(index).includes(false));
    });
    expect(idsOf(mixed)).toEqual([]);
  });
});

describe("every reading item", () => {
  it.each(readings)("$id is written in units of one dimension that convert there and back", ({ spec }) => {
    for (const unit of spec.alsoIn) {
      expect(dimensionOf(unit)).toBe(dimensionOf(spec.unit));
      expect(unit).not.toBe(spec.unit);
      const back = convert(convert(spec.typical ?? Number.NaN, spec.unit, unit), unit, spec.unit);
      expect(back).toBeCloseTo(spec.typical ?? Number.NaN, 9);
    }
  });

  it.each(readings)("$id can read its typical value and its limits, and lies in reach", ({ spec }) => {
    const [low, high] = spec.plausible;
    const values = [spec.typical ?? Number.NaN, spec.target ?? low, ...spec.limits.map(({ value }) => value)];
    expect(values.every((value) => value >= low && value <= high)).toBe(true);
    expect(high - low).toBeGreaterThan(4 * spec.delta.absolute);
  });

  it.each(readings)("$id is judged worse by eye than with its ordinary instrument", ({ spec }) => {
    const at = (accuracy: { absolute: number; share: number }) =>
      accuracy.absolute + accuracy.share * Math.abs(spec.typical ?? 0);
    expect(at(spec.byEye)).toBeGreaterThan(at(spec.instrument.accuracy));
  });

  it("passes the typical value at every limit", () => {
    const failing = readings.filter(({ spec }) =>
      spec.limits.some(({ side, value }) =>
        side === "min" ? (spec.typical ?? 0) < value : (spec.typical ?? 0) > value,
      ),
    );
    expect(idsOf(failing)).toEqual([]);
  });

  it("names the source of every limit", () => {
    const limits = readings.flatMap(({ id, spec }) =>
      spec.limits.map(({ side, value, source }) => `${id} ${side} ${value}: ${source.kind}`),
    );
    expect(limits).toEqual([
      "steering.free-play max 2: regulation",
      "steering.linkage-play max 0.25: regulation",
      "brakes.pedal-reserve min 20: regulation",
      "brakes.lining-thickness min 0.03125: regulation",
      "wheels.tread-depth min 2: regulation",
      "wheels.runout-lateral max 0.125: regulation",
      "wheels.runout-radial max 0.125: regulation",
    ]);
  });

  it("lets what depends on the moment drift, so that another day's figure is no contradiction", () => {
    const drifting = new Set(sheet.items.filter(({ time }) => time === "drifts").map(({ id }) => id));
    const moment = [
      "wheels.pressure",
      "electrics.volts-rest",
      "road.idle",
      "road.gps-speed",
      "road.indicated-speed",
      "road.revolutions",
      "road.indicated-revolutions",
      "road.gear",
      "road.temperature-after-20",
      "engine.oil",
      "engine.coolant",
      "identity.odometer-on-papers",
    ];
    expect(moment.filter((id) => !drifting.has(id))).toEqual([]);
    expect(
      ["wheels.tread-depth", "identity.odometer", "body.faults", "brakes.lining-thickness"].filter((id) =>
        drifting.has(id),
      ),
    ).toEqual([]);
  });

  it("allows use only where a reading rises with it, and names at least the spots it asks for", () => {
    const unfounded = readings.filter(
      ({ item, spec }) => spec.riseAllowed !== undefined && item.time !== "only-rises",
    );
    expect(idsOf(unfounded)).toEqual([]);
    const short = readings.filter(({ spec }) => spec.spots.length > 0 && spec.spots.length < spec.ask.spots);
    expect(idsOf(short)).toEqual([]);
  });
});
