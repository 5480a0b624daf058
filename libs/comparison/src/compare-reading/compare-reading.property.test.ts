import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { AnswerOf } from "@evenhand/shared/answer";
import type { Instrument } from "@evenhand/shared/report";
import type { ReadingSpec } from "@evenhand/shared/sheet";
import { arbitraryReading } from "../../testing/arbitrary-report.ts";
import { figuresOf, readingItem } from "../../testing/small-items.ts";
import { sheet } from "../../testing/small-reports.ts";
import { compareReading } from "./index.ts";

type Reading = AnswerOf<"reading">;
const SEVERITY = ["agree", "consistent", "doubtful", "differ"];
const specs = sheet.sheet.items.flatMap(({ reading }) => reading ?? []);

const instrumentOf = (spec: ReadingSpec, fineness: number): Instrument => ({
  id: "tool",
  name: "tool",
  resolution: { value: spec.instrument.resolution * fineness, unit: spec.unit },
  accuracy: {
    absolute: { value: spec.instrument.accuracy.absolute * fineness, unit: spec.unit },
    share: spec.instrument.accuracy.share * fineness,
  },
});

/** A reading of each side in the base unit, on any item of the sheet, limits aside. */
const pair = fc.constantFrom(...specs).chain((spec) => {
  const plain = { ...spec, limits: [], alarms: [], alsoIn: [] };
  return fc.record({ spec: fc.constant(plain), a: arbitraryReading(plain), b: arbitraryReading(plain) });
});

const moved = (answer: Reading, by: number): Reading => ({
  ...answer,
  values: answer.values.map(({ value, spot }) => ({ value: value + by, spot })),
});

const compare = (spec: ReadingSpec, a: Reading, b: Reading, tools: readonly (Instrument | undefined)[]) =>
  compareReading({
    a,
    b,
    item: readingItem(spec),
    spec,
    contextA: {},
    contextB: {},
    instrumentA: tools[0],
    instrumentB: tools[1],
    shared: false,
    drifts: false,
    useAllowed: () => 0,
    times: () => ({ differentDays: true, later: "b" }),
  });

const fineness = fc.constantFrom(undefined, 0.25, 1, 3);

describe("monotone", () => {
  it("farther is never milder", () => {
    fc.assert(
      fc.property(
        pair,
        fineness,
        fineness,
        fc.nat(40),
        fc.nat(40),
        ({ spec, a, b }, toolA, toolB, first, more) => {
          const tools = [toolA, toolB].map((fine) =>
            fine === undefined ? undefined : instrumentOf(spec, fine),
          );
          const delta = Math.max(spec.delta.absolute, spec.delta.share * Math.abs(spec.typical ?? 0));
          const away = figuresOf(compare(spec, a, b, tools)).difference > 0 ? -1 : 1;
          const [near, far] = [first, first + more].map((tenths) => {
            const result = compare(spec, a, moved(b, (away * tenths * delta) / 10), tools);
            return { severity: SEVERITY.indexOf(result.outcome), figures: figuresOf(result) };
          });
          if (near === undefined || far === undefined) throw new Error("no comparison");
          // s₀ has a share of the reading on some items; where that alone turns the F-test, the scatter is another.
          fc.pre(near.figures.b.scatterReplaced === far.figures.b.scatterReplaced);
          expect(far.severity).toBeGreaterThanOrEqual(near.severity);
        },
      ),
      { numRuns: 4000 },
    );
  });

  it("a finer resolution or accuracy at the same values never turns agree into differ", () => {
    fc.assert(
      fc.property(
        pair,
        fc.constantFrom(0.25, 1, 3),
        fc.double({ min: 0, max: 1, noNaN: true }),
        ({ spec, a, b }, coarse, share) => {
          const before = compare(spec, a, b, [
            instrumentOf(spec, coarse),
            instrumentOf(spec, coarse),
          ]).outcome;
          const after = compare(spec, a, b, [
            instrumentOf(spec, coarse),
            instrumentOf(spec, coarse * share),
          ]).outcome;
          expect(before === "agree" && after === "differ").toBe(false);
        },
      ),
      { numRuns: 2000 },
    );
  });
});
