import type { Report } from "@evenhand/shared/report";
import type { Scenario } from "./read-scenario.ts";

const DAY = 86_400_000;
const instant = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2}(\.\d+)?)?Z$/;

const later = (text: string, by: number): string =>
  new Date(Date.parse(text) + by).toISOString().replace(".000Z", "Z");

/** The same value with every instant in it moved; dates, local times and codes stay as they are. */
function moved<T>(value: T, by: number): T;
function moved(value: unknown, by: number): unknown {
  if (typeof value === "string") return instant.test(value) ? later(value, by) : value;
  if (Array.isArray(value)) return value.map((each: unknown) => moved(each, by));
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, each]) => [name, moved(each, by)]));
}

/** A report with everything in it so much later; what was calibrated on a date, so many whole days later. */
export function movedReport(report: Report, by: number): Report {
  const instruments = report.instruments.map((each) =>
    each.calibrated === undefined
      ? each
      : {
          ...each,
          calibrated: new Date(Date.parse(each.calibrated) + Math.floor(by / DAY) * DAY)
            .toISOString()
            .slice(0, 10),
        },
  );
  return { ...moved(report, by), instruments };
}

/**
 * How much later than it was told the story happens: whole weeks, so that weekdays stay, and the day up to which it was told is
 * today or one of the six days before.
 *
 * @returns milliseconds
 */
export const toldLater = (told: string, now: Date): number =>
  Math.floor((now.getTime() - Date.parse(`${told}T00:00:00Z`)) / (7 * DAY)) * 7 * DAY;

/** The scenario as if it had been told today. Visits, questions and complaints count from today by themselves. */
export function datedFrom(scenario: Scenario, now: Date): Scenario {
  const by = toldLater(scenario.told, now);
  const { reports, orders, releases, summaries, handOvers } = scenario;
  return {
    ...scenario,
    ...moved({ reports, orders, releases, summaries, handOvers }, by),
    files: new Map([...scenario.files].map(([key, report]) => [key, movedReport(report, by)])),
  };
}
