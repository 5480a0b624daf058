import { z } from "zod";
import { CoverageRow } from "./comparison.ts";
import { Instant, ItemId, LocalId, ObjectId, PositionId, Sha256 } from "./identifier.ts";
import { Direction, Outcome, Standing } from "./outcome.ts";
import { Severity } from "./severity.ts";

const minorUnits = z.int().nonnegative();

/** What is one matter for the person who decides. */
export const OpenMatterKind = z.enum([
  "numbers",
  "title",
  "water",
  "structure",
  "brakes",
  "steering",
  "wheels",
  "fire",
  "equipment",
]);
export type OpenMatterKind = z.infer<typeof OpenMatterKind>;

/**
 * What the buyer will do about an open matter. `first`: it is cleared before money moves, or put right before the car is driven ·
 * `dealer`: the dealer puts it right · `look-again`: it is looked at again first · `as-it-is`: taken as it is, for the reason given.
 */
export const MatterAnswer = z.enum(["first", "dealer", "look-again", "as-it-is"]);
export type MatterAnswer = z.infer<typeof MatterAnswer>;

export const Acknowledgement = z.strictObject({
  matter: OpenMatterKind,
  answer: MatterAnswer,
  /** Asked for where the matter stops the money, and where the thing is taken as it is. */
  words: z.string().trim().min(10, "in words, at least ten characters").max(1000).optional(),
});
export type Acknowledgement = z.infer<typeof Acknowledgement>;

/** An entry of the comparison, by its index, as it stands for the buyer. */
export const SummaryItem = z.strictObject({
  entry: z.int().nonnegative(),
  item: ItemId,
  position: PositionId,
  outcome: Outcome,
  standing: Standing,
  direction: Direction,
  severity: Severity.nullable(),
  /** Something bad was found; `false` where it could only be. */
  found: z.boolean(),
  reason: LocalId,
});
export type SummaryItem = z.infer<typeof SummaryItem>;

/** One thing the summary was made from, with the version it had. `id` tells two of a kind apart. */
export const SummarySource = z.strictObject({
  what: z.enum(["statement", "inspection", "comparison", "release", "cost-table"]),
  id: ObjectId,
  version: z.string(),
});
export type SummarySource = z.infer<typeof SummarySource>;

/**
 * What it may take to put right what is in doubt, from the buyer's own table. The total is drawn with a seed, so that the same
 * summary gives the same figures: at most `low` in 10 of 100 cases, `likely` in 50, `high` in 90. `unset` names rows the table says
 * nothing of; they add nothing. It is arithmetic on the buyer's figures, not a valuation.
 */
export const SummaryCost = z.strictObject({
  currency: z.string(),
  table: z.string(),
  rows: z.array(
    z.strictObject({
      row: LocalId,
      entries: z.array(z.int().nonnegative()),
      /** That it falls due. */
      probability: z.number().min(0).max(1),
      low: minorUnits,
      likely: minorUnits,
      high: minorUnits,
    }),
  ),
  unset: z.array(LocalId),
  total: z.strictObject({ low: minorUnits, likely: minorUnits, high: minorUnits }),
  draws: z.int().positive(),
  seed: z.int().nonnegative(),
});
export type SummaryCost = z.infer<typeof SummaryCost>;

/**
 * What the buyer decides on: a snapshot in canonical JSON (RFC 8785). Its SHA-256 is the hash the decision repeats. People and
 * firms stand in it as ids. It is no roadworthiness certificate, valuation or contract.
 */
export const Summary = z.strictObject({
  format: z.literal("evenhand-summary"),
  version: z.literal(1),
  id: ObjectId,
  createdAt: Instant,
  vehicle: z.strictObject({
    id: ObjectId,
    make: z.string(),
    model: z.string(),
    modelYear: z.int(),
    identification: z.string(),
  }),
  dealer: ObjectId,
  inspector: ObjectId,
  comparison: z.strictObject({ id: ObjectId, engine: z.string(), hash: Sha256 }),
  statement: z.strictObject({ id: ObjectId, version: z.int(), seal: Sha256 }),
  inspection: z.strictObject({ id: ObjectId, version: z.int(), seal: Sha256 }),
  standings: z.record(Standing, z.int().nonnegative()),
  coverage: CoverageRow,
  /** Doubtful, differing, unstated and contradicted, most pressing first. */
  inDoubt: z.array(SummaryItem),
  /** What a purchase can turn on (halt, danger, worth) and nobody saw, by name. */
  unseen: z.array(SummaryItem),
  /** Each must be answered for before approval: what stops the money and what can hurt somebody, bad, in doubt or unseen. */
  openMatters: z.array(
    z.strictObject({
      matter: OpenMatterKind,
      severity: z.enum(["halt", "danger"]),
      lines: z.array(SummaryItem).min(1),
    }),
  ),
  releases: z.array(
    z.strictObject({
      id: ObjectId,
      entry: z.int().nonnegative(),
      state: z.enum(["released", "accepted", "contested"]),
      reason: z.string().nullable(),
    }),
  ),
  cost: SummaryCost.nullable(),
  /** Codes of the cautions that stand on it. */
  cautions: z.array(LocalId),
  sources: z.array(SummarySource),
});
export type Summary = z.infer<typeof Summary>;
