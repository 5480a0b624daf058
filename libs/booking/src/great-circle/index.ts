import type { Place } from "@evenhand/shared/booking";

/** Mean radius of the Earth R₁ = (2a + b) / 3 of GRS 80, in meters (Moritz, Geodetic Reference System 1980). */
export const MEAN_EARTH_RADIUS = 6_371_008.8;

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/**
 * Great-circle distance in meters on a sphere of mean radius, by the haversine formula
 * `2R·asin √(sin²(Δφ/2) + cos φ₁ · cos φ₂ · sin²(Δλ/2))`. The Earth is flattened: true distances differ by up to
 * about 0.5 %, which is far inside what a road adds.
 *
 * Source: Sinnott, "Virtues of the Haversine", Sky and Telescope 68 (1984) 159 (from memory).
 *
 * @example
 * greatCircleDistance({ latitude: 36.12, longitude: -86.67 }, { latitude: 33.94, longitude: -118.4 }) // 2 886 448.4…
 */
export function greatCircleDistance(from: Place, to: Place): number {
  const halfLatitude = Math.sin(radians(to.latitude - from.latitude) / 2);
  const halfLongitude = Math.sin(radians(to.longitude - from.longitude) / 2);
  const haversine =
    halfLatitude * halfLatitude +
    Math.cos(radians(from.latitude)) * Math.cos(radians(to.latitude)) * halfLongitude * halfLongitude;
  return 2 * MEAN_EARTH_RADIUS * Math.asin(Math.min(1, Math.sqrt(haversine)));
}
