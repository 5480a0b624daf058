import type { ReadingFigures } from "@evenhand/shared/comparison";
import { expect, test } from "vitest";
import { noteAt, readingScale } from "./reading-scale.ts";

const side = (mean: number): ReadingFigures["a"] => {
  const figures: ReadingFigures["a"] = JSON.parse(JSON.stringify({ mean, standardUncertainty: 1 }));
  return figures;
};
const figures: ReadingFigures = JSON.parse(
  JSON.stringify({ of: "reading", unit: "mm", a: side(100), b: side(110), delta: 4, coverageFactor: 2 }),
);

test("the stated, the found and the limits all lie on the scale, in their order and inside its ends", () => {
  const limits = JSON.parse(JSON.stringify([{ side: "most", value: 130, unit: "mm", source: "s" }]));
  const { stated, found, shown, x } = readingScale(figures, limits, 320);
  expect([stated, found]).toEqual([
    { low: 98, high: 102 },
    { low: 108, high: 112 },
  ]);
  const across = [shown.low, stated.low, stated.high, found.low, found.high, 130, shown.high].map(x);
  expect(across).toEqual(across.toSorted((a, b) => a - b));
  expect([across[0], across.at(-1)]).toEqual([10, 310]);
});

test("the words over the band keep inside the drawing, wherever the band lies", () => {
  expect(noteAt(330, 345)).toBe(215);
  expect(noteAt(4, 345)).toBe(130);
  expect(noteAt(300, 700)).toBe(300);
  expect(noteAt(10, 200)).toBe(100);
});
