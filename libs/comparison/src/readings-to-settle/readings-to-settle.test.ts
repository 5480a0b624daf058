import { describe, expect, it } from "vitest";
import type { Entry } from "@evenhand/shared/comparison";
import type { Finding } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";
import { finding, inspection, sheet, statement } from "../../testing/small-reports.ts";
import { compare } from "../compare/index.ts";
import { settlerOf } from "./index.ts";

const tools = { instruments: [{ id: "gauge", name: "gauge" }] };
const psi = (...values: number[]): Finding =>
  finding(
    "engine.compression",
    { kind: "reading", unit: "psi", values: values.map((value) => ({ value })) },
    { position: "cylinder-1", instrument: "gauge" },
  );
const byEye = (...values: number[]): Finding => ({ ...psi(...values), instrument: undefined });
const entryOf = (a: Report, b: Report): Entry | undefined =>
  compare(a, b, sheet).entries.find(
    ({ item, position }) => item === "engine.compression" && position === "cylinder-1",
  );
const settle = (a: Finding, b: Finding) => {
  const [first, second] = [statement([a], tools), inspection([b], tools)];
  const entry = entryOf(first, second);
  return entry === undefined ? undefined : settlerOf(first, second, sheet)(entry);
};
/** The same reading so many times. */
const times = (count: number, value: number): number[] => Array.from({ length: count }, () => value);
const outcomeWith = (a: Finding, b: Finding) =>
  entryOf(statement([a], tools), inspection([b], tools))?.outcome;

describe("settlerOf", () => {
  it("gives a number of readings in all that settles it, and no fewer would", () => {
    const readings = settle(psi(150), psi(140));
    expect(outcomeWith(psi(150), psi(140))).toBe("consistent");
    const needed = readings?.b ?? 0;
    expect(needed).toBeGreaterThan(1);
    expect(outcomeWith(psi(150), psi(...times(needed, 140)))).toBe("agree");
    expect(outcomeWith(psi(150), psi(...times(needed - 1, 140)))).toBe("consistent");
  });

  it("asks either side by itself", () => {
    expect(settle(psi(150, 150), psi(140))).toMatchObject({ a: expect.any(Number), b: expect.any(Number) });
  });

  it("is null where no number would do", () => {
    expect(settle(byEye(150), byEye(149))).toEqual({ a: null, b: null });
  });

  it("has nothing to say of what is settled, or is no reading of an item", () => {
    expect(settle(psi(150, 150), psi(150, 150))).toBeUndefined();
    const [a, b] = [statement([]), inspection([])];
    const [silent] = compare(a, b, sheet).entries;
    if (silent === undefined) throw new Error("no entry");
    expect(settlerOf(a, b, sheet)({ ...silent, outcome: "doubtful" })).toBeUndefined();
  });

  it("lets a shared instrument's error cancel", () => {
    const house = { ...tools, author: statement([]).author };
    const [first, second] = [statement([byEye(150)], house), inspection([byEye(149)], house)];
    const entry = entryOf(first, second);
    if (entry === undefined) throw new Error("no entry");
    const shared = { instrument: () => true, person: () => true };
    expect(settlerOf(first, second, sheet, shared)(entry)?.b).toBeGreaterThan(0);
  });
});
