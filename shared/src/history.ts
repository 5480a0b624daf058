import { z } from "zod";
import { LocalDate, LocalId } from "./identifier.ts";
import { UnitSymbol } from "./unit.ts";

/** Pairs of reports below which nothing is said of anybody. */
export const LEAST_PAIRS = 20;

/** How far readings of one kind of instrument, in one unit, lie too high; below 0 too low. */
const learned = {
  /** What the sheet calls an instrument of this kind. */
  kind: z.string().min(1),
  unit: UnitSymbol,
  effect: z.number(),
  /** Of effect less what it truly is. */
  standardError: z.number().nonnegative(),
  pairs: z.int().min(LEAST_PAIRS),
};

/** By how much one inspector reads too high with any gauge of a kind. People stand in it as random ids. */
export const InspectorLean = z.strictObject({ inspector: z.string().min(1), ...learned });
export type InspectorLean = z.infer<typeof InspectorLean>;

/** By how much one gauge reads too high in any hand, since it was last calibrated. */
export const GaugeOffset = z.strictObject({
  gauge: LocalId,
  calibrated: LocalDate.nullable(),
  ...learned,
});
export type GaugeOffset = z.infer<typeof GaugeOffset>;

/**
 * What past pairs of reports tell of the inspectors and gauges of one firm. Written canonically, sealed by its hash and given to a comparison, which
 * names the hash, so that a comparison stays a function of what went into it. Never of a dealer.
 */
export const HistoryTable = z.strictObject({
  format: z.literal("evenhand-history"),
  version: z.literal(1),
  leans: z.array(InspectorLean),
  gauges: z.array(GaugeOffset),
});
export type HistoryTable = z.infer<typeof HistoryTable>;

/** What one pair of reports tells of one gauge: by how much it read more than was said, in the middle of its places. */
export const PastReading = z.strictObject({
  kind: z.string().min(1),
  unit: UnitSymbol,
  gauge: LocalId,
  calibrated: LocalDate.nullable(),
  difference: z.number(),
  /** The difference that matters, in the middle of the places. */
  delta: z.number().positive(),
  places: z.int().positive(),
});
export type PastReading = z.infer<typeof PastReading>;
