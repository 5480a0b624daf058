import { describe, expect, it } from "vitest";
import { entry, readingFigures } from "../../testing/small-entries.ts";
import { sheet } from "../../testing/small-reports.ts";
import { biasOf, gradeSteps, readingShifts } from "./index.ts";

const graded = (steps: number, item = "body.finish") =>
  entry({ item, figures: { of: "grade", a: [0, 0.2], b: [0, 0.2], steps, overlap: 0 } });
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
      Array.from({ length: 12 }, (_, index) => graded(1, `item-${index}`)),
      sheet,
    );
    expect(bias.meanStep).toMatchObject({ state: "known", n: 12, estimate: 1 });
    expect(bias.signTestP).toBeCloseTo(2 / 2 ** 12, 12);
  });

  it("takes the places of one item for one witness: sixteen panels graded by one eye say nothing yet", () => {
    const panels = Array.from({ length: 16 }, () => graded(1));
    expect(biasOf(panels, sheet)).toMatchObject({
      meanStep: { state: "too-few", n: 1, needed: 10 },
      signTestP: null,
    });
    const alone = Array.from({ length: 10 }, (_, index) => graded(index % 2, `item-${index}`));
    const known = biasOf([...alone, ...panels], sheet).meanStep;
    expect(known).toMatchObject({ state: "known", n: 11, estimate: expect.closeTo(6 / 11, 12) });
    // Taken one by one, 26 places would be surer than eleven items are.
    expect(known.state === "known" && known.high - known.low).toBeGreaterThan(0.5);
  });

  it("says nothing of fewer than ten items that differ", () => {
    const nine = [...Array.from({ length: 9 }, (_, index) => graded(1, `item-${index}`)), graded(0, "even")];
    expect(biasOf(nine, sheet)).toMatchObject({ meanStep: { state: "known", n: 10 }, signTestP: null });
    expect(biasOf([...nine, graded(-1, "other")], sheet).signTestP).toBeCloseTo((2 * 11) / 2 ** 10, 12);
  });

  it("gives the shift of readings with its interval, one mean an item", () => {
    const readable = Array.from(sheet.items.values()).filter(({ item }) =>
      ["higher", "lower"].includes(item.reading?.betterIs ?? ""),
    );
    const readings = readable.slice(0, 12).flatMap(({ item }, index) => {
      const sign = item.reading?.betterIs === "higher" ? 1 : -1;
      return [read(item.id, (sign * index) / 10), read(item.id, (sign * index) / 10)];
    });
    expect(biasOf(readings, sheet).shift).toMatchObject({
      state: "known",
      n: 12,
      estimate: expect.closeTo(0.275, 12),
      standardError: null,
    });
  });
});
