import type { Finding } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";
import { convert, dimensionOf } from "@evenhand/measurement/unit";

/** The item that reads it; it has one place. */
export const ODOMETER = "identity.odometer";
/** More than this a day nobody drives a car that is for sale: what is beyond is the odometer's question, and excuses no wear. */
const MOST_MILES_A_DAY = 150;
const DAY_MS = 86_400_000;

/** What a report says of its odometer, and when the visit was. */
export type OdometerRead = Pick<Report, "visit"> & { readonly finding: Finding | undefined };

const odometerOf = ({
  finding,
  visit,
}: OdometerRead): { readonly miles: number; readonly at: number } | undefined => {
  if (finding?.answer.kind !== "reading" || dimensionOf(finding.answer.unit) !== dimensionOf("mi")) {
    return undefined;
  }
  const { values, unit } = finding.answer;
  const sum = values.reduce((total, { value }) => total + convert(value, unit, "mi"), 0);
  return { miles: sum / values.length, at: Date.parse(finding.time ?? visit.started) };
};

/**
 * Miles driven between two reports as far as both odometers say: never under 0, and no more than 150 a day, so that an odometer
 * that does not fit excuses no wear. Common practice, no source.
 *
 * @returns 0 where one of them did not read it
 * @example milesBetween(reportAt(61_240), eightDaysLaterAt(61_640)) // 400
 */
export const milesBetween = (a: OdometerRead, b: OdometerRead): number => {
  const [first, second] = [odometerOf(a), odometerOf(b)];
  if (first === undefined || second === undefined) return 0;
  const later = second.at >= first.at ? 1 : -1;
  const driven = later * (second.miles - first.miles);
  return Math.max(0, Math.min(driven, (MOST_MILES_A_DAY * Math.abs(second.at - first.at)) / DAY_MS));
};
