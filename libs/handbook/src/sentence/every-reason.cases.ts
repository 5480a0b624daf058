import type { RuleResult } from "@evenhand/shared/cross-check";
import { estimate } from "@evenhand/measurement/estimate";
import { charging } from "../charging/index.ts";
import { chassisPattern } from "../chassis-pattern/index.ts";
import { claimsAgainstDates } from "../claims-against-dates/index.ts";
import { compression } from "../compression/index.ts";
import { cranking } from "../cranking/index.ts";
import { cylinderStory } from "../cylinder-story/index.ts";
import { dateCorrect } from "../date-correct/index.ts";
import { dateOrder } from "../date-order/index.ts";
import { dayOf, monthRange, yearRange } from "../day/index.ts";
import type { DateSet } from "../day/index.ts";
import { decadeLess } from "../decade-less/index.ts";
import { displacement } from "../displacement/index.ts";
import { exactly } from "../interval/index.ts";
import { leakDown } from "../leak-down/index.ts";
import { oilPressure } from "../oil-pressure/index.ts";
import { partialVin } from "../partial-vin/index.ts";
import { ratioCombined } from "../ratio-combined/index.ts";
import { roadRatio } from "../road-ratio/index.ts";
import { sameNumber } from "../same-number/index.ts";
import { speedometer } from "../speedometer/index.ts";
import { teeth } from "../teeth/index.ts";
import { tireAge } from "../tire-age/index.ts";
import { tireDiameter } from "../tire-diameter/index.ts";
import { tiresMixed } from "../tires-mixed/index.ts";
import { turnsRatio } from "../turns-ratio/index.ts";
import { vacuum } from "../vacuum/index.ts";
import { vinForm } from "../vin-form/index.ts";
import { vinReading } from "../vin-reading/index.ts";
import { vinYear } from "../vin-year/index.ts";

/** A case for a reason of a rule: what the rule answers to an input made for it, worked out when asked. */
export type Case = readonly [rule: string, reason: string, answer: () => RuleResult];

const on = (year: number, month: number, day: number): DateSet => [
  { first: dayOf(year, month, day), last: dayOf(year, month, day) },
];
const inMonth = (year: number, month: number): DateSet => [monthRange(year, month)];
const decades = (...years: number[]): DateSet => years.map((year) => monthRange(year, 2));

const american = { market: "north-america", modelYear: 2003 } as const;
const good = "1HGCM82633A004352";

const identity: Case[] = [
  ["vin-form", "passes", () => vinForm({ vin: "1hg cm826-33a004352", ...american })],
  ["vin-form", "length", () => vinForm({ vin: "1HGCM82633A00435", ...american })],
  ["vin-form", "characters", () => vinForm({ vin: "1HGCM82633AOO4352", ...american })],
  ["vin-form", "check-digit", () => vinForm({ vin: "1HGCM82643A004352", ...american })],
  [
    "vin-form",
    "before-1981",
    () => vinForm({ vin: "194375S104512", market: "north-america", modelYear: 1964 }),
  ],
  ["vin-form", "year-unknown", () => vinForm({ vin: "194375S104512", market: "north-america" })],
  ["vin-form", "other-market", () => vinForm({ vin: good, market: "other", modelYear: 2003 })],
  ["vin-form", "market-unknown", () => vinForm({ vin: good, market: "unknown", modelYear: 2003 })],
  [
    "vin-year",
    "same-year",
    () => vinYear({ vin: good, market: "north-america", kind: "car", claimedYear: 2003 }),
  ],
  [
    "vin-year",
    "other-year",
    () => vinYear({ vin: good, market: "north-america", kind: "car", claimedYear: 2004 }),
  ],
  [
    "vin-year",
    "year-character",
    () => vinYear({ vin: "1HGCM8263UA004352", market: "north-america", kind: "car", claimedYear: 2003 }),
  ],
  [
    "vin-year",
    "before-1981",
    () => vinYear({ vin: "194375S104512", market: "north-america", kind: "car", claimedYear: 1964 }),
  ],
  ["vin-year", "other-market", () => vinYear({ vin: good, market: "other", kind: "car", claimedYear: 2003 })],
  [
    "vin-year",
    "market-unknown",
    () => vinYear({ vin: good, market: "unknown", kind: "car", claimedYear: 2003 }),
  ],
  [
    "vin-year",
    "not-seventeen",
    () => vinYear({ vin: "HGCM82633A004352", market: "north-america", kind: "car", claimedYear: 2003 }),
  ],
  [
    "vin-year",
    "either-cycle",
    () => vinYear({ vin: good, market: "north-america", kind: "other", claimedYear: 2003 }),
  ],
  [
    "vin-reading",
    "same",
    () => vinReading({ first: good, second: good.toLowerCase(), market: "north-america" }),
  ],
  [
    "vin-reading",
    "first-misread",
    () => vinReading({ first: "1HGCM8Z633A004352", second: good, market: "north-america" }),
  ],
  [
    "vin-reading",
    "second-misread",
    () => vinReading({ first: good, second: "1HGCM82633A004325", market: "north-america" }),
  ],
  [
    "vin-reading",
    "both-pass",
    () => vinReading({ first: "1111111111A111111", second: "111111111A1111111", market: "north-america" }),
  ],
  [
    "vin-reading",
    "neither-passes",
    () => vinReading({ first: "1HGCM8Z633A004359", second: "1HGCM82633A004359", market: "north-america" }),
  ],
  [
    "vin-reading",
    "not-a-misreading",
    () => vinReading({ first: good, second: "1HGCM82633A009999", market: "north-america" }),
  ],
  [
    "vin-reading",
    "outside-the-rule",
    () => vinReading({ first: "194375S104512", second: "1943755104512", market: "north-america" }),
  ],
  [
    "same-number",
    "all-equal",
    () =>
      sameNumber([
        { place: "title", number: "194-375 S" },
        { place: "plate", number: "194375s" },
      ]),
  ],
  [
    "same-number",
    "differ",
    () =>
      sameNumber([
        { place: "title", number: "194375" },
        { place: "plate", number: "194399" },
      ]),
  ],
  [
    "same-number",
    "probably-misread",
    () =>
      sameNumber([
        { place: "title", number: "194375" },
        { place: "plate", number: "19437S" },
      ]),
  ],
  ["same-number", "too-few", () => sameNumber([{ place: "title", number: "194375" }])],
  [
    "chassis-pattern",
    "matches",
    () => chassisPattern({ number: "13867Q 104512", pattern: "1[35]###[QZ]######" }),
  ],
  [
    "chassis-pattern",
    "does-not-match",
    () => chassisPattern({ number: "13867A104512", pattern: "1[35]###[QZ]######" }),
  ],
  ["chassis-pattern", "no-pattern", () => chassisPattern({ number: "13867A104512" })],
  [
    "partial-vin",
    "equal",
    () => partialVin({ stamp: "1 7N 104512", chassisNumber: "136677N104512", derivation: "1{6}{7}{8-13}" }),
  ],
  [
    "partial-vin",
    "differs",
    () => partialVin({ stamp: "17N209981", chassisNumber: "136677N104512", derivation: "1{6}{7}{8-13}" }),
  ],
  [
    "partial-vin",
    "probably-misread",
    () => partialVin({ stamp: "17N1O4512", chassisNumber: "136677N104512", derivation: "1{6}{7}{8-13}" }),
  ],
  ["partial-vin", "never-stamped", () => partialVin({ neverStamped: true, chassisNumber: "136677N104512" })],
  ["partial-vin", "not-read", () => partialVin({ chassisNumber: "136677N104512" })],
  ["partial-vin", "no-pattern", () => partialVin({ stamp: "17N104512", chassisNumber: "136677N104512" })],
  [
    "partial-vin",
    "number-too-short",
    () => partialVin({ stamp: "17N104512", chassisNumber: "136677N", derivation: "{8-13}" }),
  ],
];

const built = on(1967, 3, 20);
const dates: Case[] = [
  ["date-order", "in-order", () => dateOrder({ cast: on(1967, 1, 15), assembled: on(1967, 2, 3), built })],
  [
    "date-order",
    "out-of-order",
    () => dateOrder({ cast: on(1967, 2, 15), assembled: on(1967, 2, 3), built }),
  ],
  ["date-order", "some-readings", () => dateOrder({ cast: decades(1957, 1967, 1977), built })],
  ["date-order", "too-few", () => dateOrder({ built })],
  ["date-correct", "usual", () => dateCorrect({ part: on(1967, 2, 15), built })],
  ["date-correct", "plausible", () => dateCorrect({ part: on(1966, 12, 15), built })],
  ["date-correct", "low-volume", () => dateCorrect({ part: on(1966, 6, 15), built, lowVolume: true })],
  ["date-correct", "after-build", () => dateCorrect({ part: on(1967, 6, 15), built })],
  ["date-correct", "too-early", () => dateCorrect({ part: on(1965, 6, 15), built })],
  ["date-correct", "fits-nowhere", () => dateCorrect({ part: decades(1956, 1976), built })],
  ["date-correct", "low-volume-only", () => dateCorrect({ part: on(1966, 6, 15), built })],
  ["date-correct", "some-readings", () => dateCorrect({ part: decades(1957, 1967, 1977), built })],
  ["date-correct", "too-few", () => dateCorrect({ part: [], built })],
  [
    "decade-less",
    "one-left",
    () =>
      decadeLess({
        code: "7",
        candidates: decades(1957, 1967, 1977),
        facts: [{ first: dayOf(1960, 1, 1), last: dayOf(1970, 1, 1) }],
      }),
  ],
  [
    "decade-less",
    "none-left",
    () => decadeLess({ code: "7", candidates: decades(1957, 1967), facts: [yearRange(1970)] }),
  ],
  [
    "decade-less",
    "claim-not-among",
    () => decadeLess({ code: "7", candidates: decades(1957, 1967), facts: [], claimed: [yearRange(1969)] }),
  ],
  [
    "decade-less",
    "several-left",
    () => decadeLess({ code: "7", candidates: decades(1957, 1967), facts: [], claimed: [yearRange(1967)] }),
  ],
  [
    "claims-against-dates",
    "no-contradiction",
    () => claimsAgainstDates({ claim: "original", built, dates: [on(1967, 2, 1)] }),
  ],
  [
    "claims-against-dates",
    "new-but-old",
    () => claimsAgainstDates({ claim: "new", stated: on(2026, 5, 4), dates: [inMonth(2021, 3)] }),
  ],
  [
    "claims-against-dates",
    "older-than-claimed",
    () =>
      claimsAgainstDates({
        claim: "at-most-years",
        years: 3,
        stated: on(2026, 5, 4),
        dates: [inMonth(2021, 3)],
      }),
  ],
  [
    "claims-against-dates",
    "original-but-later",
    () => claimsAgainstDates({ claim: "original", built, dates: [on(1967, 2, 1), on(1971, 2, 1)] }),
  ],
  [
    "claims-against-dates",
    "untouched-but-later",
    () => claimsAgainstDates({ claim: "untouched", built, dates: [on(1988, 2, 1)] }),
  ],
  [
    "claims-against-dates",
    "fitted-before-made",
    () =>
      claimsAgainstDates({ claim: "fitted-with-bill", document: on(2015, 6, 1), dates: [inMonth(2018, 2)] }),
  ],
  [
    "claims-against-dates",
    "pictured-before-made",
    () =>
      claimsAgainstDates({
        claim: "seen-in-photograph",
        document: on(2015, 6, 1),
        dates: [inMonth(2018, 2)],
      }),
  ],
  [
    "claims-against-dates",
    "some-readings",
    () => claimsAgainstDates({ claim: "original", built, dates: [decades(1957, 1967, 1977)] }),
  ],
  ["claims-against-dates", "too-few", () => claimsAgainstDates({ claim: "original", built, dates: [] })],
  ["tire-age", "young", () => tireAge({ number: "DOT U2LL LMLR 0624", visit: dayOf(2026, 5, 4) })],
  ["tire-age", "caution-age", () => tireAge({ number: "U2LLLMLR 2518", visit: dayOf(2026, 5, 4) })],
  ["tire-age", "replace-age", () => tireAge({ number: "U2LLLMLR 317", visit: dayOf(2026, 5, 4) })],
  ["tire-age", "not-a-date", () => tireAge({ number: "5401", visit: dayOf(2026, 5, 4) })],
  ["tire-age", "after-the-visit", () => tireAge({ number: "2528", visit: dayOf(2026, 5, 4) })],
  ["tire-age", "some-readings", () => tireAge({ number: "1820", visit: dayOf(2026, 5, 6) })],
];

const radial = { construction: "radial", size: "205/75R15" } as const;
const bias = { construction: "bias", size: "G78-15" } as const;
const makers = [3.23, 3.58, 3.73];
const cruise = {
  engineSpeed: estimate(2400, 15),
  roadSpeed: estimate(60, 0.2),
  circumference: estimate(83.6, 0.2),
  gear: 1,
  coupling: "clutch",
  makers,
} as const;

const wheels: Case[] = [
  [
    "tires-mixed",
    "matched",
    () =>
      tiresMixed({
        leftFront: radial,
        rightFront: { ...radial, size: "P205/75SR15" },
        leftRear: radial,
        rightRear: radial,
      }),
  ],
  [
    "tires-mixed",
    "radial-front-bias-rear",
    () => tiresMixed({ leftFront: radial, rightFront: radial, leftRear: bias, rightRear: bias }),
  ],
  [
    "tires-mixed",
    "constructions-differ",
    () =>
      tiresMixed({
        leftFront: bias,
        rightFront: bias,
        leftRear: radial,
        rightRear: { size: "G78-15", construction: "bias-belted" },
      }),
  ],
  [
    "tires-mixed",
    "sizes-differ",
    () =>
      tiresMixed({
        leftFront: radial,
        rightFront: { ...radial, size: "215/75R15" },
        leftRear: radial,
        rightRear: radial,
      }),
  ],
  [
    "tires-mixed",
    "equivalent-sizes",
    () =>
      tiresMixed({
        leftFront: bias,
        rightFront: { ...bias, size: "8.25-15" },
        leftRear: bias,
        rightRear: bias,
      }),
  ],
  [
    "tires-mixed",
    "size-unreadable",
    () =>
      tiresMixed({
        leftFront: radial,
        rightFront: { ...radial, size: "big ones" },
        leftRear: radial,
        rightRear: radial,
      }),
  ],
  [
    "tires-mixed",
    "not-all-known",
    () => tiresMixed({ leftFront: radial, rightFront: radial, leftRear: { size: "G78-15" } }),
  ],
  ["tire-diameter", "rollout-fits", () => tireDiameter({ size: "P205/75R15", rollout: estimate(82.6, 0.1) })],
  [
    "tire-diameter",
    "rollout-differs",
    () => tireDiameter({ size: "P205/75R15", rollout: estimate(90, 0.1) }),
  ],
  ["tire-diameter", "equal-in-diameter", () => tireDiameter({ size: "P205/75R15", other: "215/70R15" })],
  ["tire-diameter", "other-diameter", () => tireDiameter({ size: "P205/75R15", other: "P205/60R15" })],
  ["tire-diameter", "range-covers", () => tireDiameter({ size: "G78-15", other: "P225/75R15" })],
  ["tire-diameter", "size-unreadable", () => tireDiameter({ size: "round" })],
  ["tire-diameter", "nothing-to-set-against", () => tireDiameter({ size: "P205/75R15" })],
  [
    "speedometer",
    "within",
    () => speedometer({ indicated: estimate(61, 0.3), satellite: estimate(60, 0.1) }),
  ],
  [
    "speedometer",
    "reads-high",
    () =>
      speedometer({
        indicated: estimate(66, 0.3),
        satellite: estimate(60, 0.1),
        fittedDiameter: exactly(25),
      }),
  ],
  [
    "speedometer",
    "reads-low",
    () => speedometer({ indicated: estimate(54, 0.3), satellite: estimate(60, 0.1) }),
  ],
  [
    "speedometer",
    "range-covers",
    () => speedometer({ indicated: estimate(63, 0.5), satellite: estimate(60, 0.1) }),
  ],
  [
    "speedometer",
    "too-slow",
    () => speedometer({ indicated: estimate(10, 0.5), satellite: estimate(10, 0.1) }),
  ],
  [
    "road-ratio",
    "claimed-ratio",
    () => roadRatio({ ...cruise, claimed: 3.23, engineSpeed: estimate(2448, 15) }),
  ],
  ["road-ratio", "other-ratio", () => roadRatio({ ...cruise, claimed: 3.58 })],
  [
    "road-ratio",
    "cannot-separate",
    () => roadRatio({ ...cruise, engineSpeed: estimate(2700, 120), claimed: 3.58 }),
  ],
  ["road-ratio", "no-claim", () => roadRatio(cruise)],
  ["road-ratio", "gear-unknown", () => roadRatio({ ...cruise, gear: undefined, claimed: 3.58 })],
  ["road-ratio", "too-slow", () => roadRatio({ ...cruise, roadSpeed: estimate(12, 0.2), claimed: 3.58 })],
  [
    "turns-ratio",
    "claimed-ratio",
    () =>
      turnsRatio({
        shaftTurns: estimate(17.9, 0.05),
        wheelTurns: 10,
        wheels: "one-held",
        claimed: 3.58,
        makers,
      }),
  ],
  [
    "turns-ratio",
    "other-ratio",
    () =>
      turnsRatio({ shaftTurns: estimate(32.3, 0.05), wheelTurns: 10, wheels: "both", claimed: 3.58, makers }),
  ],
  [
    "turns-ratio",
    "cannot-separate",
    () =>
      turnsRatio({ shaftTurns: estimate(3.6, 0.1), wheelTurns: 1, wheels: "both", claimed: 3.58, makers }),
  ],
  [
    "turns-ratio",
    "no-claim",
    () => turnsRatio({ shaftTurns: estimate(32.3, 0.05), wheelTurns: 10, wheels: "both" }),
  ],
  ["teeth", "claimed-ratio", () => teeth({ ring: 41, pinion: 11, claimed: 3.73, makers })],
  ["teeth", "other-ratio", () => teeth({ ring: 41, pinion: 11, claimed: 3.58, makers })],
  ["teeth", "not-the-makers", () => teeth({ ring: 37, pinion: 11, claimed: 3.58, makers })],
  ["teeth", "no-claim", () => teeth({ ring: 41, pinion: 11 })],
  [
    "ratio-combined",
    "claimed-ratio",
    () =>
      ratioCombined({
        ways: [
          { way: "tag", ratio: estimate(3.58, 0.003) },
          { way: "turns", ratio: estimate(3.6, 0.03) },
        ],
        claimed: 3.58,
        makers,
      }),
  ],
  [
    "ratio-combined",
    "other-ratio",
    () =>
      ratioCombined({
        ways: [
          { way: "road", ratio: estimate(3.2, 0.05) },
          { way: "turns", ratio: estimate(3.25, 0.03) },
        ],
        claimed: 3.58,
        makers,
      }),
  ],
  [
    "ratio-combined",
    "cannot-separate",
    () =>
      ratioCombined({
        ways: [
          { way: "road", ratio: estimate(3.62, 0.1) },
          { way: "turns", ratio: estimate(3.65, 0.1) },
        ],
        claimed: 3.58,
        makers,
      }),
  ],
  [
    "ratio-combined",
    "no-claim",
    () =>
      ratioCombined({
        ways: [
          { way: "road", ratio: estimate(3.2, 0.05) },
          { way: "turns", ratio: estimate(3.25, 0.03) },
        ],
      }),
  ],
  [
    "ratio-combined",
    "ways-disagree",
    () =>
      ratioCombined({
        ways: [
          { way: "tag", ratio: estimate(3.58, 0.003) },
          { way: "road", ratio: estimate(3.2, 0.05) },
        ],
        claimed: 3.58,
      }),
  ],
  ["ratio-combined", "too-few", () => ratioCombined({ ways: [], claimed: 3.58 })],
];

const psi = (...values: number[]) =>
  values.map((value, index) => ({ cylinder: index + 1, pressure: estimate(value, 1.5) }));
const leaks = (...values: number[]) =>
  values.map((value, index) => ({
    cylinder: index + 1,
    leak: estimate(value, 0.7),
    escapes: ["exhaust"] as const,
  }));
const idle = {
  vacuum: estimate(19, 0.2),
  height: estimate(500, 50),
  needle: "steady",
  timing: "right",
  cam: "stock",
} as const;
const bore = { bore: estimate(4, 0.001), stroke: estimate(3.48, 0.002), cylinders: 8 };
const oil = { pressure: estimate(30, 1), engineSpeed: estimate(2000, 20), oilTemperature: 95 };
const alternator = {
  volts: estimate(14.2, 0.03),
  engineSpeed: 1800,
  system: 12,
  machine: "alternator",
} as const;

const engine: Case[] = [
  ["displacement", "as-claimed", () => displacement({ ...bore, claimed: 350 })],
  ["displacement", "not-as-claimed", () => displacement({ ...bore, claimed: 327 })],
  ["displacement", "range-covers", () => displacement({ ...bore, claimed: 353.4 })],
  ["displacement", "no-claim", () => displacement(bore)],
  ["compression", "even", () => compression({ cylinders: psi(150, 155, 148, 152) })],
  ["compression", "uneven", () => compression({ cylinders: psi(150, 95, 148, 152) })],
  [
    "compression",
    "neighbors-low",
    () =>
      compression({
        cylinders: psi(150, 95, 96, 152),
        neighbors: [
          [1, 2],
          [2, 3],
          [3, 4],
        ],
      }),
  ],
  [
    "compression",
    "under-least",
    () => compression({ cylinders: psi(90, 92, 91), makers: { lowestShare: 0.7, least: 100 } }),
  ],
  ["compression", "range-covers", () => compression({ cylinders: psi(150, 112, 148, 152) })],
  ["compression", "too-few", () => compression({ cylinders: psi(150) })],
  ["leak-down", "good", () => leakDown({ cylinders: leaks(4, 5, 6), testPressure: 100 })],
  ["leak-down", "worn", () => leakDown({ cylinders: leaks(4, 15, 6), testPressure: 100 })],
  ["leak-down", "good-or-worn", () => leakDown({ cylinders: leaks(4, 10, 6), testPressure: 100 })],
  ["leak-down", "poor", () => leakDown({ cylinders: leaks(4, 28, 6), testPressure: 100 })],
  ["leak-down", "range-covers", () => leakDown({ cylinders: leaks(4, 20.5, 6), testPressure: 98 })],
  ["leak-down", "other-pressure", () => leakDown({ cylinders: leaks(4, 28, 6), testPressure: 80 })],
  ["leak-down", "too-few", () => leakDown({ cylinders: [], testPressure: 100 })],
  [
    "cylinder-story",
    "one-story",
    () =>
      cylinderStory({
        cylinders: [{ cylinder: 1, compression: "low", leak: "leaks", escapes: ["intake"] }],
        coolantGas: "absent",
      }),
  ],
  [
    "cylinder-story",
    "gasket-between",
    () =>
      cylinderStory({
        cylinders: [
          { cylinder: 1, compression: "low", leak: "leaks", escapes: ["neighbor"] },
          { cylinder: 2, compression: "low", leak: "leaks", escapes: ["neighbor"] },
        ],
        neighbors: [[1, 2]],
      }),
  ],
  [
    "cylinder-story",
    "low-but-tight",
    () => cylinderStory({ cylinders: [{ cylinder: 3, compression: "low", leak: "tight" }] }),
  ],
  [
    "cylinder-story",
    "leaks-but-not-low",
    () => cylinderStory({ cylinders: [{ cylinder: 3, compression: "normal", leak: "leaks" }] }),
  ],
  [
    "cylinder-story",
    "escape-without-gas",
    () =>
      cylinderStory({
        cylinders: [{ cylinder: 3, compression: "low", leak: "leaks", escapes: ["coolant"] }],
        coolantGas: "absent",
      }),
  ],
  [
    "cylinder-story",
    "gas-without-escape",
    () => cylinderStory({ cylinders: [{ cylinder: 3, leak: "tight" }], coolantGas: "present" }),
  ],
  [
    "cylinder-story",
    "not-clear",
    () => cylinderStory({ cylinders: [{ cylinder: 3, compression: "unclear", leak: "leaks" }] }),
  ],
  ["cylinder-story", "too-few", () => cylinderStory({ cylinders: [{ cylinder: 3, compression: "low" }] })],
  ["vacuum", "in-band", () => vacuum(idle)],
  ["vacuum", "low", () => vacuum({ ...idle, vacuum: estimate(14, 0.2) })],
  ["vacuum", "needle-drops", () => vacuum({ ...idle, needle: "dropping" })],
  ["vacuum", "needle-drifts", () => vacuum({ ...idle, needle: "drifting" })],
  ["vacuum", "needle-flutters", () => vacuum({ ...idle, needle: "fluttering" })],
  ["vacuum", "range-covers", () => vacuum({ ...idle, vacuum: estimate(16.5, 0.3) })],
  ["vacuum", "late-timing", () => vacuum({ ...idle, vacuum: estimate(14, 0.2), timing: "late" })],
  ["vacuum", "timing-unknown", () => vacuum({ ...idle, vacuum: estimate(14, 0.2), timing: "unknown" })],
  ["vacuum", "cam-unknown", () => vacuum({ ...idle, vacuum: estimate(14, 0.2), cam: "unknown" })],
  ["vacuum", "cam-not-stock", () => vacuum({ ...idle, cam: "other" })],
  ["vacuum", "height-unknown", () => vacuum({ ...idle, height: undefined })],
  ["vacuum", "high", () => vacuum({ ...idle, vacuum: estimate(24, 0.2) })],
  ["oil-pressure", "enough", () => oilPressure(oil)],
  ["oil-pressure", "low", () => oilPressure({ ...oil, pressure: estimate(12, 1) })],
  ["oil-pressure", "under-makers", () => oilPressure({ ...oil, makersLeast: 40 })],
  ["oil-pressure", "range-covers", () => oilPressure({ ...oil, pressure: estimate(21, 1) })],
  ["oil-pressure", "not-hot", () => oilPressure({ ...oil, oilTemperature: 40 })],
  ["oil-pressure", "temperature-unknown", () => oilPressure({ ...oil, oilTemperature: undefined })],
  ["charging", "charges", () => charging(alternator)],
  ["charging", "too-low", () => charging({ ...alternator, volts: estimate(12.6, 0.03) })],
  [
    "charging",
    "too-high",
    () => charging({ ...alternator, volts: estimate(8.1, 0.03), system: 6, machine: "generator" }),
  ],
  ["charging", "range-covers", () => charging({ ...alternator, volts: estimate(13.5, 0.03) })],
  [
    "charging",
    "generator-at-idle",
    () => charging({ ...alternator, machine: "generator", engineSpeed: 700 }),
  ],
  ["charging", "other-speed", () => charging({ ...alternator, engineSpeed: 700 })],
  ["charging", "speed-unknown", () => charging({ ...alternator, engineSpeed: undefined })],
  ["cranking", "enough", () => cranking({ volts: estimate(10.4, 0.05), system: 12 })],
  ["cranking", "too-low", () => cranking({ volts: estimate(4.2, 0.05), system: 6 })],
  ["cranking", "range-covers", () => cranking({ volts: estimate(9.6, 0.05), system: 12 })],
];

/** One case for each reason of the rules on numbers, dates, wheels and engine. */
export const numberAndEngineCases: readonly Case[] = [...identity, ...dates, ...wheels, ...engine];
