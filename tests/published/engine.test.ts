// Sources stand beside each figure in fixtures/published/engine.json.
import { describe, expect, it } from "vitest";
import { compression } from "@evenhand/handbook/compression";
import { displacement } from "@evenhand/handbook/displacement";
import { exactly } from "@evenhand/handbook/interval";
import { roadRatio } from "@evenhand/handbook/road-ratio";
import published from "../../fixtures/published/engine.json" with { type: "json" };

describe("published speeds", () => {
  it.each(published.speed.cases)(
    "$rpm rpm on $D in through $ratio is $mph_published mph",
    ({ rpm, D, ratio, mph_exact, mph_published }) => {
      const { ranges } = roadRatio({
        engineSpeed: exactly(rpm),
        roadSpeed: exactly(mph_exact),
        circumference: exactly(Math.PI * D),
        gear: 1,
        coupling: "clutch",
      });
      expect(ranges?.ratio?.low).toBeCloseTo(ratio, 9);
      expect(ranges?.ratio?.high).toBeCloseTo(ratio, 9);
      // The published figures are whole miles an hour worked out with 336 for 336.1352.
      expect(Math.abs(mph_exact - mph_published)).toBeLessThan(0.5);
    },
  );

  it("has the exact constant 63,360 / (60 π)", () => {
    expect(published.speed.constant_exact).toContain("336.13523981");
    expect(63_360 / (60 * Math.PI)).toBeCloseTo(336.13523981, 8);
  });
});

describe("published displacement", () => {
  it.each(published.displacement.cases)(
    "$bore by $stroke, $cyl cylinders",
    ({ bore, stroke, cyl, in3, published: printed }) => {
      const { figures } = displacement({ bore: exactly(bore), stroke: exactly(stroke), cylinders: cyl });
      expect(figures.displacement?.value).toBeCloseTo(in3, 6);
      // Printed with 0.7854 for π/4.
      expect(Math.abs(0.7854 * bore ** 2 * stroke * cyl - printed)).toBeLessThanOrEqual(0.0005);
    },
  );
});

const pair = (high: number, low: number) =>
  compression({
    cylinders: [
      { cylinder: 1, pressure: exactly(high) },
      { cylinder: 2, pressure: exactly(low) },
    ],
  });

describe("published compression rule", () => {
  it.each(published.compression.cases)("highest $high, lowest $low: $ok", ({ high, low, ok }) => {
    expect(pair(high, low).verdict).toBe(ok ? "holds" : "breaks");
  });

  it.each(published.compression.table_max_min)(
    "keeps to the table's row %s and %s psi, to the pound the table rounds to",
    (high, low) => {
      expect(pair(high, low + 0.5).verdict).toBe("holds");
      expect(pair(high, low - 1).verdict).toBe("breaks");
    },
  );

  it("passes at exactly 75 % and fails under it", () => {
    expect(pair(200, 150).verdict).toBe("holds");
    expect(pair(200, 149.999).verdict).toBe("breaks");
  });
});
