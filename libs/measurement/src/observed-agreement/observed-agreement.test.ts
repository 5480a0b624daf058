import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { wilsonInterval } from "../proportion-interval/index.ts";
import { observedAgreement } from "./index.ts";

const table = [
  [20, 5],
  [10, 15],
];

describe("observedAgreement", () => {
  it("has the result its example states", () => {
    const result = observedAgreement(table);
    expect(result).toMatchObject({
      kind: "estimated",
      coefficient: 0.7,
      observed: 0.7,
      expected: 0,
      items: 50,
    });
    expect(result).toMatchObject(wilsonInterval(35, 50));
  });

  it("has the interval of the confidence asked for", () => {
    expect(observedAgreement(table, { confidence: 0.9 })).toMatchObject(wilsonInterval(35, 50, 0.9));
  });

  it("weighted, is the mean weight with its own spread", () => {
    const three = [
      [6, 2, 0],
      [0, 4, 4],
      [0, 0, 4],
    ];
    const result = observedAgreement(three, { weights: "linear" });
    const weights = [...Array.from({ length: 14 }, () => 1), ...Array.from({ length: 6 }, () => 0.5)];
    const squares = weights.reduce((sum, weight) => sum + (weight - 0.85) ** 2, 0);
    const error = Math.sqrt(squares / 19 / 20);
    expect(result).toMatchObject({ kind: "estimated", items: 20 });
    expect(result.kind === "estimated" && result.coefficient).toBeCloseTo(0.85, 12);
    expect(result.kind === "estimated" && result.standardError).toBeCloseTo(error, 12);
    expect(result).toMatchObject(wilsonInterval(17, 20));
  });

  it.each([[[2, 4, 3, 1]], [[1, 11, 6, 2]], [[0, 14, 23, 4]], [[0, 12, 35, 5]]])(
    "answers full agreement whose shares add up to more than 1 in floating point: %j",
    (agreeing) => {
      const counts = agreeing.map((count, i) => agreeing.map((_, j) => (i === j ? count : 0)));
      expect(observedAgreement(counts)).toMatchObject({ kind: "estimated", high: 1 });
    },
  );

  it("counts what agrees, however full agreement is spread over the categories", () => {
    const counts = fc.array(fc.integer({ min: 0, max: 30 }), { minLength: 2, maxLength: 5 });
    fc.assert(
      fc.property(counts, (agreeing) => {
        const items = agreeing.reduce((sum, count) => sum + count, 0);
        fc.pre(items >= 10);
        const result = observedAgreement(
          agreeing.map((count, i) => agreeing.map((_, j) => (i === j ? count : 0))),
        );
        expect(result).toMatchObject({ kind: "estimated", ...wilsonInterval(items, items) });
      }),
      { numRuns: 1000 },
    );
  });

  it("says too few below ten items, or below what the caller says", () => {
    expect(
      observedAgreement([
        [5, 0],
        [0, 4],
      ]),
    ).toEqual({ kind: "tooFew", items: 9, least: 10 });
    expect(
      observedAgreement([
        [5, 0],
        [0, 5],
      ]).kind,
    ).toBe("estimated");
    expect(observedAgreement(table, { least: 51 })).toEqual({ kind: "tooFew", items: 50, least: 51 });
  });

  it("does not mind who is first", () => {
    const counts = fc.integer({ min: 0, max: 9 });
    fc.assert(
      fc.property(fc.tuple(counts, counts, counts, counts), ([a, b, c, d]) => {
        const sides = [
          [
            [a, b],
            [c, d],
          ],
          [
            [a, c],
            [b, d],
          ],
        ];
        fc.pre(a + b + c + d > 1);
        const [there, back] = sides.map((side) => {
          const answer = observedAgreement(side, { least: 1 });
          return answer.kind === "estimated" ? [answer.coefficient, answer.standardError, answer.low] : [];
        });
        for (const [i, figure] of (there ?? []).entries()) expect(back?.[i]).toBeCloseTo(figure, 7);
        expect(there).toHaveLength(3);
      }),
      { numRuns: 1000 },
    );
  });
});
