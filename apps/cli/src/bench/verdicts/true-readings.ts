import type { ReadingSpec } from "@evenhand/shared/sheet";
import { deltaOf } from "@evenhand/comparison/delta";
import { CAR } from "./assumptions.ts";
import type { Draws } from "./draws.ts";
import { keyOf } from "./truth.ts";

const within = (value: number, [low, high]: readonly [number, number]): number =>
  Math.min(high, Math.max(low, value));

/** The value a reading item has on an ordinary sound car. */
export const typicalOf = ({ typical, plausible }: ReadingSpec): number =>
  typical ?? (plausible[0] + plausible[1]) / 2;

/** +1 where more is better, −1 where less is or no side is the better one. */
export const towardBetter = ({ betterIs }: ReadingSpec): number => (betterIs === "higher" ? 1 : -1);

/**
 * The truth so many δ off another, to the worse side, or to the other where that is not plausible; as far as it can be where neither is. δ that is a share of the reading
 * follows both values.
 */
export const truthAway = (spec: ReadingSpec, truth: number, deltas: number): number => {
  const { absolute, share } = spec.delta;
  const away = (sign: number): number => {
    const byShare = (deltas * share * truth) / (1 - (sign * deltas * share) / 2);
    return truth + sign * Math.max(deltas * absolute, byShare);
  };
  const isPlausible = (value: number): boolean => value === within(value, spec.plausible);
  const [worse, better] = [away(-towardBetter(spec)), away(towardBetter(spec))];
  if (isPlausible(worse)) return worse;
  return isPlausible(better) ? better : within(worse, spec.plausible);
};

/** Readings that hang together: one axle, one engine, one speed on the road. */
const together = (draws: Draws): ReadonlyMap<string, number> => {
  const [ring, pinion] = draws.pick([
    [43, 12],
    [41, 11],
    [37, 12],
  ] as const);
  const axle = ring / pinion;
  const [bore, stroke] = [draws.between([3.4, 4]), draws.between([3, 3.5])];
  const [circumference, speed] = [2060 + 12 * draws.normal(), 55];
  const revolutions = (axle * speed * 1_609_344) / 60 / (circumference * 0.975);
  return new Map([
    ["driveline.axle-ratio", Math.round(axle * 100) / 100],
    ["driveline.axle-ratio-tag", Math.round(axle * 100) / 100],
    ["driveline.axle-turns", axle],
    ["driveline.ring-teeth", ring],
    ["driveline.pinion-teeth", pinion],
    ["engine.bore", bore],
    ["engine.stroke", stroke],
    ["engine.displacement", (Math.PI / 4) * bore ** 2 * stroke * CYLINDERS],
    ["wheels.rollout", circumference],
    ["road.gear-ratio", 1],
    ["road.gps-speed", speed],
    ["road.indicated-speed", speed + 1],
    ["road.revolutions", revolutions],
    ["road.indicated-revolutions", revolutions],
    ["brakes.drum-cast-figure", 10.06],
    ["brakes.drum-diameter", 10.01],
  ]);
};

export const CYLINDERS = 8;

const entriesOf = (odometer: number): [string, number][] =>
  [0.24, 0.55, 0.86].map((share, index) => [
    keyOf("identity.odometer-on-papers", `entry-${index + 1}`),
    Math.round(odometer * share),
  ]);

/** A reading of every kind that hangs on others: by item, or item and place. */
export const storyOf = (draws: Draws): ReadonlyMap<string, number> => {
  const odometer = Math.round(draws.between([32_000, 92_000]));
  return new Map([...together(draws), ["identity.odometer", odometer], ...entriesOf(odometer)]);
};

/** No car of the study is bad by chance near a figure: what is bad is planted. */
const onGoodSide = ({ limits, alarms, sound }: ReadingSpec, value: number, delta: number): number => {
  const figures = [...limits, ...alarms].filter(
    ({ systemVolts, isReadingOf }) => (systemVolts ?? 12) === 12 && isReadingOf === undefined,
  );
  const least = figures.filter(({ side }) => side === "min").map((figure) => figure.value + delta);
  const most = figures.filter(({ side }) => side === "max").map((figure) => figure.value - delta);
  const low = Math.max(sound?.atLeast ?? Number.NEGATIVE_INFINITY, ...least);
  const high = Math.min(sound?.atMost ?? Number.POSITIVE_INFINITY, ...most);
  return low <= high ? within(value, [low, high]) : (low + high) / 2;
};

/** What one item has on this car, about which its places scatter. */
export const itemReading = (spec: ReadingSpec, draws: Draws): number => {
  const typical = typicalOf(spec);
  return typical + CAR.readingOfItem * deltaOf(spec.delta, typical, typical) * draws.normal();
};

/** What one place of it has: within what is plausible, and on the good side of its figures. */
export const placeReading = (spec: ReadingSpec, ofItem: number, draws: Draws): number => {
  const delta = deltaOf(spec.delta, typicalOf(spec), typicalOf(spec));
  const drawn = ofItem + CAR.readingOfPlace * delta * draws.normal();
  return within(onGoodSide(spec, drawn, delta), spec.plausible);
};
