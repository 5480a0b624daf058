import * as fc from "fast-check";
import { expect, test } from "vitest";
import { type Look, varianceTold, worthOfLooking, worthOfSeeing } from "./index.ts";

const look = (id: string, probability: number, mean: number, more: Partial<Look> = {}): Look => ({
  id,
  probability,
  mean,
  minutes: 10,
  first: false,
  ...more,
});
const ids = (looks: readonly Look[]): string[] => looks.map(({ id }) => id);

test("two things, by hand", () => {
  // Room 100. A costs 120 with 1/2 (60 on the mean), B costs 60 with 1/2 (30). Left on the mean: 10.
  const [a, b] = [look("a", 0.5, 120), look("b", 0.5, 60)];
  // A alone: seen due 100 − 30 − 120 < 0, so 0; else 70. 35 − 10 = 25.
  expect(worthOfSeeing(100, [a, b], new Set(["a"]))).toBeCloseTo(25, 10);
  // B alone: due 100 − 60 − 60 < 0, so 0; else 40. 20 − 10 = 10.
  expect(worthOfSeeing(100, [a, b], new Set(["b"]))).toBeCloseTo(10, 10);
  // Both: neither 100, B alone 40, A 0, both 0: 35 − 10 = 25. B adds nothing to A.
  expect(worthOfSeeing(100, [a, b], new Set(["a", "b"]))).toBeCloseTo(25, 10);
  expect(ids(worthOfLooking(100, [b, a]).order)).toEqual(["a", "b"]);
});

test("ten things of which none is worth a look by itself, and together they decide; by hand", () => {
  // Each costs 20 with 1/2: 100 on the mean; of a room of 110, 10 are left.
  // One seen leaves 0 or 20: 10 − 10 = 0. Two seen leave −10, 10, 10, 30: (0 + 20 + 30)/4 − 10 = 2.5.
  const ten = Array.from({ length: 10 }, (_, at) => look(`n${at}`, 0.5, 20));
  for (const { id } of ten) expect(worthOfSeeing(110, ten, new Set([id]))).toBeCloseTo(0, 10);
  expect(worthOfSeeing(110, ten, new Set(["n0", "n1"]))).toBeCloseTo(2.5, 10);
  // All ten: k of them due leave 110 − 20k for k ≤ 5: (110·1 + 90·10 + 70·45 + 50·120 + 30·210 + 10·252)/1024 − 10.
  const all = (110 + 900 + 3150 + 6000 + 6300 + 2520) / 1024 - 10;
  expect(worthOfLooking(110, ten).together).toBeCloseTo(all, 10);
  expect(all).toBeCloseTo(8.5352, 4);
});

test("what stops the money or can hurt somebody comes first, and what is certain is never looked at", () => {
  const { order } = worthOfLooking(100, [
    look("dear", 0.5, 120),
    look("brakes", 0.1, 1, { first: true }),
    look("sure", 1, 30),
    look("quick", 0.5, 119, { minutes: 1 }),
  ]);
  expect(ids(order)).toEqual(["brakes", "quick", "dear"]);
});

test("where nothing could change the decision no look is worth anything", () => {
  expect(worthOfLooking(1_000, [look("a", 0.5, 120)]).together).toBe(0);
  expect(worthOfLooking(-200, [look("a", 0.5, 120)]).together).toBe(0);
});

test("what an instrument may be off by makes a look worth less, and never more than the truth; two thousand draws", () => {
  const chance = fc.double({ min: 0.01, max: 0.99, noNaN: true });
  const off = fc.double({ min: 0, max: 20, noNaN: true });
  const things = fc.array(fc.record({ chance, mean: fc.integer({ min: 1, max: 500 }), off }), {
    minLength: 1,
    maxLength: 5,
  });
  fc.assert(
    fc.property(fc.integer({ min: -200, max: 1_000 }), things, (room, drawn) => {
      const truth = drawn.map(({ chance: p, mean }, at) => look(`n${at}`, p, mean));
      const read = truth.map((one, at) => ({
        ...one,
        reading: { spread: 1, uncertainty: drawn[at]?.off ?? 0 },
      }));
      const all = new Set(ids(truth));
      const [known, told] = [worthOfSeeing(room, truth, all), worthOfSeeing(room, read, all)];
      expect(told).toBeGreaterThanOrEqual(0);
      expect(told).toBeLessThanOrEqual(known + 1e-6);
      for (const [at, one] of read.entries())
        expect(varianceTold(one)).toBeLessThanOrEqual(varianceTold(truth[at] ?? one) + 1e-6);
    }),
    { numRuns: 2_000 },
  );
});
