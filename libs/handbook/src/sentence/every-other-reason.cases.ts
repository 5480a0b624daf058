import { estimate } from "@evenhand/measurement/estimate";
import { dayOf } from "../day/index.ts";
import { firstColor } from "../first-color/index.ts";
import { gapTaper } from "../gap-taper/index.ts";
import { inUseFreePlay, inUseLining, inUseRunout, inUseToe, inUseTread } from "../in-use/index.ts";
import { exactly } from "../interval/index.ts";
import { odometer } from "../odometer/index.ts";
import { odometerDisclosure } from "../odometer-disclosure/index.ts";
import { originalPaint } from "../original-paint/index.ts";
import { paintMap } from "../paint-map/index.ts";
import { panelColor } from "../panel-color/index.ts";
import { square } from "../square/index.ts";
import { wearMiles } from "../wear-miles/index.ts";
import type { Case } from "./every-reason.cases.ts";

const NAMES = ["hood", "left door", "right door", "roof", "trunk"];
const paint = (...values: number[]) =>
  values.map((value, index) => ({
    panel: NAMES[index] ?? "",
    thickness: estimate(value, 3),
    material: "steel" as const,
  }));

const panels = (apart: number, standardUncertainty: number) => ({
  panels: [
    { panel: "hood", color: { L: 50, a: 10, b: 10 }, standardUncertainty },
    { panel: "left fender", color: { L: 50 + apart, a: 10, b: 10 }, standardUncertainty },
  ],
  neighbors: [["hood", "left fender"]] as const,
});
const ends = (top: number, bottom: number) => ({ top: estimate(top, 0.2), bottom: estimate(bottom, 0.2) });

const body: Case[] = [
  ["paint-map", "even-over-car", () => paintMap({ panels: paint(120, 118, 125, 130, 122) })],
  ["paint-map", "panels-stand-out", () => paintMap({ panels: paint(120, 118, 420, 130, 122) })],
  ["paint-map", "filler-likely", () => paintMap({ panels: paint(120, 118, 1420, 130, 122) })],
  ["paint-map", "range-covers", () => paintMap({ panels: paint(120, 118, 197, 130, 122) })],
  ["paint-map", "too-few", () => paintMap({ panels: paint(120, 118) })],
  ["original-paint", "no-contradiction", () => originalPaint({ panels: paint(120, 118, 125) })],
  ["original-paint", "refinished", () => originalPaint({ panels: paint(120, 310, 118) })],
  ["original-paint", "range-covers", () => originalPaint({ panels: paint(120, 201) })],
  ["original-paint", "thin", () => originalPaint({ panels: paint(120, 50) })],
  ["original-paint", "too-few", () => originalPaint({ panels: [] })],
  [
    "first-color",
    "equal",
    () => firstColor({ tag: "Y 2", spots: [{ place: "under the dash", color: "y-2" }] }),
  ],
  [
    "first-color",
    "differs",
    () => firstColor({ tag: "Y", spots: [{ place: "under the dash", color: "R" }] }),
  ],
  ["first-color", "too-few", () => firstColor({ tag: "Y", spots: [] })],
  ["panel-color", "not-noticed", () => panelColor(panels(0.5, 0.05))],
  ["panel-color", "noticeable", () => panelColor(panels(4, 0.05))],
  ["panel-color", "range-covers", () => panelColor(panels(2.1, 0.2))],
  ["panel-color", "metallic-one-angle", () => panelColor({ ...panels(4, 0.05), metallicOneAngle: true })],
  ["panel-color", "too-few", () => panelColor({ panels: [], neighbors: [] })],
  [
    "gap-taper",
    "even",
    () => gapTaper({ gaps: [{ gap: "fender to door", left: ends(4, 4.5), right: ends(4.2, 4.4) }] }),
  ],
  ["gap-taper", "tapers", () => gapTaper({ gaps: [{ gap: "fender to door", left: ends(4, 9) }] })],
  [
    "gap-taper",
    "sides-differ",
    () => gapTaper({ gaps: [{ gap: "fender to door", left: ends(4, 4.5), right: ends(9, 9.4) }] }),
  ],
  ["gap-taper", "range-covers", () => gapTaper({ gaps: [{ gap: "fender to door", left: ends(4, 7.1) }] })],
  ["gap-taper", "too-few", () => gapTaper({ gaps: [] })],
  ["square", "square", () => square({ wheelbase: [estimate(2743, 0.7), estimate(2744, 0.7)] })],
  ["square", "wheelbase-differs", () => square({ wheelbase: [estimate(2743, 0.7), estimate(2729, 0.7)] })],
  ["square", "diagonals-differ", () => square({ diagonals: [estimate(3100, 0.7), estimate(3114, 0.7)] })],
  ["square", "range-covers", () => square({ diagonals: [estimate(3100, 0.7), estimate(3106, 0.7)] })],
  ["square", "too-few", () => square({})],
];

const at = (year: number, miles: number, more: { allowedSince?: number } = {}) => ({
  day: dayOf(year, 5, 4),
  miles: estimate(miles, 0.1),
  place: "title",
  ...more,
});
const pedals = { part: "pedals", condition: { low: 0, high: 0.2 } };

const use: Case[] = [
  ["in-use-tread", "meets", () => inUseTread(estimate(5, 0.3))],
  ["in-use-tread", "under-limit", () => inUseTread(estimate(1, 0.2))],
  ["in-use-tread", "range-covers", () => inUseTread(estimate(2.1, 0.3))],
  ["in-use-lining", "meets", () => inUseLining(estimate(0.2, 0.005), "bonded")],
  ["in-use-lining", "under-limit", () => inUseLining(estimate(0.01, 0.003), "riveted")],
  ["in-use-lining", "range-covers", () => inUseLining(estimate(0.03, 0.003), "riveted")],
  ["in-use-lining", "fixing-unknown", () => inUseLining(estimate(0.03, 0.003), "unknown")],
  ["in-use-free-play", "meets", () => inUseFreePlay(estimate(1, 0.1), 17)],
  ["in-use-free-play", "over-limit", () => inUseFreePlay(estimate(3, 0.1), 17)],
  ["in-use-free-play", "range-covers", () => inUseFreePlay(estimate(2.1, 0.1), 16)],
  ["in-use-free-play", "between-rows", () => inUseFreePlay(estimate(2.1, 0.1), 17)],
  ["in-use-free-play", "wheel-unknown", () => inUseFreePlay(estimate(2.6, 0.1))],
  ["in-use-toe", "meets", () => inUseToe(estimate(0.1, 0.01), 0.125)],
  ["in-use-toe", "over-limit", () => inUseToe(estimate(-0.3, 0.01), 0.125)],
  ["in-use-toe", "range-covers", () => inUseToe(estimate(0.19, 0.01), 0.125)],
  ["in-use-toe", "makers-value-unknown", () => inUseToe(estimate(0.19, 0.01))],
  ["in-use-runout", "meets", () => inUseRunout(estimate(0.03, 0.005))],
  ["in-use-runout", "over-limit", () => inUseRunout(estimate(0.2, 0.005))],
  ["in-use-runout", "range-covers", () => inUseRunout(estimate(0.13, 0.005))],
  ["odometer", "rises", () => odometer({ readings: [at(2010, 41_000), at(2026, 46_200)], digits: 6 })],
  ["odometer", "falls", () => odometer({ readings: [at(2010, 91_000), at(2026, 46_200)], digits: 6 })],
  [
    "odometer",
    "rises-too-much",
    () =>
      odometer({
        readings: [at(2026, 46_200), { ...at(2026, 46_400, { allowedSince: 50 }), place: "delivery" }],
        digits: 6,
      }),
  ],
  [
    "odometer",
    "rolled-over-or-back",
    () => odometer({ readings: [at(2010, 91_000), at(2026, 46_200)], digits: 5 }),
  ],
  ["odometer", "range-covers", () => odometer({ readings: [at(2010, 46_200), at(2026, 46_200)], digits: 6 })],
  ["odometer", "too-few", () => odometer({ readings: [at(2010, 46_200)], digits: 6 })],
  ["odometer-disclosure", "exempt-by-age", () => odometerDisclosure({ modelYear: 1964, transferYear: 2026 })],
  [
    "odometer-disclosure",
    "exempt-by-kind",
    () => odometerDisclosure({ modelYear: 2020, transferYear: 2026, weightRating: 16_001 }),
  ],
  ["odometer-disclosure", "due", () => odometerDisclosure({ modelYear: 2011, transferYear: 2021 })],
  [
    "odometer-disclosure",
    "claimed-exempt-but-due",
    () => odometerDisclosure({ modelYear: 2011, transferYear: 2021, claimedExempt: true }),
  ],
  ["odometer-disclosure", "too-few", () => odometerDisclosure({ modelYear: 2011 })],
  ["wear-miles", "fits-miles", () => wearMiles({ parts: [pedals], miles: exactly(88_000) })],
  [
    "wear-miles",
    "more-wear-than-miles",
    () =>
      wearMiles({
        parts: [pedals, { part: "wheel rim", condition: { low: 0.8, high: 1 } }],
        miles: exactly(12_000),
      }),
  ],
  [
    "wear-miles",
    "range-covers",
    () =>
      wearMiles({ parts: [{ part: "pedals", condition: { low: 0.3, high: 0.5 } }], miles: exactly(12_000) }),
  ],
  [
    "wear-miles",
    "retrimmed",
    () => wearMiles({ parts: [{ ...pedals, retrimmed: true }], miles: exactly(12_000) }),
  ],
  ["wear-miles", "too-few", () => wearMiles({ parts: [pedals] })],
];

/** One case for each reason of the rules on body, limits in use, odometer and wear. */
export const bodyAndUseCases: readonly Case[] = [...body, ...use];
