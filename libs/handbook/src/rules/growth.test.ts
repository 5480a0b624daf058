import * as fc from "fast-check";
import type { RuleResult } from "@evenhand/shared/cross-check";
import { estimate } from "@evenhand/measurement/estimate";
import type { Estimate } from "@evenhand/measurement/estimate";
import { describe, expect, it } from "vitest";
import { charging } from "../charging/index.ts";
import { claimsAgainstDates } from "../claims-against-dates/index.ts";
import { compression } from "../compression/index.ts";
import { cranking } from "../cranking/index.ts";
import { dateCorrect } from "../date-correct/index.ts";
import { dateOrder } from "../date-order/index.ts";
import type { DateSet } from "../day/index.ts";
import { displacement } from "../displacement/index.ts";
import { gapTaper } from "../gap-taper/index.ts";
import { inUseFreePlay, inUseLining, inUseRunout, inUseToe, inUseTread } from "../in-use/index.ts";
import { leakDown } from "../leak-down/index.ts";
import { odometer } from "../odometer/index.ts";
import { oilPressure } from "../oil-pressure/index.ts";
import { originalPaint } from "../original-paint/index.ts";
import { paintMap } from "../paint-map/index.ts";
import { panelColor } from "../panel-color/index.ts";
import { roadRatio } from "../road-ratio/index.ts";
import { speedometer } from "../speedometer/index.ts";
import { square } from "../square/index.ts";
import { tireDiameter } from "../tire-diameter/index.ts";
import { turnsRatio } from "../turns-ratio/index.ts";
import { vacuum } from "../vacuum/index.ts";
import { wearMiles } from "../wear-miles/index.ts";

/** A rule over a handful of numbers from 0 to 1, with a relative uncertainty. */
type OverNumbers = (numbers: readonly number[], uncertainty: number) => RuleResult;

/** A number between two ends, with an uncertainty that is a share of their distance. */
const between = (
  numbers: readonly number[],
  index: number,
  low: number,
  high: number,
  uncertainty: number,
): Estimate => estimate(low + (high - low) * (numbers[index] ?? 0), (high - low) * uncertainty);

const panelsOf = (n: readonly number[], u: number) =>
  n.map((_, index) => ({
    panel: `panel ${index}`,
    thickness: between(n, index, 40, 900, u),
    material: "steel" as const,
  }));
const ends = (n: readonly number[], index: number, u: number) => ({
  top: between(n, index, 2, 9, u),
  bottom: between(n, index + 1, 2, 9, u),
});

const overNumbers: Readonly<Record<string, OverNumbers>> = {
  displacement: (n, u) =>
    displacement({
      bore: between(n, 0, 3.9, 4.1, u),
      stroke: between(n, 1, 3.4, 3.6, u),
      cylinders: 8,
      claimed: 350,
    }),
  compression: (n, u) =>
    compression({
      cylinders: n.map((_, index) => ({ cylinder: index, pressure: between(n, index, 90, 180, u) })),
      makers: { least: 100 },
    }),
  "leak-down": (n, u) =>
    leakDown({
      cylinders: n.map((_, index) => ({ cylinder: index, leak: between(n, index, 2, 26, u) })),
      testPressure: 100,
    }),
  vacuum: (n, u) =>
    vacuum({
      vacuum: between(n, 0, 10, 23, u),
      height: between(n, 1, 0, 4000, u),
      needle: "steady",
      timing: "right",
      cam: "stock",
    }),
  "oil-pressure": (n, u) =>
    oilPressure({
      pressure: between(n, 0, 5, 50, u),
      engineSpeed: between(n, 1, 700, 3000, u),
      oilTemperature: 90,
    }),
  charging: (n, u) =>
    charging({ volts: between(n, 0, 12, 16, u), engineSpeed: 1700, system: 12, machine: "alternator" }),
  cranking: (n, u) => cranking({ volts: between(n, 0, 3, 6, u), system: 6 }),
  tread: (n, u) => inUseTread(between(n, 0, 0, 4, u)),
  lining: (n, u) => inUseLining(between(n, 0, 0, 0.06, u), "bonded"),
  "free play": (n, u) => inUseFreePlay(between(n, 0, 1, 4, u), between(n, 1, 14, 24, 0).value),
  toe: (n, u) => inUseToe(between(n, 0, -4, 4, u), 1.6, "mm"),
  runout: (n, u) => inUseRunout(between(n, 0, 0, 0.25, u)),
  speedometer: (n, u) =>
    speedometer({ indicated: between(n, 0, 50, 70, u), satellite: between(n, 1, 55, 65, u) }),
  "road ratio": (n, u) =>
    roadRatio({
      engineSpeed: between(n, 0, 2000, 3000, u),
      roadSpeed: between(n, 1, 55, 65, u),
      circumference: between(n, 2, 80, 88, u),
      gear: 1,
      coupling: "unlocked",
      claimed: 3.23,
      makers: [2.76, 3.23, 3.91],
    }),
  "turns ratio": (n, u) =>
    turnsRatio({
      shaftTurns: between(n, 0, 2.8, 4.2, u),
      wheelTurns: 1,
      wheels: "both",
      claimed: 3.58,
      makers: [3.23, 3.58, 3.73],
    }),
  "tire diameter": (n, u) => tireDiameter({ size: "P205/75R15", rollout: between(n, 0, 70, 95, u) }),
  "paint map": (n, u) => paintMap({ panels: panelsOf(n, u) }),
  "original paint": (n, u) => originalPaint({ panels: panelsOf(n.slice(0, 2), u) }),
  "panel color": (n, u) =>
    panelColor({
      panels: [
        { panel: "hood", color: { L: 50, a: 10, b: 10 }, standardUncertainty: u },
        {
          panel: "cowl",
          color: { L: 50 + 6 * (n[0] ?? 0), a: 10, b: 10 + 3 * (n[1] ?? 0) },
          standardUncertainty: u,
        },
      ],
      neighbors: [["hood", "cowl"]],
    }),
  "gap taper": (n, u) => gapTaper({ gaps: [{ gap: "door", left: ends(n, 0, u), right: ends(n, 2, u) }] }),
  square: (n, u) =>
    square({
      wheelbase: [between(n, 0, 2700, 2712, u), between(n, 1, 2700, 2712, u)],
      diagonals: [between(n, 2, 3100, 3112, u), between(n, 3, 3100, 3112, u)],
    }),
  odometer: (n, u) =>
    odometer({
      readings: [
        { day: 0, miles: between(n, 0, 40_000, 50_000, u), place: "title" },
        { day: 10, miles: between(n, 1, 40_000, 50_000, u), place: "plate", allowedSince: 4000 },
      ],
      digits: 6,
    }),
  "wear against miles": (n, u) =>
    wearMiles({
      parts: [{ part: "pedals", condition: { low: 0, high: 0.2 } }],
      miles: between(n, 0, 10_000, 60_000, u),
    }),
};

/** Evenly spread; `fc.double` would crowd near 0. */
const evenly = (high: number) => fc.integer({ min: 0, max: 10_000 }).map((step) => (high * step) / 10_000);
const numbers = fc.array(evenly(1), { minLength: 5, maxLength: 5 });
const uncertainty = fc.oneof(fc.constant(0), evenly(0.4), evenly(0.02));

describe("more uncertainty moves a verdict only to cannot-tell", { timeout: 120_000 }, () => {
  it.each(Object.entries(overNumbers))("%s", (_, rule) => {
    fc.assert(
      fc.property(numbers, uncertainty, uncertainty, (n, u, more) => {
        const before = rule(n, u).verdict;
        expect([before, "cannot-tell"]).toContain(rule(n, u + more).verdict);
      }),
      { numRuns: 1000 },
    );
  });

  it.each(Object.entries(overNumbers))(
    "%s gives every verdict somewhere, so the test above can fail",
    (_, rule) => {
      const seen = new Set(
        fc
          .sample(fc.tuple(numbers, fc.constantFrom(0, 0.001, 0.1, 0.4)), { numRuns: 4000, seed: 7 })
          .map(([n, u]) => rule(n, u).verdict),
      );
      expect([...seen].toSorted()).toEqual(["breaks", "cannot-tell", "holds"]);
    },
  );
});

const range = fc
  .tuple(fc.integer({ min: 0, max: 900 }), fc.integer({ min: 0, max: 60 }))
  .map(([first, length]) => ({ first, last: first + length }));
const dates = fc.array(range, { minLength: 1, maxLength: 3 });

/** A rule over two sets of dates. */
const overDates: Readonly<Record<string, (one: DateSet, other: DateSet) => RuleResult>> = {
  "date order": (cast, built) => dateOrder({ cast, built }),
  "date correct": (part, built) => dateCorrect({ part, built }),
  "date correct, low volume": (part, built) => dateCorrect({ part, built, lowVolume: true }),
  "called original": (part, built) => claimsAgainstDates({ claim: "original", built, dates: [part] }),
  "called new": (part, stated) =>
    claimsAgainstDates({ claim: "new", stated, dates: [part] }, { "claims.new-days": 200 }),
};

describe("more dates a code can mean move a verdict only to cannot-tell", { timeout: 120_000 }, () => {
  it.each(Object.entries(overDates))("%s", (_, rule) => {
    fc.assert(
      fc.property(dates, dates, dates, (one, more, other) => {
        const before = rule(one, other).verdict;
        expect([before, "cannot-tell"]).toContain(rule([...one, ...more], other).verdict);
        expect([rule(other, one).verdict, "cannot-tell"]).toContain(rule(other, [...one, ...more]).verdict);
      }),
      { numRuns: 1000 },
    );
  });
});
