import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { VehicleForm } from "@evenhand/shared/report";
import { DEPTHS } from "@evenhand/shared/sheet";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { answersAll, briefOf, depthOf, isBriefComplete, notOnThisCar, planBriefs } from "./index.ts";

const sheet = compileSheet(sheetVersion1);
const ids = sheetVersion1.items.map(({ id }) => id);
const coupe = VehicleForm.parse({
  body: "coupe",
  doors: 2,
  cylinders: 8,
  construction: "body-on-frame",
  gearbox: "manual",
  driven: "rear",
  fuelSystem: "carburetor",
  systemVolts: 12,
  brakes: { front: "drum", rear: "drum" },
});
const forms = fc.record({
  ...Object.fromEntries(Object.entries(coupe).map(([key, value]) => [key, fc.constant(value)])),
  gearbox: fc.constantFrom("manual", "automatic"),
  fuelSystem: fc.constantFrom("carburetor", "injection"),
  brakes: fc.constantFrom({ front: "disc", rear: "drum" }, { front: "drum", rear: "drum" }),
});
const idsOf = (items: readonly { item: string }[]): string[] => items.map(({ item }) => item);

const coreOf = (depth: (typeof DEPTHS)[number]) =>
  idsOf(briefOf(sheet, coupe, depth, []).items.filter((item) => item.core));

describe("a brief", () => {
  it("holds every item of the car's sheet once: looked at, or free to choose", () => {
    fc.assert(
      fc.property(
        forms,
        fc.constantFrom(...DEPTHS),
        fc.subarray(ids, { maxLength: 30 }),
        (form, depth, chosen) => {
          const car = VehicleForm.parse(form);
          const brief = briefOf(sheet, car, depth, chosen);
          const [taken, further] = [idsOf(brief.items), idsOf(brief.further)];
          expect(new Set([...taken, ...further]).size).toBe(taken.length + further.length);
          const unknown = new Set(notOnThisCar(sheet, car, chosen).map((index) => chosen[index]));
          expect(chosen.filter((item) => !taken.includes(item))).toEqual(
            chosen.filter((item) => unknown.has(item)),
          );
          const extra = brief.items.filter(({ core }) => !core);
          expect(idsOf(extra).filter((item) => !chosen.includes(item))).toEqual([]);
          expect(depthOf(sheet, brief.items)).toBe(depth);
        },
      ),
      { numRuns: 1_000 },
    );
  });

  it("asks more the deeper it goes, and no less of what decides purchases", () => {
    const [look, half, day] = [coreOf("first-look"), coreOf("half-day"), coreOf("day")];
    expect(half).toEqual(expect.arrayContaining(look));
    expect(day).toEqual(expect.arrayContaining(half));
    expect(look.length).toBeLessThan(half.length);
    expect(half.length).toBeLessThan(day.length);
  });

  it("names by its place what the sheet or the car does not have", () => {
    expect(notOnThisCar(sheet, coupe, ["wheels.tread-depth", "no.such-item"])).toEqual([1]);
    const open = { ...coupe, body: "convertible" as const, powerTop: true };
    const ofTheTop = idsOf(briefOf(sheet, open, "day", ids).items).filter(
      (item) => notOnThisCar(sheet, coupe, [item]).length > 0,
    );
    expect(ofTheTop.length).toBeGreaterThan(0);
    expect(notOnThisCar(sheet, open, ofTheTop)).toEqual([]);
  });

  it("is planned for the minutes it gives each item, whatever the sheet says now", () => {
    const { items } = briefOf(sheet, coupe, "first-look", []);
    const lengthOf = (more: number) => {
      const planned = planBriefs(sheet, [
        { id: "car", items: items.map((item) => ({ ...item, minutes: item.minutes + more })) },
      ]);
      return planned.kind === "planned" ? planned.plan.length : null;
    };
    const [once, longer] = [lengthOf(0), lengthOf(1)];
    expect(once).not.toBeNull();
    expect(longer).toBeGreaterThan(once ?? Infinity);
    const gone = { item: "no.such-item", core: false, minutes: 500, needs: [] };
    expect(planBriefs(sheet, [{ id: "car", items: [...items, gone] }])).toEqual(
      planBriefs(sheet, [{ id: "car", items }]),
    );
  });
});

describe("before a visit is booked or confirmed", () => {
  const some = [{ item: "wheels.tread-depth", core: true, minutes: 4, needs: [] }];

  it("every car has something to be looked at and no change waits", () => {
    expect(isBriefComplete([{ brief: some, proposed: null }])).toBe(true);
    expect(
      isBriefComplete([
        { brief: some, proposed: null },
        { brief: [], proposed: null },
      ]),
    ).toBe(false);
    expect(isBriefComplete([{ brief: some, proposed: { items: [], at: 1 } }])).toBe(false);
    expect(isBriefComplete([])).toBe(false);
  });

  it("the dealer answers for every item that needs it, on the car it is on", () => {
    const wanted = [
      { car: "a", item: "x" },
      { car: "b", item: "x" },
    ];
    expect(answersAll(wanted, [...wanted, { car: "c", item: "y" }])).toBe(true);
    expect(answersAll(wanted, wanted.slice(1))).toBe(false);
    expect(
      answersAll(wanted, [
        { car: "a", item: "x" },
        { car: "b", item: "y" },
      ]),
    ).toBe(false);
    expect(answersAll([], [])).toBe(true);
  });
});
