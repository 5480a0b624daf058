import { isDate } from "../../entities/time/is-date";

/**
 * The instant a day is over where the reader is, as the service takes it; `null` for what is no date.
 *
 * @example endOfDay("2027-05-04") // "2027-05-05T04:00:00.000Z" in New York
 */
export const endOfDay = (date: string): string | null => {
  if (!isDate(date)) return null;
  const end = new Date(`${date}T00:00:00`);
  end.setDate(end.getDate() + 1);
  return end.toISOString();
};
