import * as fc from "fast-check";
import { expect, test } from "vitest";
import type { Gray } from "../gray/index.ts";
import { countOnes, hashDistance, perceptualHash } from "./index.ts";

/** A picture of patches, light and dark as a picture of things is, that hangs on the numbers alone. */
const scene = (width: number, height: number, seed: number, light = 1): Gray => ({
  width,
  height,
  data: Uint8Array.from({ length: width * height }, (_, at) => {
    const patch =
      Math.floor(((at % width) / width) * 10) + 10 * Math.floor((Math.floor(at / width) / height) * 8);
    return light * (40 + 180 * Math.abs(Math.sin(patch * 12.9898 + seed * 78.233)));
  }),
});

test("the same scene at another size and in another light has nearly the same hash", () => {
  const first = perceptualHash(scene(400, 300, 1));
  expect(hashDistance(first, perceptualHash(scene(120, 90, 1)))).toBeLessThanOrEqual(2);
  expect(hashDistance(first, perceptualHash(scene(400, 300, 1, 0.7)))).toBeLessThanOrEqual(6);
});

test("another scene has another hash", () => {
  const first = perceptualHash(scene(400, 300, 1));
  expect(hashDistance(first, perceptualHash(scene(400, 300, 2.4)))).toBeGreaterThan(16);
});

const wave = (at: number): number => Math.cos(((2 * at + 1) * Math.PI) / 64);

test("the first basis picture alone lies over the median, in the first bit", () => {
  const data = Uint8Array.from({ length: 1024 }, (_, at) =>
    Math.round(128 + 100 * wave(at % 32) * wave(Math.floor(at / 32))),
  );
  const [high] = perceptualHash({ width: 32, height: 32, data });
  expect(high >>> 31).toBe(1);
});

test("ones are counted as written out", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 0xff_ff_ff_ff }), (bits) => {
      expect(countOnes(bits)).toBe(bits.toString(2).replaceAll("0", "").length);
    }),
    { numRuns: 1000 },
  );
});
