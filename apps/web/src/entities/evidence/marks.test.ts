import { PictureMark } from "@evenhand/shared/evidence";
import * as fc from "fast-check";
import { expect, test } from "vitest";
import { strokeMark, textMark } from "./marks.ts";

const anywhere = fc.record({
  x: fc.double({ min: -1, max: 2, noNaN: true }),
  y: fc.double({ min: -1, max: 2, noNaN: true }),
});

test("whatever a hand draws, also over the edge, is a mark the service takes", () => {
  fc.assert(
    fc.property(
      fc.constantFrom("circle" as const, "arrow" as const),
      anywhere,
      anywhere,
      fc.double({ min: 0.2, max: 5, noNaN: true }),
      (kind, from, to, ratio) => {
        const mark = strokeMark(kind, from, to, ratio);
        expect(PictureMark.parse(mark)).toEqual(mark);
      },
    ),
    { numRuns: 1_000 },
  );
});

test("a stroke down a wide picture draws a circle that reaches to where it ended", () => {
  expect(strokeMark("circle", { x: 0.5, y: 0.25 }, { x: 0.5, y: 0.75 }, 2)).toEqual({
    kind: "circle",
    x: 0.5,
    y: 0.25,
    radius: 0.25,
  });
});

test("an arrow points to where the stroke ended; a press is pointed to from inside the picture", () => {
  expect(strokeMark("arrow", { x: 0.1, y: 0.2 }, { x: 0.5, y: 0.6 }, 1)).toEqual({
    kind: "arrow",
    x: 0.1,
    y: 0.2,
    toX: 0.5,
    toY: 0.6,
  });
  expect(strokeMark("arrow", { x: 0.9, y: 0.1 }, { x: 0.9, y: 0.1 }, 1)).toMatchObject({ x: 0.78, y: 0.22 });
});

test("words stand where they were put", () => {
  expect(textMark({ x: 0.123_456, y: 0.5 }, "crack")).toEqual({
    kind: "text",
    x: 0.1235,
    y: 0.5,
    words: "crack",
  });
});
