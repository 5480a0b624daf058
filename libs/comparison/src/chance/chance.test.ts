import { describe, expect, it } from "vitest";
import { normalDeviate, seededRandom } from "@evenhand/measurement/random";
import { normalCdf } from "@evenhand/measurement/normal-distribution";
import { classifyInterval } from "@evenhand/measurement/equivalence";
import { entry, readingFigures } from "../../testing/small-entries.ts";
import { chanceOf, chanceOfDoubtful, qValuesOf } from "./index.ts";

const figures = (delta: number, standardUncertainty = 1) => ({
  standardUncertainty,
  expandedUncertainty: 1.959964 * standardUncertainty,
  delta,
  degreesOfFreedom: null,
});

const reading = (outcome: "agree" | "doubtful") => entry({ outcome, figures: readingFigures(1) });
const read = (pValue: number) => entry({ figures: readingFigures(1, { pValue }) });
describe("chanceOfDoubtful", () => {
  it("is of leaving ±U and ±(δ − U) but not ±(δ + U)", () => {
    expect(chanceOfDoubtful(figures(2))).toBeCloseTo(2 * (normalCdf(-1.959964) - normalCdf(-3.959964)), 12);
    expect(chanceOfDoubtful(figures(6))).toBeCloseTo(2 * (normalCdf(-4.040036) - normalCdf(-7.959964)), 12);
  });

  it("is what a simulation at equal truth gives", () => {
    const random = seededRandom(3);
    const draws = 40_000;
    let doubtful = 0;
    for (let draw = 0; draw < draws; draw += 1) {
      if (classifyInterval(normalDeviate(random), 1.959964, 3) === "doubtful") doubtful += 1;
    }
    expect(doubtful / draws).toBeCloseTo(chanceOfDoubtful(figures(3)), 2);
  });

  it("goes by differences over their standard uncertainty", () => {
    expect(chanceOfDoubtful(figures(4, 2))).toBeCloseTo(chanceOfDoubtful(figures(2)), 12);
  });

  it("is none without uncertainty, and more with few degrees of freedom", () => {
    expect(chanceOfDoubtful(figures(2, 0))).toBe(0);
    expect(chanceOfDoubtful({ ...figures(2), degreesOfFreedom: 4 })).toBeGreaterThan(
      chanceOfDoubtful(figures(2)),
    );
  });
});

describe("chanceOf", () => {
  it("counts the readings, the doubtful ones, and those chance would give", () => {
    const other = entry({ outcome: "doubtful" });
    const all = [reading("agree"), reading("agree"), reading("doubtful"), other];
    const { readings, doubtful, expectedDoubtful } = chanceOf(all, () => 0);
    expect([readings, doubtful]).toEqual([3, 1]);
    expect(expectedDoubtful).toBeCloseTo(3 * chanceOfDoubtful(figures(2)), 12);
  });
});

describe("what may move from one day to another", () => {
  it("is doubtful only past the allowance, and not at all where that reaches what differs", () => {
    expect(chanceOfDoubtful(figures(2), 1)).toBeCloseTo(
      2 * (normalCdf(-2.959964) - normalCdf(-3.959964)),
      12,
    );
    expect(chanceOfDoubtful(figures(2), 2)).toBe(0);
    expect(chanceOf([reading("agree")], () => 5).expectedDoubtful).toBe(0);
  });
});

describe("qValuesOf", () => {
  it("is Benjamini and Hochberg's over the readings, in their order", () => {
    expect(qValuesOf([read(0.01), entry(), read(0.04), read(0.03)])).toEqual([0.03, 0.04, 0.04]);
    expect(qValuesOf([read(1 + 1e-15)])).toEqual([1]);
  });
});
