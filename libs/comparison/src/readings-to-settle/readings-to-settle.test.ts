import { describe, expect, it } from "vitest";
import type { Entry } from "@evenhand/shared/comparison";
import type { Finding } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { entry, readingFigures } from "../../testing/small-entries.ts";
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
  const found = entryOf(first, second);
  return found === undefined ? undefined : settlerOf(first, second, sheet)(found);
};
/** The same reading so many times. */
const times = (count: number, value: number): number[] => Array.from({ length: count }, () => value);
const outcomeWith = (a: Finding, b: Finding) =>
  entryOf(statement([a], tools), inspection([b], tools))?.outcome;

/** The sheet with compression placed so roughly, at so many spots. */
const withPlacement = (placement: number, spots: number): CompiledSheet => {
  const compiled = sheet.items.get("engine.compression");
  const spec = compiled?.item.reading;
  if (compiled === undefined || spec === undefined) throw new Error("no compression");
  const reading = { ...spec, placement, ask: { readings: 1, spots } };
  return {
    ...sheet,
    items: new Map([["engine.compression", { ...compiled, item: { ...compiled.item, reading } }]]),
  };
};

describe("settlerOf", () => {
  it("gives a number of readings in all that settles it, and no fewer would", () => {
    const readings = settle(psi(150), psi(140));
    expect(outcomeWith(psi(150), psi(140))).toBe("consistent");
    const needed = readings?.b ?? 0;
    expect(needed).toBeGreaterThan(1);
    expect(outcomeWith(psi(150), psi(...times(needed, 140)))).toBe("agree");
    expect(outcomeWith(psi(150), psi(...times(needed - 1, 140)))).toBe("consistent");
  });

  it("settles what is doubtful, too", () => {
    const stated = psi(...times(4, 150));
    expect(outcomeWith(stated, psi(137))).toBe("doubtful");
    const needed = settle(stated, psi(137))?.b ?? 0;
    expect(needed).toBeGreaterThan(1);
    expect(outcomeWith(stated, psi(...times(needed, 137)))).not.toBe("doubtful");
    expect(outcomeWith(stated, psi(...times(needed - 1, 137)))).toBe("doubtful");
  });

  it("counts a spot for each further reading where the item asks for several, else the one it has", () => {
    const [a, b] = [statement([psi(...times(4, 150))], tools), inspection([psi(150)], tools)];
    const open = entry({
      item: "engine.compression",
      outcome: "consistent",
      figures: readingFigures(6, { delta: 20 }),
    });
    expect(settlerOf(a, b, withPlacement(4, 1))(open)).toMatchObject({ a: null });
    expect(settlerOf(a, b, withPlacement(4, 3))(open)).toMatchObject({ a: 3 });
    expect(settlerOf(a, b, withPlacement(5, 2))(open)?.a).toBeGreaterThan(1);
  });

  it("needs both findings to be readings", () => {
    const [a, b] = [statement([psi(150)], tools), inspection([psi(140)], tools)];
    const open = entry({ item: "engine.compression", outcome: "consistent", figures: readingFigures(10) });
    const settler = settlerOf(a, b, sheet);
    expect(settler({ ...open, finding: { a: null, b: 0 } })).toBeUndefined();
    expect(settler({ ...open, finding: { a: 0, b: null } })).toBeUndefined();
    expect(settler({ ...open, item: "electrics.horn" })).toBeUndefined();
    expect(settler({ ...open, item: "electrics.cannon" })).toBeUndefined();
    expect(settler({ ...open, figures: undefined })).toBeUndefined();
    expect(settler(open)).toBeDefined();
  });

  it("reads the second finding of a report as well as the first", () => {
    const horn = finding("electrics.horn", { kind: "working", value: "yes" });
    const [a, b] = [statement([horn, psi(150)], tools), inspection([horn, psi(140)], tools)];
    const [first] = compare(a, b, sheet).entries.filter(
      ({ item, finding: { a: index } }) => item === "engine.compression" && index === 1,
    );
    if (first === undefined) throw new Error("no entry");
    expect(settlerOf(a, b, sheet)(first)?.b).toBeGreaterThan(1);
  });

  it("asks either side by itself", () => {
    expect(settle(psi(150, 150), psi(140))).toMatchObject({ a: expect.any(Number), b: expect.any(Number) });
  });

  it("is null where no number would do", () => {
    expect(settle(byEye(150), byEye(135))).toEqual({ a: null, b: null });
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
    const [first, second] = [statement([byEye(150)], house), inspection([byEye(141)], house)];
    const found = entryOf(first, second);
    if (found === undefined) throw new Error("no entry");
    const shared = { instrument: () => true, person: () => true };
    expect(settlerOf(first, second, sheet, shared)(found)?.b).toBeGreaterThan(0);
  });
});
