import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inspectorFigures } from "./index.ts";
import type { InspectedReport } from "./index.ts";

const report = (upheld: number, overturned: number, delivery: InspectedReport["delivery"] = null) => ({
  inspector: "Quiet Hill",
  decided: { upheld, overturned },
  delivery,
});
const alike = (count: number, one: InspectedReport): InspectedReport[] =>
  Array.from({ length: count }, () => one);
const figuresOf = (reports: readonly InspectedReport[]) => inspectorFigures(reports)[0];

describe("inspectorFigures", () => {
  it("says that nothing is known where nothing came back, and never that everything stood", () => {
    expect(inspectorFigures(alike(60, report(0, 0)))).toEqual([
      {
        inspector: "Quiet Hill",
        reports: 60,
        upheld: { state: "nothing-known" },
        missed: { state: "nothing-known" },
      },
    ]);
  });

  it("says how many cars it knows of while they are too few", () => {
    expect(figuresOf([...alike(19, report(3, 0)), ...alike(40, report(0, 0))])).toMatchObject({
      reports: 59,
      upheld: { state: "too-few", cars: 19, needed: 20 },
    });
  });

  it("counts what was decided, and beside it what a delivery showed to have been missed", () => {
    const seen = { seenAgain: 50, missed: 2 };
    const figures = figuresOf([...alike(15, report(4, 0, seen)), ...alike(5, report(2, 2, seen))]);
    expect(figures).toMatchObject({
      upheld: { state: "known", cars: 20, of: 80, share: { estimate: 70 / 80 } },
      missed: { state: "known", cars: 20, of: 1000, share: { estimate: 0.04 } },
    });
  });

  it("keeps inspectors apart", () => {
    const other = { ...report(0, 9), inspector: "Larch Lane" };
    const both = inspectorFigures([...alike(20, report(1, 0)), ...alike(20, other)]);
    expect(both.map(({ upheld }) => (upheld.state === "known" ? upheld.share.estimate : null))).toEqual([
      1, 0,
    ]);
  });

  it("is not raised by finding less: what nobody decided changes no share", () => {
    fc.assert(
      fc.property(
        fc.array(fc.nat({ max: 5 }), { minLength: 20, maxLength: 40 }),
        fc.nat(60),
        (stood, more) => {
          const some = stood.map((upheld) => report(upheld + 1, 1));
          const { upheld } = figuresOf(some) ?? {};
          expect(figuresOf([...some, ...alike(more, report(0, 0))])?.upheld).toEqual(upheld);
        },
      ),
      { numRuns: 1000 },
    );
  });
});
