import { describe, expect, it } from "vitest";
import type { Finding } from "@evenhand/shared/finding";
import type { Instrument } from "@evenhand/shared/report";
import { finding, sheet, statement } from "../../testing/small-reports.ts";
import { repeatsOfSide } from "./index.ts";

const gauge: Instrument = { id: "gauge", name: "compression gauge" };

/** s₀ 4 psi, r 2 psi, one spot, six cylinders. */
const compression = (values: readonly (readonly number[])[], more: Partial<Finding> = {}): Finding[] =>
  values.map((of, index) =>
    finding(
      "engine.compression",
      { kind: "reading", unit: "psi", values: of.map((value) => ({ value })) },
      { position: `cylinder-${index + 1}`, instrument: "gauge", ...more },
    ),
  );
const of = (findings: Finding[]) => repeatsOfSide(statement(findings, { instruments: [gauge] }), sheet);
/** Six cylinders, each read three times: 12 degrees of freedom. */
const apart = (...by: number[]) => [150, 147, 152, 149, 151, 155].map((one) => by.map((off) => one + off));

const twoSpots = (values: number[], spots: (string | undefined)[]) =>
  finding(
    "brakes.disc-thickness",
    { kind: "reading", unit: "mm", values: values.map((value, at) => ({ value, spot: spots[at] })) },
    { position: "left-front", instrument: "gauge" },
  );

// s₀ 2.5 mm and placement 1.5 mm: variances 6.25 and 8.5, r 1 mm.
const heights = (by: number, count: number) =>
  Array.from({ length: count }, (_, at) =>
    finding(
      "steering.ride-height",
      { kind: "reading", unit: "mm", values: [-by, 0, by].map((off) => ({ value: 381 + at + off })) },
      { position: `corner-${at}`, instrument: "gauge" },
    ),
  );

describe("repeatsOfSide", () => {
  it("finds what scatters as the sheet says", () => {
    const found = of(compression(apart(-4, 0, 3)));
    expect(found).toMatchObject({ found: "as-declared", places: 6, degreesOfFreedom: 12 });
    expect(found.ratio).toBeCloseTo((16 + 9 - 1 / 3) / 2 / (16 + 4 / 12), 9);
    expect(found).not.toHaveProperty("chance");
  });

  it("finds one reading written three times", () => {
    const found = of(compression(apart(0, 0, 0)));
    expect(found).toMatchObject({ found: "too-alike", ratio: 0, chance: 0 });
    expect(of(compression(apart(0, 1, 0))).found).toBe("too-alike");
  });

  it("finds what scatters more, with the chance of so much", () => {
    const found = of(compression(apart(-9, 0, 8)));
    expect(found).toMatchObject({ found: "scatters-more" });
    expect(found.chance).toBeLessThan(0.005);
  });

  it("asks nobody who rounds more coarsely than they scatter", () => {
    const fives = [150, 145, 155, 150, 160, 145].map((one) => [one, one, one]);
    expect(of(compression(fives))).toEqual({ found: "too-few", places: 0, degreesOfFreedom: 0 });
    const coarse = { ...gauge, resolution: { value: 5, unit: "psi" as const } };
    const report = statement(compression(apart(0, 0, 0)), { instruments: [coarse] });
    expect(repeatsOfSide(report, sheet).found).toBe("too-few");
  });

  it("counts repeats of one spot with a named instrument, and nothing else", () => {
    expect(of(compression(apart(0)))).toMatchObject({ places: 0 });
    expect(of(compression(apart(0, 0, 0), { instrument: undefined }))).toMatchObject({ places: 0 });
    const across = ["inner", "center", "outer"].map((spot, at) => ({ spot, value: 7 + at / 2 }));
    const tread = ["left-front", "right-front", "left-rear", "right-rear"].map((position) =>
      finding(
        "wheels.tread-depth",
        { kind: "reading", unit: "1/32in", values: [...across, ...across] },
        { position, instrument: "gauge" },
      ),
    );
    expect(of(tread)).toMatchObject({ places: 0 });
    expect(of([twoSpots([24.01, 23.13], [])])).toMatchObject({ places: 0 });
    expect(of([twoSpots([24.01, 23.13, 24.03, 23.17], ["in", "out", "in", "out"])])).toMatchObject({
      places: 1,
      degreesOfFreedom: 2,
    });
    expect(of([twoSpots([24.01, 23.13, 24.03], ["in", undefined, undefined])])).toMatchObject({ places: 0 });
  });

  it("lets placement explain what lies farther apart, and never what lies too close", () => {
    expect(of(heights(3.3, 40)).found).toBe("as-declared");
    expect(of(heights(2.1, 40)).found).toBe("as-declared");
    expect(of(heights(3.9, 40)).found).toBe("scatters-more");
    expect(of(heights(1.4, 40)).found).toBe("too-alike");
  });
});
