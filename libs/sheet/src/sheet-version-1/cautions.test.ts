import { describe, expect, it } from "vitest";
import { sheetVersion1 as sheet } from "./index.ts";

const cautionsOf = (id: string) => sheet.items.find((item) => item.id === id)?.cautions ?? [];

/** What can hurt someone, and the tasks it can hurt someone at. */
describe("cautions stand where the task is", () => {
  it.each([
    ["lift-points", ["underbody.lift-points", "underbody.rails", "brakes.hoses"]],
    ["jack-alone", ["underbody.lift-points", "underbody.floor-pans", "trunk.jack"]],
    ["second-person", ["underbody.rails", "road.shifts", "road.braking"]],
    ["cranking-fuel", ["engine.compression", "electrics.volts-cranking"]],
    ["leak-down-air", ["engine.leak-down", "engine.leak-down-path"]],
    ["limited-slip", ["driveline.axle-turns", "driveline.limited-slip", "wheels.runout-lateral"]],
    ["fans-and-belts", ["engine.belts", "engine.timing", "engine.compression", "electrics.volts-charging"]],
    ["carbon-monoxide", ["engine.vacuum", "road.idle", "road.cold-start", "driveline.exhaust"]],
    [
      "lining-dust",
      ["brakes.lining-thickness", "brakes.drum-diameter", "brakes.wheel-cylinders", "visit.drums-allowed"],
    ],
    ["lead-paint", ["body.faults", "body.magnet", "body.paint-thickness", "underbody.floor-pans"]],
    [
      "leave-closed",
      [
        "interior.steering-wheel",
        "doors.lid-supports",
        "steering.springs",
        "steering.dampers",
        "wheels.wheel-faults",
      ],
    ],
    ["aged-tires", ["wheels.tire-identification", "wheels.tire-faults", "road.vibration"]],
    ["first-braking", ["brakes.pedal-sink", "brakes.pull", "road.braking"]],
    ["refrigerant", ["electrics.air-conditioning", "electrics.vent-temperature"]],
    [
      "battery",
      [
        "electrics.volts-rest",
        "electrics.volts-cranking",
        "electrics.volts-charging",
        "visit.battery-on-charger",
      ],
    ],
    ["electric-conversion", ["engine.wiring", "electrics.volts-rest"]],
    ["prop-hood", ["engine.oil", "engine.compression", "doors.lid-latches", "trunk.floor"]],
    ["cold-lamps", ["driveline.tank-inside", "driveline.fuel-hoses", "driveline.lines", "engine.fuel-smell"]],
    ["road-consent", ["road.shifts", "road.gps-speed", "brakes.pull"]],
    [
      "hot-coolant",
      ["engine.coolant", "engine.combustion-gas", "engine.radiator", "road.temperature-after-20"],
    ],
    [
      "local-law",
      [
        "wheels.tread-depth",
        "brakes.pedal-reserve",
        "brakes.lining-thickness",
        "steering.free-play",
        "steering.toe",
      ],
    ],
    ["fuel-leak", ["engine.fuel-smell", "driveline.fuel-hoses", "driveline.leaks-before"]],
  ])("%s", (caution, items) => {
    expect(sheet.cautions.map(({ id }) => id)).toContain(caution);
    expect(items.filter((id) => !cautionsOf(id).includes(caution))).toEqual([]);
  });

  it("has fourteen cautions besides these", () => {
    expect(sheet.cautions).toHaveLength(36);
  });

  it.each([
    ["lift", ["lift-points", "jack-alone", "second-person"]],
    ["road", ["road-consent", "second-person", "aged-tires", "first-braking"]],
  ] as const)("on everything that needs the %s", (need, cautions) => {
    const bare = sheet.items.filter(
      (item) => item.needs.includes(need) && cautions.some((id) => !item.cautions.includes(id)),
    );
    expect(bare.map(({ id }) => id)).toEqual([]);
  });

  it("says beside every in-use limit of the regulation that local law decides", () => {
    const silent = sheet.items.filter(
      ({ reading, cautions }) =>
        reading?.limits.some(({ source }) => source.kind === "regulation") && !cautions.includes("local-law"),
    );
    expect(silent.map(({ id }) => id)).toEqual([]);
  });

  it.each([
    ["lift-points", /before lifting/],
    ["jack-alone", /[Nn]ever.*jack alone/],
    ["cranking-fuel", /ignition and fuel.*spray fuel/],
    ["leak-down-air", /turns the crank.*hands and tools off/],
    ["limited-slip", /[Nn]ever drive one raised wheel/],
    ["carbon-monoxide", /only with exhaust extraction/],
    ["lining-dust", /[Nn]ever blow out or dry-brush.*asbestos/],
    ["lead-paint", /[Nn]ever sand.*lead/],
    ["leave-closed", /airbags, gas dampers, compressed coil springs, hydropneumatic suspension, split rims/],
    ["first-braking", /walking pace.*stop if the pedal sinks/],
    ["refrigerant", /[Nn]ever vent/],
    [
      "road-consent",
      /written consent, insurance and plates.*every place of the gate looked at.*not seen is not sound/,
    ],
    ["local-law", /no roadworthiness certificate.*local inspection law.*licensed mechanic/],
  ])("%s says what not to do", (id, text) => {
    expect(sheet.cautions.find((caution) => caution.id === id)?.text).toMatch(text);
  });
});
