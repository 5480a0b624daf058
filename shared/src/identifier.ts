import { z } from "zod";
import { Currency } from "./currency.ts";

/** A dotted lower-case name, stable for ever: `wheels.tread-depth`. An item keeps its meaning under its id. */
export const ItemId = z
  .string()
  .regex(/^[a-z0-9-]+(\.[a-z0-9-]+)+$/, "lower-case words joined by dots, such as wheels.tread-depth");
export type ItemId = z.infer<typeof ItemId>;

/** A place on the car within an item's positions: `left-front`, `cylinder-3`, `hood`. The empty string where an item has none. */
export const PositionId = z
  .string()
  .regex(/^([a-z0-9-]+)?$/, "lower-case words joined by hyphens, such as left-front");
export type PositionId = z.infer<typeof PositionId>;

/** A lower-case name inside an item or a report: an option, a fault kind, an instrument, a spot. */
export const LocalId = z
  .string()
  .min(1)
  .max(64)
  .regex(/^[a-z0-9][a-z0-9-]*$/, "lower-case letters, digits and hyphens");
export type LocalId = z.infer<typeof LocalId>;

/** UUID version 7, as every stored object has it. */
export const ObjectId = z.uuid();
export type ObjectId = z.infer<typeof ObjectId>;

/** Years a car, a paper or a visit can be of; the year 0000 of ISO 8601 is none the database has. */
const years = /^(18|19|20|21)\d\d-/;
const yearsMeant = "a year from 1800 to 2199";

/** An instant in UTC by RFC 3339: `2026-05-04T15:00:00Z`. */
export const Instant = z.iso.datetime({ abort: true }).regex(years, yearsMeant);
export type Instant = z.infer<typeof Instant>;

/** SHA-256 in lower-case hexadecimal. */
export const Sha256 = z.string().regex(/^[0-9a-f]{64}$/, "64 lower-case hexadecimal digits");
export type Sha256 = z.infer<typeof Sha256>;

/** A date on a calendar: `2026-05-04`. */
export const LocalDate = z.iso.date({ abort: true }).regex(years, yearsMeant);
export type LocalDate = z.infer<typeof LocalDate>;

/** A wall-clock date and time with no zone: `2026-05-04T09:00:00`. */
export const LocalDateTime = z.iso
  .datetime({ local: true, offset: false, abort: true })
  .regex(/^[^Z]*$/, "no zone")
  .regex(years, yearsMeant);
export type LocalDateTime = z.infer<typeof LocalDateTime>;

/** Ten billion in dollars: above it a figure is a slip. */
const mostMinor = 1_000_000_000_000;

/** Money: whole minor units (cents), never less than nothing, and an ISO 4217 code. */
export const Money = z.strictObject({ minor: z.int().min(0).max(mostMinor), currency: Currency });
export type Money = z.infer<typeof Money>;
