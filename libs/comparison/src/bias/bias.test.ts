import { describe, expect, it } from "vitest";
import { entry, readingFigures } from "../../testing/small-entries.ts";
import { sheet } from "../../testing/small-reports.ts";
import { biasOf, gradeSteps, readingShifts } from "./index.ts";

const graded = (steps: number) =>
  entry({ figures: { of: "grade", a: [0, 0.2], b: [0, 0.2], steps, overlap: 0 } });
const read = (item: string, difference: number, more = {}) =>
  entry({ item, figures: readingFigures(difference), ...more });
const compression = (difference: number) => read("engine.compression", difference);

describe("gradeSteps", () => {
  it("takes signed steps, rounding as none", () => {
    expect(gradeSteps([graded(1), graded(-1e-12), entry()])).toEqual([1, 0]);
  });
});

describe("readingShifts", () => {
  it("is toward the statement's advantage, as a share of δ", () => {
    expect(readingShifts([compression(1), read("steering.free-play", 1)], sheet)).toEqual([0.5, -0.5]);
  });

  it("passes over readings no side of which is better, extents, and δ of nothing", () => {
    const extent = entry({
      item: "engine.compression",
      atom: { of: "fault", kind: "dent", a: 0, b: 0 },
      figures: readingFigures(1),
    });
    const nothing = entry({ item: "engine.compression", figures: readingFigures(1, { delta: 0 }) });
    expect(
      readingShifts([read("gaps.width-top", 1), extent, nothing, read("electrics.horn", 1)], sheet),
    ).toEqual([]);
  });
});

describe("biasOf", () => {
  it("finds the same step again and again, though each is consistent", () => {
    const bias = biasOf(
      Array.from({ length: 12 }, () => graded(1)),
      sheet,
    );
    expect(bias.meanStep).toMatchObject({ state: "known", n: 12, estimate: 1 });
    expect(bias.signTestP).toBeCloseTo(2 / 2 ** 12, 12);
  });

  it("says nothing of fewer than ten that differ", () => {
    const nine = [...Array.from({ length: 9 }, () => graded(1)), graded(0)];
    expect(biasOf(nine, sheet)).toMatchObject({ meanStep: { state: "known", n: 10 }, signTestP: null });
    expect(biasOf([...nine, graded(-1)], sheet).signTestP).toBeCloseTo((2 * 11) / 2 ** 10, 12);
  });

  it("gives the shift of readings with its interval", () => {
    const shift = biasOf(
      Array.from({ length: 12 }, (_, index) => compression(index / 10)),
      sheet,
    ).shift;
    expect(shift).toMatchObject({
      state: "known",
      n: 12,
      estimate: expect.closeTo(0.275, 12),
      standardError: null,
    });
  });
});
