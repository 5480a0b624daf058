import { describe, expect, it } from "vitest";
import { greatCircleDistance, MEAN_EARTH_RADIUS } from "@evenhand/booking/great-circle";
import geodesy from "../../fixtures/published/geodesy.json" with { type: "json" };

// Source and mark of every value: fixtures/published/geodesy.json.
describe("great-circle distance", () => {
  /** Moritz, Geodetic Reference System 1980: semi-axes a and b, from memory. */
  it("is reckoned on the mean radius (2a + b) / 3", () => {
    expect(MEAN_EARTH_RADIUS).toBeCloseTo((2 * 6_378_137 + 6_356_752.3141) / 3, 1);
  });

  it.each(geodesy.sphere)(
    "is the published haversine distance of $meters m, scaled to the mean radius",
    (row) => {
      const scaled = (greatCircleDistance(row.from, row.to) * row.radiusMeters) / MEAN_EARTH_RADIUS;
      expect(Math.abs(scaled / row.meters - 1)).toBeLessThan(1e-9);
    },
  );

  it.each([...geodesy.sphere, ...geodesy.ellipsoid])(
    "lies within 0.5 % of the published $meters m",
    (row) => {
      expect(Math.abs(greatCircleDistance(row.from, row.to) / row.meters - 1)).toBeLessThan(0.005);
    },
  );
});
