import * as fc from "fast-check";
import { expect, test } from "vitest";
import { MOST, panBy, styleOf, WHOLE, zoomBy, type Zoom } from "./zoom.ts";

const share = fc.double({ min: 0, max: 1, noNaN: true });
const factor = fc.double({ min: 0.05, max: 20, noNaN: true });
const at = fc.record({ x: share, y: share });
const someZoom = fc.tuple(factor, at).map(([by, place]) => zoomBy(WHOLE, by, place));

const isWithin = ({ scale, x, y }: Zoom): boolean => {
  const reach = 0.5 / scale - 1e-9;
  return [x, y].every((middle) => middle >= reach && middle <= 1 - reach);
};
/** Where a place of the picture is seen, from the middle of the frame, in shares of it. */
const seenAt = ({ scale, x }: Zoom, place: number): number => (place - x) * scale;

test("whatever is done, the picture fills its frame and is neither smaller than whole nor larger than allowed", () => {
  fc.assert(
    fc.property(someZoom, factor, at, share, share, (zoom, by, place, right, down) => {
      for (const after of [zoomBy(zoom, by, place), panBy(zoom, right - 0.5, down - 0.5)]) {
        expect(isWithin(after)).toBe(true);
        expect(after.scale).toBeGreaterThanOrEqual(1);
        expect(after.scale).toBeLessThanOrEqual(MOST);
      }
    }),
    { numRuns: 1_000 },
  );
});

test("the place under the finger stays under it while one looks closer", () => {
  fc.assert(
    fc.property(someZoom, fc.double({ min: 1, max: 8, noNaN: true }), at, (zoom, by, place) => {
      const after = zoomBy(zoom, by, place);
      expect(seenAt(after, place.x)).toBeCloseTo(seenAt(zoom, place.x), 6);
    }),
    { numRuns: 1_000 },
  );
});

test("closer and back again at one place is where one was", () => {
  const closer = zoomBy(WHOLE, 4, { x: 0.75, y: 0.25 });
  expect(closer).toEqual({ scale: 4, x: 0.6875, y: 0.3125 });
  expect(styleOf(closer)).toEqual({ translate: "-75% 75%", scale: 4 });
  expect(zoomBy(closer, 1 / 4, { x: 0.75, y: 0.25 })).toEqual(WHOLE);
});
