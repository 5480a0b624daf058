import { seededRandom } from "@evenhand/measurement/random";
import { describe, expect, test } from "vitest";
import { type Gray, resized, type Window } from "../gray/index.ts";
import { align } from "./align.ts";
import { valueAt } from "./alignment.ts";
import { samePicture } from "./index.ts";

const [width, height] = [400, 300];

/** A picture of a few large things, and of many small marks that hang on the seed. */
function scene(seed: number): Gray {
  const random = seededRandom(seed);
  const data = new Uint8Array(width * height);
  for (let at = 0; at < data.length; at += 1) data[at] = 90 + ((at % width) * 60) / width;
  const mark = (left: number, top: number, wide: number, high: number, value: number): void => {
    for (let y = top; y < Math.min(height, top + high); y += 1)
      data.fill(value, y * width + left, y * width + Math.min(width, left + wide));
  };
  // The same for every seed: the outline of the thing.
  mark(60, 80, 280, 130, 150);
  mark(90, 200, 70, 60, 30);
  mark(240, 200, 70, 60, 30);
  for (let at = 0; at < 400; at += 1)
    mark(
      Math.floor(random() * width),
      Math.floor(random() * height),
      3 + Math.floor(random() * 9),
      2 + Math.floor(random() * 6),
      Math.floor(random() * 256),
    );
  return { width, height, data };
}

const changed = (gray: Gray, part: Window, [wide, high]: readonly [number, number], by = 1): Gray => ({
  width: wide,
  height: high,
  data: Uint8Array.from(resized(gray, part, wide, high), (value) => Math.min(255, Math.round(value * by))),
});

const whole = { left: 0, top: 0, width: 1, height: 1 };
const original = scene(1);

describe("a copy is found whatever was done to it", () => {
  test.each([
    ["nothing", changed(original, whole, [width, height])],
    ["made smaller", changed(original, whole, [220, 165])],
    ["made darker", changed(original, whole, [width, height], 0.7)],
    [
      "cut around the middle",
      changed(original, { left: 0.05, top: 0.05, width: 0.9, height: 0.9 }, [360, 270]),
    ],
    ["cut in a corner", changed(original, { left: 0.05, top: 0, width: 0.95, height: 0.95 }, [380, 285])],
    [
      "cut by what no start is",
      changed(original, { left: 0.03, top: 0.01, width: 0.93, height: 0.96 }, [372, 288]),
    ],
  ])("%s", (_, copy) => {
    expect(samePicture(original, copy)).toMatchObject({ isSame: true });
    expect(samePicture(copy, original)).toMatchObject({ isSame: true });
  });
});

test("the same outline with other marks is another picture", () => {
  for (const seed of [2, 3, 4]) expect(samePicture(original, scene(seed)).isSame).toBe(false);
});

test("of pictures without detail nothing is said", () => {
  const flat = { width, height, data: new Uint8Array(width * height).fill(90) };
  expect(samePicture(flat, flat)).toEqual({ agreement: 0, blocks: 0, isSame: false });
});

test("the alignment found is the one that was made", () => {
  const part = { left: 0.04, top: 0.02, width: 0.92, height: 0.94 };
  const copy = changed(original, part, [width, height]);
  const grids = [32, 64, 128].map((side) => {
    const grid = (gray: Gray) => ({ side, values: resized(gray, whole, side, side) });
    return [grid(original), grid(copy)] as const;
  });
  const found = align(grids);
  expect(found.sx).toBeCloseTo(part.width, 2);
  expect(found.tx).toBeCloseTo(part.left, 2);
  expect(found.sy).toBeCloseTo(part.height, 2);
  expect(found.ty).toBeCloseTo(part.top, 2);
  expect(align([])).toEqual({ sx: 1, tx: 0, sy: 1, ty: 0 });
});

test("between the middles of four pixels lies their mean, and beyond the last nothing", () => {
  const grid = { side: 2, values: new Float64Array([0, 10, 20, 30]) };
  expect(valueAt(grid, 0.5, 0.5)).toBe(15);
  expect(valueAt(grid, 0.25, 0.75)).toBe(20);
  expect(valueAt(grid, 0.1, 0.5)).toBeNaN();
  expect(valueAt(grid, Number.NaN, 0.5)).toBeNaN();
});
