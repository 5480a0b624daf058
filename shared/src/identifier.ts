import { z } from "zod";

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

/** An instant in UTC by RFC 3339: `2026-05-04T15:00:00Z`. */
export const Instant = z.iso.datetime();
export type Instant = z.infer<typeof Instant>;

/** SHA-256 in lower-case hexadecimal. */
export const Sha256 = z.string().regex(/^[0-9a-f]{64}$/, "64 lower-case hexadecimal digits");
export type Sha256 = z.infer<typeof Sha256>;

/** Money: whole minor units (cents) and an ISO 4217 code. */
export const Money = z.strictObject({
  minor: z.int(),
  currency: z.string().regex(/^[A-Z]{3}$/, "an ISO 4217 code such as USD"),
});
export type Money = z.infer<typeof Money>;
