import type { VehicleForm } from "@evenhand/shared/report";
import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sheetVersion1 as sheet } from "../sheet-version-1/index.ts";
import { applicablePlaces, applies, positionsOf } from "./index.ts";

const coupe: VehicleForm = {
  body: "coupe",
  doors: 2,
  cylinders: 8,
  construction: "unit-body",
  gearbox: "automatic",
  driven: "rear",
  fuelSystem: "carburetor",
  systemVolts: 12,
  brakes: { front: "disc", rear: "drum" },
  leftHandDrive: true,
};

const form = fc.record<VehicleForm>({
  body: fc.constantFrom("coupe", "sedan", "convertible", "wagon", "pickup", "van", "roadster"),
  doors: fc.integer({ min: 2, max: 5 }),
  cylinders: fc.integer({ min: 1, max: 16 }),
  construction: fc.constantFrom("body-on-frame", "unit-body"),
  gearbox: fc.constantFrom("manual", "automatic"),
  driven: fc.constantFrom("rear", "front", "all"),
  fuelSystem: fc.constantFrom("carburetor", "injection"),
  systemVolts: fc.constantFrom(6, 12),
  brakes: fc.record({ front: fc.constantFrom("drum", "disc"), rear: fc.constantFrom("drum", "disc") }),
  leftHandDrive: fc.boolean(),
});

const positionsAt = (item: string, car: VehicleForm) =>
  applicablePlaces(sheet, car)
    .filter((place) => place.item.id === item)
    .map(({ position }) => position);

describe("applies", () => {
  it("holds without a condition, and where every key has one of its values", () => {
    expect(applies(undefined, coupe)).toBe(true);
    expect(applies({}, coupe)).toBe(true);
    expect(applies({ body: ["sedan", "coupe"], doors: [2, 3] }, coupe)).toBe(true);
    expect(applies({ body: ["sedan", "coupe"], doors: [4] }, coupe)).toBe(false);
  });

  it.each([
    [{ construction: ["unit-body"] }, true],
    [{ construction: ["body-on-frame"] }, false],
    [{ gearbox: ["automatic"] }, true],
    [{ gearbox: ["manual"] }, false],
    [{ driven: ["rear"] }, true],
    [{ driven: ["front", "all"] }, false],
    [{ fuelSystem: ["carburetor"] }, true],
    [{ fuelSystem: ["injection"] }, false],
    [{ brakesFront: ["disc"] }, true],
    [{ brakesFront: ["drum"] }, false],
    [{ brakesRear: ["drum"] }, true],
    [{ brakesRear: ["disc"] }, false],
  ])("reads %j of the form", (when, expected) => {
    expect(applies(when, coupe)).toBe(expected);
  });
});

describe("positionsOf", () => {
  it("numbers from one to the car's count, after what is listed", () => {
    const set = {
      id: "x",
      words: { american: "x", synonyms: [] },
      positions: [{ id: "all", words: { american: "all", synonyms: [] } }],
      numbered: { prefix: "pot", words: "pot", countFrom: "cylinders" as const },
    };
    expect(positionsOf(set, { ...coupe, cylinders: 3 })).toEqual(["all", "pot-1", "pot-2", "pot-3"]);
  });
});

describe("applicablePlaces", () => {
  it("walks round a coupe's corners by the left", () => {
    expect(positionsAt("wheels.tread-depth", coupe)).toEqual([
      "left-front",
      "left-rear",
      "spare",
      "right-rear",
      "right-front",
    ]);
  });

  it("asks an item without positions once", () => {
    expect(positionsAt("electrics.horn", coupe)).toEqual([""]);
  });

  it.each([
    ["doors.latches", coupe, ["left-front-door", "right-front-door"]],
    [
      "doors.latches",
      { ...coupe, doors: 4 },
      ["left-front-door", "left-rear-door", "right-rear-door", "right-front-door"],
    ],
    ["doors.lid-latches", coupe, ["trunk-lid", "hood"]],
    ["doors.lid-latches", { ...coupe, body: "wagon" as const }, ["tailgate", "hood"]],
    ["brakes.drum-diameter", coupe, ["left-rear", "right-rear"]],
    ["brakes.disc-runout", coupe, ["left-front", "right-front"]],
    ["brakes.disc-runout", { ...coupe, brakes: { front: "drum" as const, rear: "drum" as const } }, []],
    [
      "engine.compression",
      { ...coupe, cylinders: 4 },
      ["cylinder-1", "cylinder-2", "cylinder-3", "cylinder-4"],
    ],
    ["interior.top", coupe, []],
    ["interior.top", { ...coupe, body: "roadster" as const }, ["fabric", "rear-screen", "frame"]],
    ["interior.pedals", coupe, ["brake", "accelerator"]],
    ["interior.pedals", { ...coupe, gearbox: "manual" as const }, ["clutch", "brake", "accelerator"]],
    ["identity.vin", coupe, ["main-plate", "body-tag", "body-stamping"]],
    [
      "identity.vin",
      { ...coupe, construction: "body-on-frame" as const },
      ["main-plate", "body-tag", "body-stamping", "frame-stamping"],
    ],
    ["driveline.half-shaft-boots", coupe, []],
    ["driveline.half-shaft-boots", { ...coupe, driven: "front" as const }, ["left", "right"]],
    ["engine.carburetor-number", { ...coupe, fuelSystem: "injection" as const }, []],
  ])("%s on its car", (item, car, positions) => {
    expect(positionsAt(item, car)).toEqual(positions);
  });

  it("gives 150 places or more on any car, each once, in sheet order, all of which apply", () => {
    const order = new Map(sheet.items.map(({ id }, index) => [id, index]));
    fc.assert(
      fc.property(form, (car) => {
        const places = applicablePlaces(sheet, car);
        const keys = places.map(({ item, position }) => `${item.id} ${position}`);
        expect(new Set(keys).size).toBe(keys.length);
        expect(places.length).toBeGreaterThan(150);
        const orders = places.map(({ item }) => order.get(item.id) ?? -1);
        expect(orders.every((value, index) => index === 0 || value >= (orders[index - 1] ?? 0))).toBe(true);
        expect(places.every(({ item }) => applies(item.appliesWhen, car))).toBe(true);
      }),
      { numRuns: 1000 },
    );
  }, 60_000);

  it("refuses a sheet whose item names positions it does not have", () => {
    expect(() => applicablePlaces({ ...sheet, positionSets: [] }, coupe)).toThrow(
      "identity.vin names positions the sheet does not have: number-places",
    );
  });
});

describe("what a form may leave unsaid", () => {
  const servo = { servo: ["yes"] };

  it("is asked until it is said to be otherwise", () => {
    expect(applies(servo, coupe)).toBe(true);
    expect(applies(servo, { ...coupe, servo: true })).toBe(true);
    expect(applies(servo, { ...coupe, servo: false })).toBe(false);
  });

  it("takes what cannot be there off the sheet", () => {
    const bare: VehicleForm = {
      ...coupe,
      servo: false,
      frontPivots: "king-pins",
      torqueBoxes: false,
      seatBelts: false,
      airConditioning: false,
      powerTop: false,
      repeaters: false,
      ventWindows: false,
    };
    const asked = new Set(applicablePlaces(sheet, bare).map(({ item }) => item.id));
    expect(
      [
        "brakes.servo",
        "steering.ball-joint-play",
        "steering.ball-joint-seals",
        "underbody.torque-boxes",
        "interior.belt-webbing",
        "interior.belt-latch",
        "interior.belt-date",
        "electrics.air-conditioning",
        "electrics.vent-temperature",
        "electrics.power-top",
        "doors.vent-windows",
      ].filter((id) => asked.has(id)),
    ).toEqual([]);
    expect(asked.has("steering.king-pin-play")).toBe(true);
    expect(positionsAt("electrics.lamps", bare)).not.toContain("left-repeater");
    expect(positionsAt("electrics.lamps", coupe)).toContain("left-repeater");
  });

  it("asks ball joints of a car that has them, and no king pins", () => {
    const joints: VehicleForm = { ...coupe, frontPivots: "ball-joints" };
    expect(positionsAt("steering.ball-joint-play", joints)).toHaveLength(4);
    expect(positionsAt("steering.king-pin-play", joints)).toEqual([]);
  });
});
