const radians = (degrees: number): number => (degrees * Math.PI) / 180;
const degrees = (angle: number): number => (angle * 180) / Math.PI;

/** Where the sun stands against the stars and the mean clock. */
export type SolarPosition = {
  /** Declination, radians. */
  readonly declination: number;
  /** Apparent less mean solar time, milliseconds. */
  readonly equationOfTime: number;
};

/** Julian centuries since J2000.0 of an epoch instant; 2 440 587.5 is the Julian date of the epoch. */
const julianCentury = (instant: number): number => (instant / 86_400_000 + 2_440_587.5 - 2_451_545) / 36_525;

/** Obliquity of the ecliptic with nutation, radians. */
function obliquity(century: number): number {
  const seconds = 21.448 - century * (46.815 + century * (0.000_59 - century * 0.001_813));
  return radians(23 + (26 + seconds / 60) / 60 + 0.002_56 * Math.cos(radians(125.04 - 1_934.136 * century)));
}

function equationOfCenter(century: number, anomaly: number): number {
  return (
    Math.sin(anomaly) * (1.914_602 - century * (0.004_817 + 0.000_014 * century)) +
    Math.sin(2 * anomaly) * (0.019_993 - 0.000_101 * century) +
    Math.sin(3 * anomaly) * 0.000_289
  );
}

/**
 * Declination and equation of time by the low-accuracy formulas of NOAA's solar calculator, after Meeus, Astronomical
 * Algorithms, chapters 25 and 28 (coefficients from memory; checked against the published tables in
 * tests/published/sun.test.ts).
 *
 * @param instant epoch milliseconds, UTC
 * @example solarPosition(Date.UTC(2026, 5, 21, 12)).declination // 0.409…
 */
export function solarPosition(instant: number): SolarPosition {
  const century = julianCentury(instant);
  const meanLongitude = radians(280.466_46 + century * (36_000.769_83 + century * 0.000_303_2));
  const anomaly = radians(357.529_11 + century * (35_999.050_29 - 0.000_153_7 * century));
  const eccentricity = 0.016_708_634 - century * (0.000_042_037 + 0.000_000_126_7 * century);
  const trueLongitude = degrees(meanLongitude) + equationOfCenter(century, anomaly);
  const node = radians(125.04 - 1_934.136 * century);
  const apparentLongitude = radians(trueLongitude - 0.005_69 - 0.004_78 * Math.sin(node));
  const tilt = obliquity(century);
  const y = Math.tan(tilt / 2) ** 2;
  const equation =
    y * Math.sin(2 * meanLongitude) -
    2 * eccentricity * Math.sin(anomaly) +
    4 * eccentricity * y * Math.sin(anomaly) * Math.cos(2 * meanLongitude) -
    0.5 * y * y * Math.sin(4 * meanLongitude) -
    1.25 * eccentricity * eccentricity * Math.sin(2 * anomaly);
  return {
    declination: Math.asin(Math.sin(tilt) * Math.sin(apparentLongitude)),
    // An hour of the mean clock is 15° of turning: a degree takes four minutes.
    equationOfTime: degrees(equation) * 240_000,
  };
}
