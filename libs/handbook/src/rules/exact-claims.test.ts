import type { RuleResult } from "@evenhand/shared/cross-check";
import { estimate } from "@evenhand/measurement/estimate";
import { normalDeviate, seededRandom } from "@evenhand/measurement/random";
import { describe, expect, it } from "vitest";
import { charging } from "../charging/index.ts";
import { compression } from "../compression/index.ts";
import { cranking } from "../cranking/index.ts";
import { displacement } from "../displacement/index.ts";
import { gapTaper } from "../gap-taper/index.ts";
import { inUseFreePlay, inUseLining, inUseRunout, inUseToe, inUseTread } from "../in-use/index.ts";
import { leakDown } from "../leak-down/index.ts";
import { odometer } from "../odometer/index.ts";
import { oilPressure } from "../oil-pressure/index.ts";
import { originalPaint } from "../original-paint/index.ts";
import { paintMap } from "../paint-map/index.ts";
import { panelColor } from "../panel-color/index.ts";
import { ratioCombined } from "../ratio-combined/index.ts";
import { roadRatio } from "../road-ratio/index.ts";
import { speedometer } from "../speedometer/index.ts";
import { square } from "../square/index.ts";
import { tireDiameter } from "../tire-diameter/index.ts";
import { turnsRatio } from "../turns-ratio/index.ts";
import { vacuum } from "../vacuum/index.ts";
import { wearMiles } from "../wear-miles/index.ts";

/** A reading of a true value with normal noise of a known standard uncertainty. */
type Read = (truth: number, standardUncertainty: number) => ReturnType<typeof estimate>;

const panel = (name: string, thickness: ReturnType<typeof estimate>) => ({
  panel: name,
  thickness,
  material: "steel" as const,
});
const lab = (read: Read, name: string, L: number) => ({
  panel: name,
  color: { L: read(L, 0.3).value, a: read(3, 0.3).value, b: read(4, 0.3).value },
  standardUncertainty: 0.3,
});
const road = (read: Read, slip: number) => ({
  engineSpeed: read((3.58 * 1056 * 60) / (82 * (1 - slip)), 12),
  roadSpeed: read(60, 0.25),
  circumference: read(82, 0.35),
  gear: 1,
  claimed: 3.58,
});

/** A claim exactly true, at the worst place it can be: on the limit itself. */
const trueClaims: Readonly<Record<string, (read: Read) => RuleResult>> = {
  "displacement 1 % over the claim": (read) =>
    displacement({
      bore: read(4, 0.002),
      stroke: read((350 * 1.01) / (Math.PI * 32), 0.003),
      cylinders: 8,
      claimed: 350,
    }),
  "displacement as claimed": (read) =>
    displacement({
      bore: read(4, 0.02),
      stroke: read(350 / (Math.PI * 32), 0.03),
      cylinders: 8,
      claimed: 350,
    }),
  "eight even cylinders": (read) =>
    compression({
      cylinders: Array.from({ length: 8 }, (_, cylinder) => ({ cylinder, pressure: read(150, 6) })),
    }),
  "one cylinder of eight at exactly 75 %": (read) =>
    compression({
      cylinders: Array.from({ length: 8 }, (_, cylinder) => ({
        cylinder,
        pressure: read(cylinder === 3 ? 112.5 : 150, 4),
      })),
    }),
  "eight cylinders that leak exactly 20 %": (read) =>
    leakDown({
      cylinders: Array.from({ length: 8 }, (_, cylinder) => ({ cylinder, leak: read(20, 1.5) })),
      testPressure: 100,
    }),
  "vacuum at the band's low end": (read) =>
    vacuum({
      vacuum: read(15, 0.4),
      height: read(2000, 100),
      needle: "steady",
      timing: "right",
      cam: "stock",
    }),
  "oil pressure at the least": (read) =>
    oilPressure({ pressure: read(20, 1.5), engineSpeed: read(2000, 30), oilTemperature: 90 }),
  "charging at the low end": (read) =>
    charging({ volts: read(13.5, 0.05), engineSpeed: 1800, system: 12, machine: "alternator" }),
  "cranking at the least": (read) => cranking({ volts: read(9.6, 0.08), system: 12 }),
  "tread at 2/32 in": (read) => inUseTread(read(2, 0.4)),
  "lining at 1/32 in": (read) => inUseLining(read(1 / 32, 0.004), "riveted"),
  "free play at the limit": (read) => inUseFreePlay(read(2.25, 0.1), 18),
  "toe at the limit, the band narrow": (read) => inUseToe(read(0.15, 0.2), 0.1, "mm"),
  "runout at 1/8 in": (read) => inUseRunout(read(0.125, 0.006)),
  "speedometer 5 % high": (read) => speedometer({ indicated: read(63, 0.4), satellite: read(60, 0.2) }),
  "axle from the road, clutch": (read) => roadRatio({ ...road(read, 0), coupling: "clutch" }),
  "axle from the road, converter at its least slip": (read) =>
    roadRatio({ ...road(read, 0.01), coupling: "unlocked" }),
  "axle from the road, converter at its greatest slip": (read) =>
    roadRatio({ ...road(read, 0.08), coupling: "unlocked" }),
  "axle by turning": (read) =>
    turnsRatio({ shaftTurns: read(1.79, 0.03), wheelTurns: 1, wheels: "one-held", claimed: 3.58 }),
  "axle, two ways together": (read) =>
    ratioCombined({
      ways: [
        { way: "turns", ratio: read(3.58, 0.08) },
        { way: "road", ratio: read(3.58, 0.06) },
      ],
      claimed: 3.58,
    }),
  "rollout 3 % over": (read) =>
    tireDiameter({ size: "P205/75R15", rollout: read(1.03 * 0.97 * Math.PI * 27.1063, 0.3) }),
  "twelve panels of one thickness": (read) =>
    paintMap({ panels: Array.from({ length: 12 }, (_, index) => panel(`${index}`, read(120, 15))) }),
  "twelve original panels at 200 µm": (read) =>
    originalPaint({ panels: Array.from({ length: 12 }, (_, index) => panel(`${index}`, read(200, 10))) }),
  "two panels exactly 2 apart": (read) =>
    panelColor({ panels: [lab(read, "hood", 50), lab(read, "cowl", 52.05)], neighbors: [["hood", "cowl"]] }),
  "a gap that tapers exactly 3 mm": (read) =>
    gapTaper({ gaps: [{ gap: "door", left: { top: read(4, 0.3), bottom: read(7, 0.3) } }] }),
  "wheelbase exactly 6 mm apart": (read) => square({ wheelbase: [read(2743, 1.5), read(2749, 1.5)] }),
  "an odometer that has not moved": (read) =>
    odometer({
      readings: [
        { day: 0, miles: read(46_200, 0.3), place: "a" },
        { day: 1, miles: read(46_200, 0.3), place: "b" },
      ],
      digits: 6,
    }),
  "an odometer that rose just what was driven": (read) =>
    odometer({
      readings: [
        { day: 0, miles: read(46_200, 0.3), place: "a" },
        { day: 1, miles: read(46_250, 0.3), place: "b", allowedSince: 50 },
      ],
      digits: 6,
    }),
  "worn pedals at exactly the limit": (read) =>
    wearMiles({ parts: [{ part: "pedals", condition: { low: 0, high: 0.2 } }], miles: read(30_000, 500) }),
};

const READINGS = 20_000;

describe("a claim exactly true breaks in no more than 1 % of readings", { timeout: 120_000 }, () => {
  it.each(Object.entries(trueClaims))("%s", (name, claim) => {
    const random = seededRandom(name.length);
    const read: Read = (truth, u) => estimate(truth + u * normalDeviate(random), u);
    let broken = 0;
    for (let reading = 0; reading < READINGS; reading += 1) if (claim(read).verdict === "breaks") broken += 1;
    expect(broken / READINGS).toBeLessThanOrEqual(0.01);
  });
});
