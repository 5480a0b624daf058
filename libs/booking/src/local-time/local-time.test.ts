import { expect, test } from "vitest";
import { instantOfLocal, localDay, localDays } from "@evenhand/booking/local-time";

const hours = (date: string, zone: string): number => {
  const { start, end } = localDay(date, zone);
  return (end - start) / 3_600_000;
};

test("a day has the hours its zone gives it", () => {
  expect(hours("2026-05-04", "America/New_York")).toBe(24);
  expect(hours("2026-03-08", "America/New_York")).toBe(23);
  expect(hours("2026-11-01", "America/New_York")).toBe(25);
});

test("a date that its zone left out is empty, begins where the next one begins, and is no day of a list", () => {
  expect(hours("2011-12-30", "Pacific/Apia")).toBe(0);
  expect(localDay("2011-12-30", "Pacific/Apia").start).toBe(localDay("2011-12-31", "Pacific/Apia").start);
  expect(localDays("2011-12-29", "2011-12-31", "Pacific/Apia").map(({ date }) => date)).toEqual([
    "2011-12-29",
    "2011-12-31",
  ]);
  expect(localDays("2011-12-30", "2011-12-30", "Pacific/Apia")).toEqual([]);
});

test("a day whose midnight is skipped begins when its clocks begin", () => {
  // Beirut's clocks went from 00:00 to 01:00 on 31 March 2024 (IANA time zone database, Asia/Beirut).
  expect(new Date(localDay("2024-03-31", "Asia/Beirut").start).toISOString()).toBe(
    "2024-03-30T22:00:00.000Z",
  );
  expect(hours("2024-03-31", "Asia/Beirut")).toBe(23);
});

test("a time that is skipped is read with the offset before the gap", () => {
  expect(instantOfLocal("2026-03-08T02:30:00", "America/New_York")).toBe(Date.UTC(2026, 2, 8, 7, 30));
  expect(instantOfLocal("2011-12-30T12:00:00", "Pacific/Apia")).toBe(Date.UTC(2011, 11, 30, 22));
});
