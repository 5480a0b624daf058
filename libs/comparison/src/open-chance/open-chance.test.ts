import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Entry } from "@evenhand/shared/comparison";
import type { ReadingSpec } from "@evenhand/shared/sheet";
import { AS_DECLARED, pairScatter } from "@evenhand/measurement/over-dispersion";
import type { Apart } from "@evenhand/measurement/over-dispersion";
import { entry, readingFigures } from "../../testing/small-entries.ts";
import { sheet } from "../../testing/small-reports.ts";
import { chancesOf, isOpenReading, openChance } from "./index.ts";

const specs = sheet.sheet.items.flatMap(({ reading }) => reading ?? []);
const specThat = (is: (spec: ReadingSpec) => boolean): ReadingSpec => {
  const found = specs.find(is);
  if (found === undefined) throw new Error("no such reading on the sheet");
  return found;
};
const higher = specThat(({ betterIs }) => betterIs === "higher");
const aimless = specThat(({ betterIs, target }) => betterIs === "target" && target === undefined);

const apart = (foundBetter: number, delta = 4): Apart => ({ foundBetter, standardUncertainty: 1, delta });
const alike = Array.from({ length: 30 }, (_, index) => apart((index % 5) / 4 - 0.5));
const honest = chancesOf(alike, pairScatter(alike));
const unread = chancesOf([], AS_DECLARED);

/** By a reading that is better higher, worse by so much: u = 1, δ = 4. */
const chance = (worse: number, pair = honest, more: Parameters<typeof readingFigures>[1] = {}) =>
  openChance(readingFigures(worse, { delta: 4, probabilityWorse: 1, ...more }), higher, pair);

const eitherWay = (difference: number) =>
  openChance(readingFigures(difference, { delta: 4, probabilityWorse: 1 }), aimless, honest);

describe("isOpenReading", () => {
  const figures = readingFigures(3);
  it("is what is doubtful or differs", () => {
    const open = ["agree", "consistent", "doubtful", "differ", "incomparable"] as const;
    expect(open.filter((outcome) => isOpenReading(entry({ outcome, figures })))).toEqual([
      "doubtful",
      "differ",
    ]);
  });

  const not: readonly (readonly [string, Partial<Entry>])[] = [
    ["called bad", { calls: { a: "good", b: "repair" } }],
    ["past a limit", { marks: ["over-limit"] }],
    ["brought down by a rule", { marks: ["by-figures"] }],
    ["a fault's extent", { atom: { of: "fault", kind: "dent" } }],
    ["of a code", { figures: { of: "code", a: "1", b: "2", passes: null, differsAt: [0] } }],
  ];
  it.each(not)("is nothing %s", (_, more) => {
    expect(isOpenReading(entry({ outcome: "doubtful", figures, ...more }))).toBe(false);
  });
});

describe("openChance", () => {
  it("is next to nothing where there is no difference, and near 1 far out", () => {
    expect(chance(0)).toBeLessThan(0.001);
    expect(chance(9)).toBeGreaterThan(0.99);
  });

  it("is small for a reading beyond chance that lies well within what matters", () => {
    expect(chance(2.5)).toBeLessThan(0.05);
  });

  it("is less where the two scatter more than they declared", () => {
    const wild = Array.from({ length: 30 }, () => apart(2.5));
    expect(chance(5, chancesOf(wild, pairScatter(wild)))).toBeLessThan(chance(5) ?? 0);
  });

  it("counts what is left after the use allowed", () => {
    expect(chance(9, honest, { useAllowed: 8 })).toBe(chance(1));
  });

  it("counts both ways where no side is the worse one", () => {
    const [up, down] = [6, -6].map((difference) => eitherWay(difference));
    expect(up).toBe(down);
    expect(up).toBeGreaterThan(0.9);
    expect(eitherWay(0)).toBe(2 * (chance(0) ?? 1));
  });

  it("is never more than the chance of worse by anything", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -40, max: 40, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (worse, probabilityWorse) => {
          expect(chance(worse, honest, { probabilityWorse })).toBeLessThanOrEqual(probabilityWorse);
        },
      ),
    );
  });

  it("is none without an uncertainty or a difference that matters", () => {
    expect(chance(1, honest, { standardUncertainty: 0 })).toBeUndefined();
    expect(chance(1, honest, { delta: 0 })).toBeUndefined();
  });
});

describe("chancesOf", () => {
  it("goes by what was thought before any was read, where too few tell", () => {
    const nine = Array.from({ length: 9 }, () => apart(-9));
    expect(chancesOf(nine, pairScatter(nine))).toEqual(unread);
    const mean = unread.shares.reduce((sum, { share, weight }) => sum + share * weight, 0);
    expect(mean).toBeCloseTo(0.126, 3);
    expect(chance(0, unread)).toBeLessThan(0.01);
  });

  it("learns from ten how often readings of the pair are off, and leaves out those of which nothing matters", () => {
    const ten = Array.from({ length: 10 }, () => apart(-9));
    const telling = chancesOf(ten, AS_DECLARED);
    expect(chance(4, telling)).toBeGreaterThan(chance(4, unread) ?? 1);
    expect(chancesOf([...ten, apart(0, 0)], AS_DECLARED)).toEqual(telling);
  });
});
