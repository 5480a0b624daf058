import * as fc from "fast-check";
import { expect, test } from "vitest";
import { type Fingerprint, WINDOWS } from "../fingerprint/index.ts";
import { hashDistance, type PictureHash } from "../perceptual-hash/index.ts";
import { HashTable } from "./index.ts";

// Few different bits, so that near ones are met.
const half = fc.constantFrom(0, 1, 3, 0xff, 0xff_ff, 0xff_ff_ff_ff);
const print: fc.Arbitrary<Fingerprint> = fc.array(fc.tuple(half, half), {
  minLength: WINDOWS.length,
  maxLength: WINDOWS.length,
});

const whole = (each: Fingerprint): PictureHash => each[0] ?? [0, 0];

/** Said plainly: whole against every window, both ways. */
function plainly(asked: Fingerprint, kept: Fingerprint): number {
  const all = [
    ...kept.map((each) => hashDistance(whole(asked), each)),
    ...asked.map((each) => hashDistance(each, whole(kept))),
  ];
  return Math.min(...all);
}

test("what is found is what every hash held against every other gives", () => {
  fc.assert(
    fc.property(
      fc.array(print, { maxLength: 100 }),
      print,
      fc.integer({ min: 0, max: 40 }),
      (kept, asked, r) => {
        const table = new HashTable();
        for (const [number, each] of kept.entries()) table.add(number, each);
        const wanted = kept
          .map((each, number) => ({ number, distance: plainly(asked, each) }))
          .filter(({ distance }) => distance <= r)
          .toSorted((a, b) => a.distance - b.distance || a.number - b.number);
        expect(table.size).toBe(kept.length);
        expect(table.near(asked, r, 1000)).toEqual(wanted);
        expect(table.near(asked, r, 2)).toEqual(wanted.slice(0, 2));
      },
    ),
    { numRuns: 1000 },
  );
});

test("nothing asked for finds nothing", () => {
  expect(new HashTable().near([], 12, 5)).toEqual([]);
});
