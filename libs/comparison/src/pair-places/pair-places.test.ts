import { describe, expect, it } from "vitest";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { finding, form, inspection, statement } from "../../testing/small-reports.ts";
import { planOf } from "../plan/index.ts";
import { pairPlaces } from "./index.ts";

const plan = planOf(compileSheet({ ...sheetVersion1 }));
const psi = (cylinder: number) =>
  finding(
    "engine.compression",
    { kind: "reading", unit: "psi", values: [{ value: 150 }] },
    { position: `cylinder-${cylinder}` },
  );
const horn = finding("electrics.horn", { kind: "working", value: "yes" });
const withCylinders = (cylinders: number) => ({
  vehicle: { ...statement([]).vehicle, form: { ...form, cylinders } },
});
const keys = (places: ReturnType<typeof pairPlaces>["places"]) =>
  places.map(({ compiled, position }) => `${compiled.order} ${position}`);
const sheetOrder = new Map(sheetVersion1.items.map(({ id }, order) => [id, order]));

describe("pairPlaces", () => {
  it("gives the plan's own list where both reports describe one car and answer nothing else", () => {
    const { places } = pairPlaces(statement([horn]), inspection([psi(1)]), plan);
    expect(places).toBe(plan.applicable(form));
  });

  it("finds each side's finding by the place's number, -1 where it is silent", () => {
    const { findingsA, findingsB } = pairPlaces(statement([psi(1), horn]), inspection([horn]), plan);
    const [hornPlace, first] = [
      plan.place("electrics.horn", "").number,
      plan.place("engine.compression", "cylinder-1").number,
    ];
    expect([findingsA[hornPlace], findingsB[hornPlace]]).toEqual([1, 0]);
    expect([findingsA[first], findingsB[first]]).toEqual([0, -1]);
  });

  it("adds what only one report's form has, or somebody answered, in sheet order, once", () => {
    const { places } = pairPlaces(
      statement([psi(9), psi(11)], withCylinders(8)),
      inspection([psi(11), psi(9)]),
      plan,
    );
    const order = sheetOrder.get("engine.compression");
    const ofCylinders = keys(places).filter((key) => key.startsWith(`${order} `));
    expect(ofCylinders).toEqual(
      [1, 2, 3, 4, 5, 6, 7, 8, 9, 11].map((number) => `${order} cylinder-${number}`),
    );
    const orders = places.map(({ compiled }) => compiled.order);
    expect(orders).toEqual(orders.toSorted((a, b) => a - b));
  });

  it("puts what was answered in any order, and what only the second form has, into the order of the sheet", () => {
    const order = sheetOrder.get("engine.compression");
    const cylinders = (...[a, b]: Parameters<typeof pairPlaces>) =>
      keys(pairPlaces(a, b, plan).places).filter((key) => key.startsWith(`${order} `));
    const numbered = (...numbers: number[]) => numbers.map((number) => `${order} cylinder-${number}`);
    const shuffled = statement([psi(12), psi(10), psi(11), psi(10)]);
    expect(cylinders(shuffled, inspection([psi(9), psi(10)]), plan)).toEqual(
      numbered(1, 2, 3, 4, 5, 6, 9, 10, 11, 12),
    );
    expect(cylinders(statement([]), inspection([], withCylinders(8)), plan)).toEqual(
      numbered(1, 2, 3, 4, 5, 6, 7, 8),
    );
  });

  it("leaves out circumstances, which are never compared", () => {
    const item = sheetVersion1.items.find(({ circumstance }) => circumstance === true)?.id ?? "";
    const answered = statement([{ ...horn, item }]);
    expect(pairPlaces(answered, inspection([horn]), plan).places).toBe(plan.applicable(form));
  });
});
