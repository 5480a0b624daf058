import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  findHolding,
  holds,
  type Interval,
  intersect,
  normalize,
  overlap,
  startsTouching,
  startsWithin,
  subtract,
  union,
} from "./index.ts";

const LAST = 60;
const stretch = fc.tuple(fc.nat(LAST), fc.nat(12)).map(([start, long]) => ({ start, end: start + long }));
const anyList = fc.array(stretch, { maxLength: 12 });
const list = anyList.map(normalize);
const runs = { numRuns: 2_000 };

const instants = Array.from({ length: LAST + 40 }, (_, index) => index - 10);
const inside = (intervals: readonly Interval[], at: number): boolean =>
  intervals.some(({ start, end }) => start <= at && at < end);
const isNormal = (intervals: readonly Interval[]): boolean =>
  intervals.every(({ start, end }, i) => start < end && (i === 0 || intervals[i - 1]!.end < start));
/** A list is exactly the set of instants at which the rule is true. */
const expectSet = (found: readonly Interval[], rule: (at: number) => boolean): void => {
  expect(instants.filter((at) => inside(found, at))).toEqual(instants.filter(rule));
};

describe("interval algebra", () => {
  it("gives the results of its examples", () => {
    expect(
      normalize([
        { start: 5, end: 9 },
        { start: 1, end: 5 },
        { start: 3, end: 3 },
      ]),
    ).toEqual([{ start: 1, end: 9 }]);
    expect(union([{ start: 0, end: 2 }], [{ start: 2, end: 4 }])).toEqual([{ start: 0, end: 4 }]);
    expect(intersect([{ start: 0, end: 5 }], [{ start: 3, end: 9 }])).toEqual([{ start: 3, end: 5 }]);
    expect(subtract([{ start: 0, end: 9 }], [{ start: 3, end: 5 }])).toEqual([
      { start: 0, end: 3 },
      { start: 5, end: 9 },
    ]);
    expect(findHolding([{ start: 0, end: 5 }], 5)).toBeUndefined();
    expect(holds([{ start: 0, end: 5 }], { start: 2, end: 5 })).toBe(true);
    expect(startsWithin([{ start: 0, end: 10 }], 2, 5)).toEqual([{ start: -2, end: 6 }]);
    expect(startsTouching([{ start: 10, end: 20 }], 0, 5)).toEqual([{ start: 6, end: 20 }]);
    expect(overlap({ start: 0, end: 5 }, { start: 5, end: 9 })).toBe(false);
  });

  it("normalizes to the same instants", () => {
    fc.assert(
      fc.property(anyList, (a) => {
        expect(isNormal(normalize(a))).toBe(true);
        expectSet(normalize(a), (at) => inside(a, at));
        expect(normalize(normalize(a))).toEqual(normalize(a));
      }),
      runs,
    );
  });

  it("unites, intersects and subtracts as sets of instants do, and stays normal", () => {
    fc.assert(
      fc.property(list, list, (a, b) => {
        expectSet(union(a, b), (at) => inside(a, at) || inside(b, at));
        expectSet(intersect(a, b), (at) => inside(a, at) && inside(b, at));
        expectSet(subtract(a, b), (at) => inside(a, at) && !inside(b, at));
        expect([union(a, b), intersect(a, b), subtract(a, b)].every(isNormal)).toBe(true);
      }),
      runs,
    );
  });

  it("subtracts what is sorted but overlaps", () => {
    fc.assert(
      fc.property(list, anyList, (a, b) => {
        const sorted = b.filter(({ start, end }) => start < end).sort((x, y) => x.start - y.start);
        expect(subtract(a, sorted)).toEqual(subtract(a, normalize(b)));
      }),
      runs,
    );
  });

  it("keeps the laws of sets", () => {
    fc.assert(
      fc.property(list, list, list, (a, b, c) => {
        expect(intersect(a, b)).toEqual(intersect(b, a));
        expect(union(union(a, b), c)).toEqual(union(a, union(b, c)));
        expect(intersect(a, union(b, c))).toEqual(union(intersect(a, b), intersect(a, c)));
        expect(subtract(a, union(b, c))).toEqual(subtract(subtract(a, b), c));
        expect(union(intersect(a, b), subtract(a, b))).toEqual(a);
        expect(intersect(subtract(a, b), b)).toEqual([]);
      }),
      runs,
    );
  });

  it("never changes what it is given", () => {
    fc.assert(
      fc.property(anyList, list, list, (any, a, b) => {
        const before = JSON.stringify([any, a, b]);
        normalize(any);
        union(a, b);
        intersect(a, b);
        subtract(a, b);
        startsTouching(a, 1, 3);
        expect(JSON.stringify([any, a, b])).toBe(before);
      }),
      runs,
    );
  });

  it("finds the stretch that holds an instant or a part", () => {
    fc.assert(
      fc.property(list, stretch, (a, part) => {
        expect(findHolding(a, part.start)).toEqual(
          a.find(({ start, end }) => start <= part.start && part.start < end),
        );
        const held = a.some(({ start, end }) => start <= part.start && part.start < end && part.end <= end);
        expect(holds(a, part)).toBe(held);
      }),
      runs,
    );
  });

  it("finds exactly the starts at which a part fits or touches", () => {
    fc.assert(
      fc.property(list, fc.integer({ min: -3, max: 5 }), fc.integer({ min: 1, max: 6 }), (a, from, long) => {
        const part = (at: number): Interval => ({ start: at + from, end: at + from + long });
        expect(isNormal(startsWithin(a, from, from + long))).toBe(true);
        expectSet(startsWithin(a, from, from + long), (at) =>
          a.some((one) => one.start <= part(at).start && part(at).end <= one.end),
        );
        expectSet(startsTouching(a, from, from + long), (at) => a.some((one) => overlap(one, part(at))));
      }),
      runs,
    );
  });
});
