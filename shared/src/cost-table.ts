import { z } from "zod";
import { Currency } from "./currency.ts";
import { LocalId } from "./identifier.ts";
import { nameOf } from "./names.ts";
import { UnitSymbol } from "./unit.ts";

const minorUnits = z.int().min(0).max(1_000_000_000_000);
const probability = z.number().min(0).max(1);

const isOrdered = ({ low, likely, high }: { low: number; likely: number; high: number }): boolean =>
  low <= likely && likely <= high;
const ORDERED = "low ≤ likely ≤ high";

/**
 * Cost to put one row right, in whole minor units: low, likely, high. `small` is what it costs where nothing but a trifle was found (a
 * touched-up chip is no refinished panel); left out, a trifle costs what anything does. `perExtent` adds to it for every unit of extent of a fault
 * (a longer rust hole costs more). `occurs` is the owner's own probability that the cost falls due, where no interval of
 * readings gives one; a key left out is unset, and unset is said, never guessed.
 */
export const CostRow = z
  .strictObject({
    row: LocalId,
    /** Whether each place costs by itself (a tire) or the row falls due once for the car, whatever asks for it (an engine rebuild). */
    per: z.enum(["place", "car"]).default("place"),
    words: z.string().min(1).max(200),
    low: minorUnits,
    likely: minorUnits,
    high: minorUnits,
    small: z
      .strictObject({ low: minorUnits, likely: minorUnits, high: minorUnits })
      .refine(isOrdered, ORDERED)
      .optional(),
    perExtent: z
      .strictObject({ unit: UnitSymbol, low: minorUnits, likely: minorUnits, high: minorUnits })
      .optional(),
    occurs: z
      .strictObject({
        consistent: probability.optional(),
        doubtful: probability.optional(),
        differ: probability.optional(),
        unstated: probability.optional(),
        unseen: probability.optional(),
      })
      .default({}),
  })
  .refine(isOrdered, ORDERED);
export type CostRow = z.infer<typeof CostRow>;

/** A table of costs that a firm or a buyer owns. Rows are named by the sheet's items (`costRow`). */
export const CostTable = z.strictObject({
  format: z.literal("evenhand-cost-table"),
  version: z.literal(1),
  name: nameOf(200),
  currency: Currency,
  /** Correlation of normal scores of two rows of one section. */
  correlationWithinSection: z.number().min(0).max(1).default(0),
  rows: z.array(CostRow).max(1000),
});
export type CostTable = z.infer<typeof CostTable>;
