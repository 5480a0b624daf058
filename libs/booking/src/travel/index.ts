import type { Place } from "@evenhand/shared/booking";
import { greatCircleDistance } from "../great-circle/index.ts";

const MINUTE_MS = 60_000;

/** How far and how long from one place to another. */
export type Travel = {
  readonly meters: number;
  /** Whole minutes, in milliseconds. */
  readonly milliseconds: number;
};

/**
 * The rule of travel: distance and time from one place to another at a person's usual speed in meters per second.
 * Pure and total, so that the offer and the booking get the same answer; answers of a routing service are fetched
 * beforehand and looked up here.
 */
export type TravelRule = (from: Place, to: Place, speed: number) => Travel;

/** Road over great circle; common practice, no source. */
export const ROAD_OVER_GREAT_CIRCLE = 1.25;

/**
 * Great circle × 1.25 at the given speed, the time rounded up to the minute.
 *
 * @throws RangeError where the speed is not above zero.
 * @example
 * greatCircleTravel({ latitude: 0, longitude: 0 }, { latitude: 0, longitude: 1 }, 20)
 * // { meters: 138 993.8…, milliseconds: 6 960 000 }
 */
export const greatCircleTravel: TravelRule = (from, to, speed) => {
  if (!(speed > 0)) throw new RangeError(`speed of travel must be above zero, not ${speed}`);
  const meters = greatCircleDistance(from, to) * ROAD_OVER_GREAT_CIRCLE;
  return { meters, milliseconds: Math.ceil(((meters / speed) * 1000) / MINUTE_MS) * MINUTE_MS };
};
