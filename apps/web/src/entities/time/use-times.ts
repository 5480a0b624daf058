import { useMemo } from "react";
import { useIntl } from "react-intl";
import { noonOf } from "./zone-time";

/** Dates and times on the clock of a zone that is named each time. */
export const useTimes = () => {
  const intl = useIntl();
  return useMemo(() => {
    const time = (instant: string, zone: string): string =>
      intl.formatTime(instant, { hour: "numeric", minute: "2-digit", timeZone: zone });
    return {
      time,
      range: (start: string, end: string, zone: string): string =>
        `${time(start, zone)} – ${time(end, zone)}`,
      /** With the zone's short name, such as `9:00 AM MST`. */
      timeWithZone: (instant: string, zone: string): string =>
        intl.formatTime(instant, {
          hour: "numeric",
          minute: "2-digit",
          timeZone: zone,
          timeZoneName: "short",
        }),
      zoneName: (instant: string, zone: string): string =>
        new Intl.DateTimeFormat(intl.locale, { timeZone: zone, timeZoneName: "long" })
          .formatToParts(new Date(instant))
          .find(({ type }) => type === "timeZoneName")?.value ?? zone,
      day: (instant: string, zone: string): string =>
        intl.formatDate(instant, { weekday: "long", month: "long", day: "numeric", timeZone: zone }),
      full: (instant: string, zone: string): string =>
        intl.formatDate(instant, {
          weekday: "short",
          month: "short",
          day: "numeric",
          year: "numeric",
          hour: "numeric",
          minute: "2-digit",
          timeZone: zone,
          timeZoneName: "short",
        }),
      /** For a button: without the year. */
      brief: (instant: string, zone: string): string =>
        intl.formatDate(instant, {
          weekday: "short",
          month: "short",
          day: "numeric",
          hour: "numeric",
          minute: "2-digit",
          timeZone: zone,
          timeZoneName: "short",
        }),
      /** Of a date with no zone. */
      date: (date: string, style: "long" | "short" = "long"): string =>
        intl.formatDate(noonOf(date), {
          weekday: style,
          month: style === "long" ? "long" : "short",
          day: "numeric",
          timeZone: "UTC",
        }),
    };
  }, [intl]);
};

/** `3 h 20 min` by the catalog's own words. */
export const splitMinutes = (minutes: number): { hours: number; minutes: number } => {
  const whole = Math.round(minutes);
  return { hours: Math.floor(whole / 60), minutes: whole % 60 };
};
