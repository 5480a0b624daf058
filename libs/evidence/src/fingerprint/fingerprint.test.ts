import * as fc from "fast-check";
import { expect, test } from "vitest";
import { fingerprint, fingerprintBytes, readFingerprint, WINDOWS } from "./index.ts";

const bits = fc.integer({ min: 0, max: 0xff_ff_ff_ff });

test("what is stored is read back as it was", () => {
  const print = fc.array(fc.tuple(bits, bits), { minLength: WINDOWS.length, maxLength: WINDOWS.length });
  fc.assert(
    fc.property(print, (each) => {
      expect(readFingerprint(fingerprintBytes(each))).toEqual(each);
    }),
    { numRuns: 1000 },
  );
});

test("half a fingerprint is none", () => {
  expect(() => readFingerprint(new Uint8Array(8))).toThrow(RangeError);
});

test("no window leaves the picture, and each is looked at", () => {
  for (const { left, top, width, height } of WINDOWS) {
    expect(left + width).toBeLessThanOrEqual(1 + 1e-9);
    expect(top + height).toBeLessThanOrEqual(1 + 1e-9);
  }
  expect(fingerprint({ width: 2, height: 2, data: new Uint8Array(4) })).toHaveLength(WINDOWS.length);
});
