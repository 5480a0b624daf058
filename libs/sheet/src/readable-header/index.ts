import { StoredHeader } from "@evenhand/shared/http/reports";
import { CautionsRead, GradeScale, Instrument, Report } from "@evenhand/shared/report";
import type { z } from "zod";

/** What could not be read keeps its name, so that a person can be told what is left out. */
export interface ReadableHeader {
  readonly header: StoredHeader;
  /** Parts left out because they do not hold: `instruments/2`, `terms`. Empty for every header the service takes today. */
  readonly leftOut: readonly string[];
}

/** Stands where the time of a visit cannot be read; sealing names it, since the stored one is what is sealed. */
const noVisit: StoredHeader["visit"] = { started: "1970-01-01T00:00:00Z", zone: "UTC" };

const fieldOf = (stored: unknown, field: string): unknown =>
  typeof stored === "object" && stored !== null ? Reflect.get(stored, field) : undefined;

/**
 * A stored header as far as it can be read, so that a draft with a bad part in it can be opened, mended and sealed again. A list
 * loses only the members that do not hold. Never throws.
 *
 * @example
 * readableHeader({ sheet: { id: "evenhand", version: 1 }, visit: { started: "2026-05-04T15:00:00Z", zone: "UTC" },
 *   persons: [{ id: "", name: "R. Ashby" }, { id: "mo", name: "Mo" }] }).leftOut;
 * // ["persons/0"]
 */
export function readableHeader(stored: unknown): ReadableHeader {
  const whole = StoredHeader.safeParse(stored);
  if (whole.success) return { header: whole.data, leftOut: [] };
  const leftOut: string[] = [];
  const one = <T>(name: string, schema: z.ZodType<T>, instead: T): T => {
    const parsed = schema.safeParse(fieldOf(stored, name));
    if (!parsed.success) leftOut.push(name);
    return parsed.success ? parsed.data : instead;
  };
  const list = <T>(name: string, schema: z.ZodType<T>): T[] => {
    const raw = fieldOf(stored, name) ?? [];
    if (!Array.isArray(raw)) {
      leftOut.push(name);
      return [];
    }
    return raw.flatMap((member: unknown, at) => {
      const parsed = schema.safeParse(member);
      if (!parsed.success) leftOut.push(`${name}/${at}`);
      return parsed.success ? [parsed.data] : [];
    });
  };
  const terms = one("terms", StoredHeader.shape.terms, undefined);
  const cautionsRead =
    fieldOf(stored, "cautionsRead") === undefined ? [] : list("cautionsRead", CautionsRead);
  const header: StoredHeader = {
    sheet: one("sheet", StoredHeader.shape.sheet, { id: "evenhand", version: 1 }),
    visit: one("visit", StoredHeader.shape.visit, noVisit),
    ...(terms === undefined ? {} : { terms }),
    instruments: list("instruments", Instrument),
    persons: list("persons", Report.shape.persons.removeDefault().element),
    scales: list("scales", GradeScale),
    ...(cautionsRead.length === 0 ? {} : { cautionsRead }),
  };
  return { header, leftOut };
}
