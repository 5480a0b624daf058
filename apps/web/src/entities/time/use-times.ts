import { useMemo } from "react";
import { useIntl, type IntlShape } from "react-intl";
import { noonOf } from "./zone-time";

const clock = { hour: "numeric", minute: "2-digit" } as const;
const shortDay = { weekday: "short", month: "short", day: "numeric" } as const;
const withZone = { timeZoneName: "short" } as const;

const timesIn = (intl: IntlShape) => {
  const time = (instant: string, zone: string): string =>
    intl.formatTime(instant, { ...clock, timeZone: zone });
  return {
    time,
    range: (start: string, end: string, zone: string): string => `${time(start, zone)} – ${time(end, zone)}`,
    /** With the zone's short name, such as `9:00 AM MST`. */
    timeWithZone: (instant: string, zone: string): string =>
      intl.formatTime(instant, { ...clock, ...withZone, timeZone: zone }),
    zoneName: (instant: string, zone: string): string =>
      new Intl.DateTimeFormat(intl.locale, { timeZone: zone, timeZoneName: "long" })
        .formatToParts(new Date(instant))
        .find(({ type }) => type === "timeZoneName")?.value ?? zone,
  };
};

const daysIn = (intl: IntlShape) => ({
  day: (instant: string, zone: string): string =>
    intl.formatDate(instant, { weekday: "long", month: "long", day: "numeric", timeZone: zone }),
  full: (instant: string, zone: string): string =>
    intl.formatDate(instant, { ...shortDay, year: "numeric", ...clock, ...withZone, timeZone: zone }),
  /** For a button: without the year. */
  brief: (instant: string, zone: string): string =>
    intl.formatDate(instant, { ...shortDay, ...clock, ...withZone, timeZone: zone }),
  /** Of a date with no zone. */
  date: (date: string, style: "long" | "short" = "long"): string =>
    intl.formatDate(noonOf(date), { weekday: style, month: style, day: "numeric", timeZone: "UTC" }),
});

/** Dates and times on the clock of a zone that is named each time. */
export const useTimes = () => {
  const intl = useIntl();
  return useMemo(() => ({ ...timesIn(intl), ...daysIn(intl) }), [intl]);
};
