import { estimate } from "@evenhand/measurement/estimate";
import { normalDeviate, seededRandom } from "@evenhand/measurement/random";
import { describe, expect, it } from "vitest";
import type { DrawnReading } from "../draws/index.ts";
import { rules } from "./index.ts";

const claims = rules.flatMap(({ id, trueClaims }) =>
  Object.entries(trueClaims).map(([name, claim]) => [id, name, claim] as const),
);

/** They read codes, dates, counts and choices, which carry no uncertainty of measurement. */
const WITHOUT_FIGURES = [
  "vin-form",
  "vin-year",
  "vin-reading",
  "same-number",
  "chassis-pattern",
  "partial-vin",
  "number-ends-alike",
  "date-order",
  "date-correct",
  "decade-less",
  "claims-against-dates",
  "tire-age",
  "tires-mixed",
  "teeth",
  "cylinder-story",
  "first-color",
  "odometer-disclosure",
];

const READINGS = 20_000;

describe("a claim exactly true breaks in no more than 1 % of readings", { timeout: 120_000 }, () => {
  it.each(claims)("%s: %s", (_, name, claim) => {
    const random = seededRandom(name.length);
    const read: DrawnReading = (truth, u) => estimate(truth + u * normalDeviate(random), u);
    let broken = 0;
    for (let reading = 0; reading < READINGS; reading += 1) if (claim(read).verdict === "breaks") broken += 1;
    expect(broken / READINGS).toBeLessThanOrEqual(0.01);
  });

  it("is drawn for every rule that reads figures", () => {
    const without = rules.filter(({ trueClaims }) => Object.keys(trueClaims).length === 0);
    expect(without.map(({ id }) => id)).toEqual(WITHOUT_FIGURES);
  });
});
