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
  const wild = fc.tuple(arbitraryReading(plain), steps).map(([answer, far]) => scattered(answer, plain, far));
  const either = fc.oneof(arbitraryReading(plain), wild);
  return fc.record({ spec: fc.constant(plain), a: either, b: either });
});

/** Readings of one spot, or of several that are not named, which scatter up to eight times as far as they should. */
const scattered = (answer: Reading, { repeatability }: ReadingSpec, steps: readonly number[]): Reading => ({
  ...answer,
  values: steps.map((step) => {
    const { value } = answer.values[0] ?? { value: 0 };
    return { value: value + step * Math.hypot(repeatability.value, repeatability.share * value) };
  }),
});
const steps = fc.array(fc.double({ min: -8, max: 8, noNaN: true }), { minLength: 1, maxLength: 4 });

const micrometers = (...values: number[]): Reading => ({
  kind: "reading",
  unit: "um",
  values: values.map((value) => ({ value })),
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
  it("farther is not milder where s₀ grows with the reading, and less of it explains the scatter seen", () => {
    const spec = sheet.items.get("body.paint-highest")?.item.reading;
    if (spec === undefined) throw new Error("not on the sheet");
    const plain = { ...spec, limits: [], alarms: [] };
    const tools = [instrumentOf(spec, 1), instrumentOf(spec, 1)];
    // From 188 µm down the scatter of ±40 was no longer explained at 1 %, and U grew fivefold.
    const severities = Array.from({ length: 40 }, (_, fives) => 260 - 5 * fives).map((middle) => {
      const { outcome } = compare(
        plain,
        micrometers(380, 380, 380),
        micrometers(middle - 40, middle + 40),
        tools,
      );
      return SEVERITY.indexOf(outcome);
    });
    expect(severities).toEqual(severities.toSorted((one, other) => one - other));
    expect(new Set(severities).size).toBeGreaterThan(1);
  });

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
            return SEVERITY.indexOf(result.outcome);
          });
          if (near === undefined || far === undefined) throw new Error("no comparison");
          expect(far).toBeGreaterThanOrEqual(near);
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
