import type { Place } from "@evenhand/shared/booking";
import { type Interval, intersect, normalize } from "../interval/index.ts";
import { solarPosition } from "./solar-position.ts";

const DAY_MS = 86_400_000;
const MILLISECONDS_A_DEGREE = 240_000;
/** Sunrise and sunset: the center of the sun 0.833° under the horizon, for refraction and its radius (NOAA; from memory). */
const ZENITH_OF_SUNRISE = 90.833;

/**
 * The sun on one solar day, from one solar midnight to the next. `sunrise` is `null` on the day on which the sun was
 * already up at the midnight before, `sunset` where it is still up at the one after (the first and last day of a polar
 * day); never both.
 */
export type SolarDay =
  | {
      readonly kind: "day";
      readonly noon: number;
      readonly sunrise: number | null;
      readonly sunset: number | null;
    }
  | { readonly kind: "polar-day"; readonly noon: number }
  | { readonly kind: "polar-night"; readonly noon: number };

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/**
 * Cosine of the hour angle at which the sun's center crosses the horizon of sunrise; above 1 it stays below, under −1
 * above.
 */
function cosineOfHourAngle(latitude: number, declination: number): number {
  // At the very pole the cosine is zero; a hair off it keeps the sign of the answer.
  const angle = radians(Math.max(-89.999_999, Math.min(89.999_999, latitude)));
  const across = Math.cos(angle) * Math.cos(declination);
  return Math.cos(radians(ZENITH_OF_SUNRISE)) / across - Math.tan(angle) * Math.tan(declination);
}

/** When the sun crosses the horizon before (−1) or after (+1) noon; `above` or `below` where it does not. */
function crossing(place: Place, meanNoon: number, noon: number, side: -1 | 1): number | "above" | "below" {
  let at = noon;
  for (let round = 0; round < 6; round += 1) {
    const { declination, equationOfTime } = solarPosition(at);
    const cosine = cosineOfHourAngle(place.latitude, declination);
    if (cosine > 1) return "below";
    if (cosine < -1) return "above";
    const angle = (Math.acos(cosine) * 180) / Math.PI;
    at = meanNoon - equationOfTime + side * angle * MILLISECONDS_A_DEGREE;
  }
  return Math.round(at);
}

const instantOf = (crossed: number | "above" | "below"): number | null =>
  typeof crossed === "number" ? crossed : null;

/**
 * The sun at a place on the solar day whose noon falls nearest to noon UTC of day number `day` (days since
 * 1970-01-01), shifted by longitude: for New York the noon of that calendar date, for Auckland too.
 *
 * Sunrise and sunset by the NOAA formulas, the sun's place taken anew at each crossing. Never farther than 0.52 minutes from
 * published tables that round to the minute (tests/published/sun.test.ts, three of 71 rows beyond 65°); the refraction of the
 * day, not reckoned with, is worth more than that near the poles.
 *
 * @example
 * solarDay({ latitude: 50.45466, longitude: 30.5238 }, 20 604) // 2026-06-01 at Kyiv
 * // { kind: "day", sunrise: 01:52Z, noon: 09:56Z, sunset: 18:00Z }
 */
export function solarDay(place: Place, day: number): SolarDay {
  const meanNoon = day * DAY_MS + DAY_MS / 2 - place.longitude * MILLISECONDS_A_DEGREE;
  const noon = Math.round(meanNoon - solarPosition(meanNoon).equationOfTime);
  const sunrise = crossing(place, meanNoon, noon, -1);
  const sunset = crossing(place, meanNoon, noon, 1);
  if (typeof sunrise === "number" || typeof sunset === "number") {
    return { kind: "day", noon, sunrise: instantOf(sunrise), sunset: instantOf(sunset) };
  }
  return { kind: sunrise === "above" ? "polar-day" : "polar-night", noon };
}

/** From sunrise to sunset of a solar day; `null` in the polar night. */
function lightOf(day: SolarDay): Interval | null {
  if (day.kind === "polar-night") return null;
  if (day.kind === "polar-day") return { start: day.noon - DAY_MS / 2, end: day.noon + DAY_MS / 2 };
  return { start: day.sunrise ?? day.noon - DAY_MS / 2, end: day.sunset ?? day.noon + DAY_MS / 2 };
}

/** The equation of time moves noon by half a minute a day: what lies closer than this is one stretch of polar day. */
const NOON_DRIFT_MS = 60_000;

/**
 * The stretches from sunrise to sunset within a horizon, as a normal list. A polar day is one stretch; in the polar
 * night there is none.
 *
 * @example daylight({ latitude: 78.2, longitude: 15.6 }, december) // []
 */
export function daylight(place: Place, horizon: Interval): Interval[] {
  const light: Interval[] = [];
  for (
    let day = Math.floor(horizon.start / DAY_MS) - 1;
    day <= Math.floor(horizon.end / DAY_MS) + 1;
    day += 1
  ) {
    const found = lightOf(solarDay(place, day));
    if (found !== null) light.push(found);
  }
  return intersect(joinAcross(light), [horizon]);
}

function joinAcross(light: readonly Interval[]): Interval[] {
  const joined: Interval[] = [];
  for (const { start, end } of light) {
    const last = joined.at(-1);
    if (last !== undefined && start - last.end <= NOON_DRIFT_MS)
      joined[joined.length - 1] = { start: last.start, end };
    else joined.push({ start, end });
  }
  return normalize(joined);
}
