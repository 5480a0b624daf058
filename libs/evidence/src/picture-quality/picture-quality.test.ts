import * as fc from "fast-check";
import { expect, test } from "vitest";
import { PictureQuality } from "@evenhand/shared/evidence";
import { pictureAdvice, pictureQuality } from "./index.ts";

const [width, height] = [256, 192];
/** A wall with a door in it, its edge so many pixels wide. */
const door = (edge: number) => ({
  width,
  height,
  data: Uint8Array.from({ length: width * height }, (_, at) => {
    const ramp = ((at % width) - width / 2) / edge + 0.5;
    return 60 + 140 * Math.max(0, Math.min(1, ramp));
  }),
});
const flat = (value: number) => ({ width, height, data: new Uint8Array(width * height).fill(value) });
const advised = (gray: Parameters<typeof pictureQuality>[0]) =>
  pictureAdvice(pictureQuality(gray)).map(({ advice }) => advice);

test("the wider an edge, the less sharp; out of focus it is said", () => {
  const found = [1, 2, 4, 8, 16].map((edge) => pictureQuality(door(edge)).sharpness);
  expect(found).toEqual(found.toSorted((a, b) => b - a));
  expect(advised(door(1))).toEqual([]);
  expect(advised(door(16))).toEqual(["blurred"]);
});

test("a bare panel with one thing in focus on it is not blurred", () => {
  const gray = flat(120);
  for (let y = 90; y < 100; y += 1) gray.data.fill(20, y * width + 100, y * width + 110);
  expect(advised(gray)).toEqual([]);
});

test("black, white and what is between", () => {
  expect(advised(flat(5))).toEqual(["dark"]);
  expect(advised(flat(255))).toEqual(["blurred", "bright"]);
  expect(pictureQuality(flat(255))).toEqual({ sharpness: 0, light: 1, dark: 0, bright: 1 });
});

test("what is larger is measured at the size that is measured", () => {
  const [wide, high] = [2048, 16];
  const gray = { width: wide, height: high, data: new Uint8Array(wide * high).fill(51) };
  expect(pictureQuality(gray)).toEqual({ sharpness: 0, light: 0.2, dark: 0, bright: 0 });
});

test("nothing has no quality", () => {
  expect(() => pictureQuality({ width: 0, height: 0, data: new Uint8Array() })).toThrow(RangeError);
});

test("of whatever picture, what is measured holds against its contract and can be advised on", () => {
  const picture = fc
    .record({ width: fc.integer({ min: 1, max: 20 }), height: fc.integer({ min: 1, max: 20 }) })
    .chain((size) =>
      fc
        .uint8Array({ minLength: size.width * size.height, maxLength: size.width * size.height })
        .map((data) => ({ ...size, data })),
    );
  fc.assert(
    fc.property(picture, (gray) => {
      const quality = PictureQuality.parse(pictureQuality(gray));
      expect(new Set(pictureAdvice(quality).map(({ words }) => words)).size).toBeLessThanOrEqual(2);
    }),
    { numRuns: 1000 },
  );
});
