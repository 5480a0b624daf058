import { describe, expect, it } from "vitest";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import type { FindingInput } from "@evenhand/shared/finding";
import { choice, code, reading, report } from "../../testing/small-report.ts";
import { GATE_ITEMS, gatePlaces, roadDoubts, roadGate } from "./index.ts";

const sheet = compileSheet(sheetVersion1);
const gateOf = (...findings: FindingInput[]) =>
  roadGate(report(findings, { kind: "inspection" }), sheet).map(({ item, position }) => [item, position]);
const faults = (item: string, kind: string, position = ""): FindingInput => ({
  item,
  position,
  answer: { kind: "faults", found: [{ kind }], denied: [] },
});
const lamp = (position: string, value: "no" | "intermittent"): FindingInput => ({
  item: "electrics.lamps",
  position,
  answer: { kind: "working", value },
});

describe("the gate to the road", () => {
  it("names items of the sheet and no other", () => {
    expect(GATE_ITEMS.filter((item) => !sheet.items.has(item))).toEqual([]);
  });

  it.each<[string, FindingInput]>([
    ["a pedal that falls slowly", choice("brakes.pedal-sink", "slow")],
    ["a spongy pedal", choice("brakes.pedal-feel", "spongy")],
    ["a pedal that rises when pumped", choice("brakes.pedal-feel", "pumps-up")],
    ["a cracked brake hose", faults("brakes.hoses", "crack", "left-front")],
    ["a frayed brake cable", choice("brakes.rods", "seized")],
    ["a rusted line", faults("driveline.lines", "corrosion", "brake")],
    ["a drip of fuel", choice("driveline.leaks-before", "drip", "fuel")],
    ["a fuel pump that leaks", choice("engine.fuel-pump", "leaks")],
    ["a wheel cylinder that drips", choice("brakes.wheel-cylinders", "drip", "left-rear")],
    ["a loose tie-rod end", choice("steering.tie-rod-ends", "loose", "left-outer")],
    ["a loose pitman arm", choice("steering.idler-and-pitman", "loose", "pitman-arm")],
    ["king pins past the alarm", reading("steering.king-pin-play", "mm", [9, 9], "left")],
    ["stretched studs", choice("wheels.fixings", "worn", "left-front")],
    ["no tread", reading("wheels.tread-depth", "1/32in", [1, 1, 1], "left-front")],
    ["a bulge", faults("wheels.tire-faults", "bulge", "left-front")],
    ["a stop lamp out", lamp("left-stop", "no")],
    ["a stop lamp that comes and goes", lamp("right-stop", "intermittent")],
    ["a soft lift point", choice("underbody.lift-points", "soft", "left-rear")],
    ["a hole in the rail over the axle", faults("underbody.rear-rails-over-axle", "perforation", "left")],
    ["a cracked tower", faults("underbody.towers", "crack", "left-front")],
  ])("is closed by %s, at its place", (_, finding) => {
    expect(gateOf(finding)).toEqual([[finding.item, finding.position ?? ""]]);
  });

  it.each<[string, FindingInput]>([
    ["a plate lamp", lamp("plate", "no")],
    ["a head lamp", lamp("left-low-beam", "no")],
    ["a weep at the gearbox", choice("driveline.leaks-before", "weep", "gearbox")],
    ["oil that runs", choice("driveline.leaks-before", "run", "engine")],
    ["slight play of a tie-rod end", choice("steering.tie-rod-ends", "slight", "left-outer")],
    [
      "a patched lift point: it keeps the car off the lift",
      choice("underbody.lift-points", "patched", "left-rear"),
    ],
    ["a cracked spare", faults("wheels.tire-faults", "crack", "spare")],
    ["a windshield crack", faults("brightwork.glass-faults", "crack", "windshield")],
    ["an engine number of another engine", code("identity.engine-number", "XX 1")],
  ])("is left open by %s", (_, finding) => {
    expect(gateOf(finding)).toEqual([]);
  });

  it("takes a tire past ten years by its date on the day of the visit, and not the spare", () => {
    const number = "A1 B2 C3 1215";
    expect(gateOf(code("wheels.tire-identification", number, "left-rear"))).toEqual([
      ["wheels.tire-identification", "left-rear"],
    ]);
    expect(gateOf(code("wheels.tire-identification", number, "spare"))).toEqual([]);
    expect(gateOf(code("wheels.tire-identification", "A1 B2 C3 1220", "left-rear"))).toEqual([]);
  });
});

const unsafe = (item: string, note?: string): FindingInput => ({
  item,
  answer: { kind: "not-seen", reason: "unsafe" },
  ...(note === undefined ? {} : { note }),
});

describe("the inspector's own doubt", () => {
  it("is what they left of the road as unsafe, in their words, and nothing else that is unsafe", () => {
    const written = report(
      [
        unsafe("road.shifts", "The rear axle sits askew."),
        unsafe("road.noise"),
        unsafe("underbody.rails"),
        { item: "road.tracking", answer: { kind: "not-seen", reason: "weather" } },
      ],
      { kind: "inspection" },
    );
    expect(roadDoubts(written, sheet)).toEqual([
      { item: "road.shifts", position: "", words: "The rear axle sits askew." },
      { item: "road.noise", position: "", words: "" },
    ]);
  });
});

describe("what must have been looked at before the gate can open", () => {
  const { form } = report([]).vehicle;
  const placesOf = (asked: Parameters<typeof gatePlaces>[2]): string[] =>
    gatePlaces(sheetVersion1, form, asked).map(({ item, position }) => `${item}@${position}`);

  it("is every place of a first look that can close it: more than brakes, steering and tires", () => {
    const all = placesOf(() => undefined);
    expect(all).toEqual(
      expect.arrayContaining([
        "brakes.pedal-feel@",
        "brakes.master-cylinder@",
        "driveline.leaks-before@fuel",
        "driveline.leaks-before@brake-hydraulics",
        "steering.wheel-bearing-play@left-front",
        "wheels.tire-identification@right-rear",
        "electrics.lamps@left-stop",
        "underbody.towers@left-front",
      ]),
    );
    const aside = ["wheels.tread-depth@spare", "electrics.lamps@plate", "driveline.leaks-before@axle"];
    expect(
      all.filter((place) => aside.includes(place) || place.startsWith("brakes.wheel-cylinders")),
    ).toEqual([]);
  });

  it("is no more than the brief asks", () => {
    const asked: Readonly<Record<string, readonly string[]>> = {
      "wheels.tread-depth": ["left-rear", "spare"],
    };
    expect(placesOf((item) => asked[item] ?? null)).toEqual(["wheels.tread-depth@left-rear"]);
  });
});
