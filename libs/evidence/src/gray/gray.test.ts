import * as fc from "fast-check";
import { expect, test } from "vitest";
import { grayOfColors, resized, WHOLE } from "./index.ts";

const picture = fc
  .record({ width: fc.integer({ min: 1, max: 12 }), height: fc.integer({ min: 1, max: 12 }) })
  .chain(({ width, height }) =>
    fc
      .uint8Array({ minLength: width * height, maxLength: width * height })
      .map((data) => ({ width, height, data })),
  );
const mean = (values: ArrayLike<number>): number =>
  Array.from(values).reduce((sum, each) => sum + each, 0) / values.length;

test("at its own size a picture stays as it is", () => {
  const gray = { width: 3, height: 2, data: new Uint8Array([1, 2, 3, 4, 5, 6]) };
  expect([...resized(gray, WHOLE, 3, 2)]).toEqual([1, 2, 3, 4, 5, 6]);
});

test("a part is cut out by its shares", () => {
  const gray = { width: 4, height: 1, data: new Uint8Array([0, 10, 20, 30]) };
  expect([...resized(gray, { left: 0.25, top: 0, width: 0.5, height: 1 }, 2, 1)]).toEqual([10, 20]);
});

test("whatever the size, the mean of the whole stays, and no value leaves its range", () => {
  fc.assert(
    fc.property(picture, fc.integer({ min: 1, max: 20 }), fc.integer({ min: 1, max: 20 }), (gray, w, h) => {
      const made = resized(gray, WHOLE, w, h);
      expect(mean(made)).toBeCloseTo(mean(gray.data), 6);
      expect(Math.min(...made)).toBeGreaterThanOrEqual(Math.min(...gray.data) - 1e-9);
      expect(Math.max(...made)).toBeLessThanOrEqual(Math.max(...gray.data) + 1e-9);
    }),
    { numRuns: 1000 },
  );
});

test("green weighs most and blue least; how opaque it is does not count", () => {
  const data = new Uint8ClampedArray([255, 0, 0, 255, 0, 255, 0, 9, 0, 0, 255, 255, 80, 80, 80, 0]);
  expect([...grayOfColors({ width: 2, height: 2, data }).data]).toEqual([54, 182, 18, 80]);
});

test("what has not four bytes a pixel is no picture in colors", () => {
  expect(() => grayOfColors({ width: 2, height: 1, data: new Uint8ClampedArray(7) })).toThrow(RangeError);
});
