import { describe, expect, it } from "vitest";
import { lastMorning } from "./index.ts";

const iso = (instant: string, zone: string): string =>
  new Date(lastMorning(Date.parse(instant), zone)).toISOString();

describe("the last morning", () => {
  it.each([
    ["at seven itself", "2027-05-04T12:00:00Z", "America/Chicago", "2027-05-04T12:00:00.000Z"],
    ["a moment before", "2027-05-04T11:59:59Z", "America/Chicago", "2027-05-03T12:00:00.000Z"],
    [
      "late in the evening, when it is the next day in UTC",
      "2027-05-05T03:00:00Z",
      "America/Chicago",
      "2027-05-04T12:00:00.000Z",
    ],
    [
      "where the offset is a quarter of an hour",
      "2027-05-04T01:20:00Z",
      "Asia/Kathmandu",
      "2027-05-04T01:15:00.000Z",
    ],
    // The clocks of Chicago go forward on 14 March 2027 at two: that morning comes 23 hours after the last (IANA time zone database).
    ["after the clock went forward", "2027-03-14T12:30:00Z", "America/Chicago", "2027-03-14T12:00:00.000Z"],
    ["before it did", "2027-03-13T13:30:00Z", "America/Chicago", "2027-03-13T13:00:00.000Z"],
  ])("%s", (_, now, zone, morning) => {
    expect(iso(now, zone)).toBe(morning);
  });
});
