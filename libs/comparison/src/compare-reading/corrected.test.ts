import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { AnswerOf } from "@evenhand/shared/answer";
import { acrossTread, judgeReadings } from "../../testing/small-readings.ts";
import { figuresOf, treadSpec } from "../../testing/small-items.ts";

type Reading = AnswerOf<"reading">;
const tread = (...values: number[]): Reading => ({
  kind: "reading",
  unit: "1/32in",
  values: values.map((value) => ({ value })),
});
const SEVERITY = ["agree", "consistent", "doubtful", "differ"];
const values = fc.array(fc.double({ min: 0.5, max: 16, noNaN: true }), { minLength: 1, maxLength: 4 });
const readings = values.map((some) => tread(...some));
const off = fc.record({
  effect: fc.double({ min: -2, max: 2, noNaN: true }),
  standardError: fc.double({ min: 0, max: 1, noNaN: true }),
});
const direction = { "stated-better": "found-better", "found-better": "stated-better", neither: "neither" };

const u = (standardError?: number): number =>
  figuresOf(
    judgeReadings(
      tread(8),
      tread(6),
      standardError === undefined ? {} : { correctionB: { effect: 0, standardError } },
    ),
  ).standardUncertainty;

const worn = (effect: number) =>
  judgeReadings(acrossTread(8, 8, 8), acrossTread(3, 8, 8), {
    correctionB: { effect, standardError: 0 },
  });

describe("a reading that is corrected", () => {
  it("is judged by what it is taken as, and shown as it was read", () => {
    const read = judgeReadings(tread(8, 8, 8), tread(6.2, 6.2, 6.2));
    const taken = judgeReadings(tread(8, 8, 8), tread(6.2, 6.2, 6.2), {
      correctionB: { effect: 2.3, standardError: 0.1 },
    });
    expect(figuresOf(taken)).toMatchObject({ correction: 2.3, b: { mean: 6.2 } });
    expect(figuresOf(taken).b.taken).toBeCloseTo(3.9, 12);
    expect(figuresOf(taken).difference).toBe(figuresOf(read).difference);
    expect([read.outcome, taken.outcome]).toEqual(["doubtful", "differ"]);
    expect(figuresOf(taken).zetaScore).toBeGreaterThan(figuresOf(read).zetaScore ?? Number.NaN);
  });

  it("is as unsure as it was, and as the correction is", () => {
    expect(u(0.4)).toBeCloseTo(Math.hypot(u(), 0.4), 12);
    expect(u(0)).toBe(u());
  });

  it("is set against limits and alarms as what it is taken as", () => {
    const spec = treadSpec({
      limits: [
        { side: "min", value: 2, severity: "danger", source: { kind: "regulation", text: "as published" } },
      ],
    });
    const limit = (effect: number) =>
      judgeReadings(tread(8), tread(2.2), { spec, correctionB: { effect, standardError: 0.05 } }).limits?.[0];
    expect([limit(0)?.b?.plain, limit(0.4)?.b?.plain]).toEqual(["pass", "fail"]);
    expect(limit(0.4)?.b?.probability).toBeLessThan(limit(0)?.b?.probability ?? 0);
    expect(limit(0.4)?.a).toEqual(limit(0)?.a);
  });

  it("is corrected at its worst spot too", () => {
    const [plain, corrected] = [worn(0), worn(0.5)];
    expect(figuresOf(corrected)).toMatchObject({
      b: { mean: 3, taken: 2.5 },
      difference: 5,
      correction: 0.5,
    });
    expect(figuresOf(corrected).zetaScore).toBeGreaterThan(figuresOf(plain).zetaScore ?? Number.NaN);
  });

  it("cancels where both sides were read with the one gauge that is off, and stays against a limit", () => {
    const both = { effect: 0.7, standardError: 0.5 };
    const spec = treadSpec({
      limits: [
        { side: "min", value: 2, severity: "danger", source: { kind: "regulation", text: "as published" } },
      ],
    });
    const shared = { spec, shared: true };
    const plain = judgeReadings(tread(6), tread(2.5), shared);
    const corrected = judgeReadings(tread(6), tread(2.5), {
      ...shared,
      correctionA: both,
      correctionB: both,
    });
    expect(figuresOf(corrected).zetaScore).toBeCloseTo(figuresOf(plain).zetaScore ?? Number.NaN, 9);
    expect([plain.limits?.[0]?.b?.plain, corrected.limits?.[0]?.b?.plain]).toEqual(["pass", "fail"]);
    const other = judgeReadings(tread(6), tread(2.5), { ...shared, correctionB: both });
    expect(figuresOf(other).standardUncertainty).toBeGreaterThan(figuresOf(plain).standardUncertainty);
  });
});

/** Limits have a table of their own for swapping, and may make both sides bad. */
const unlimited = { spec: treadSpec({ limits: [] }) };

describe("properties of corrections", () => {
  it("nought, surely nought, changes nothing", () => {
    fc.assert(
      fc.property(readings, readings, (a, b) => {
        const none = { effect: 0, standardError: 0 };
        expect(JSON.stringify(judgeReadings(a, b, { correctionA: none, correctionB: none }))).toBe(
          JSON.stringify(judgeReadings(a, b)),
        );
      }),
      { numRuns: 1000 },
    );
  });

  it("exchanging the sides with their corrections mirrors the difference and keeps the outcome", () => {
    fc.assert(
      fc.property(readings, readings, off, off, (a, b, offA, offB) => {
        const there = judgeReadings(a, b, { ...unlimited, correctionA: offA, correctionB: offB });
        const back = judgeReadings(b, a, { ...unlimited, correctionA: offB, correctionB: offA });
        expect(back.outcome).toBe(there.outcome);
        expect(back.direction).toBe(direction[there.direction]);
        expect(figuresOf(back).difference).toBe(0 - figuresOf(there).difference);
        expect(0 - (figuresOf(back).correction ?? 0)).toBe(0 + (figuresOf(there).correction ?? 0));
      }),
      { numRuns: 1000 },
    );
  });

  it("taking off what the gauge adds gives the outcome of the gauge that adds nothing", () => {
    fc.assert(
      fc.property(readings, readings, fc.double({ min: -2, max: 2, noNaN: true }), (a, b, effect) => {
        const read = { ...b, values: b.values.map(({ value }) => ({ value: value + effect })) };
        const [true_, high] = [
          judgeReadings(a, b),
          judgeReadings(a, read, { correctionB: { effect, standardError: 0 } }),
        ];
        const left = figuresOf(high).difference + (figuresOf(high).correction ?? 0);
        expect(left).toBeCloseTo(figuresOf(true_).difference, 9);
        expect(figuresOf(high).zetaScore).toBeCloseTo(figuresOf(true_).zetaScore ?? Number.NaN, 6);
      }),
      { numRuns: 1000 },
    );
  });

  it("farther is never milder, and a less sure correction never agrees more", () => {
    fc.assert(
      fc.property(readings, readings, off, fc.nat(40), fc.nat(40), (a, b, correctionB, first, more) => {
        const at = (tenths: number, correction = correctionB) => {
          const moved = { ...b, values: b.values.map(({ value }) => ({ value: value - tenths / 10 })) };
          return judgeReadings(a, moved, { ...unlimited, correctionB: correction });
        };
        const lower = figuresOf(at(0)).difference + correctionB.effect > 0;
        const sign = lower ? 1 : -1;
        const [near, far] = [at(sign * first), at(sign * (first + more))];
        expect(SEVERITY.indexOf(far.outcome)).toBeGreaterThanOrEqual(SEVERITY.indexOf(near.outcome));
        // Where a side's own scatter is taken from two or three readings, anything known beside it makes its degrees of freedom more.
        fc.pre(!figuresOf(near).a.scatterReplaced && !figuresOf(near).b.scatterReplaced);
        const unsure = at(first, { ...correctionB, standardError: correctionB.standardError + more / 20 });
        expect(unsure.outcome === "agree" && at(first).outcome !== "agree").toBe(false);
        expect(unsure.outcome === "differ" && at(first).outcome !== "differ").toBe(false);
      }),
      { numRuns: 1000 },
    );
  });
});
