import { z } from "zod";
import { CoverageRow } from "./comparison.ts";
import { Instant, ItemId, LocalId, ObjectId, PositionId, Sha256 } from "./identifier.ts";
import { CrossCheck } from "./cross-check.ts";
import { Certainty, MatterId } from "./matter.ts";
import { Direction, Outcome, Standing } from "./outcome.ts";
import { SettlementState } from "./settlement.ts";
import { Severity } from "./severity.ts";

const minorUnits = z.int().nonnegative();

/**
 * What the buyer will do about an open matter. `first`: it is cleared before money moves, or put right before the car is driven ·
 * `dealer`: the dealer puts it right · `look-again`: it is looked at again first · `as-it-is`: taken as it is, for the reason given.
 */
export const MatterAnswer = z.enum(["first", "dealer", "look-again", "as-it-is"]);
export type MatterAnswer = z.infer<typeof MatterAnswer>;

export const Acknowledgement = z.strictObject({
  /** Of an open matter of the summary. */
  matter: MatterId,
  answer: MatterAnswer,
  /** Asked for where the matter stops the money, and where the thing is taken as it is; each in its own. */
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
  /** What was stated and what was found, in words; `null` where a side said nothing. Absent in summaries of version 1. */
  said: z.strictObject({ stated: z.string().nullable(), found: z.string().nullable() }).optional(),
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

/** What became of a matter between buyer and dealer: that of its line that is farthest from settled. */
export const MATTER_STATES = [
  "open",
  "laid",
  "contested",
  "offered",
  "with-inspector",
  "promised",
  "accepted",
  "finding-stands",
  "statement-stands",
  "settled",
  "left-open",
] as const;
export const MatterState = z.enum(MATTER_STATES);
export type MatterState = z.infer<typeof MatterState>;

/** A matter of the comparison's answer, as it stood. */
export const SummaryMatter = z.strictObject({
  id: MatterId,
  severity: Severity,
  certainty: Certainty,
  headline: z.string(),
  found: z.string(),
  next: z.string(),
  lines: z.int().positive(),
  /** How many of them were laid before the dealer: the state is theirs alone. Older summaries do not say. */
  laid: z.int().nonnegative().optional(),
  state: MatterState,
});
export type SummaryMatter = z.infer<typeof SummaryMatter>;

/** What must be answered for before approval: it stops the money or can hurt somebody, and was found, is in doubt or was not seen. */
export const OpenMatter = z.strictObject({
  id: MatterId,
  /** How it is called. */
  name: z.string(),
  /** Matters of the answer it stands for: one, but where many are folded into the last. */
  matters: z.array(MatterId).min(1),
  severity: z.enum(["halt", "danger"]),
  headline: z.string(),
  found: z.string(),
  /** Gravest first. */
  lines: z.array(SummaryItem).min(1),
});
export type OpenMatter = z.infer<typeof OpenMatter>;

const anyVersion = {
  format: z.literal("evenhand-summary"),
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
  releases: z.array(
    z.strictObject({
      id: ObjectId,
      entry: z.int().nonnegative(),
      state: SettlementState,
      reason: z.string().nullable(),
    }),
  ),
  cost: SummaryCost.nullable(),
  /** Codes of the cautions that stand on it. */
  cautions: z.array(LocalId),
  sources: z.array(SummarySource),
};

/**
 * What the buyer decides on: a snapshot in canonical JSON (RFC 8785). Its SHA-256 is the hash the decision repeats. People and
 * firms stand in it as ids. It is no roadworthiness certificate, valuation or contract.
 */
export const Summary = z.strictObject({
  ...anyVersion,
  version: z.literal(2),
  /** All matters of the answer, worst first, what nobody knows last. */
  matters: z.array(SummaryMatter),
  openMatters: z.array(OpenMatter),
  /** Rules of the handbook that are broken. */
  broken: z.array(CrossCheck),
  /** What both sides say is bad: it costs and hurts like any other. */
  bothBad: z.array(SummaryItem),
});
export type Summary = z.infer<typeof Summary>;

/** As summaries were stored before they carried matters; read as they are, never written anew. */
export const Summary1 = z.strictObject({
  ...anyVersion,
  version: z.literal(1),
  openMatters: z.array(
    z.strictObject({
      matter: LocalId,
      severity: z.enum(["halt", "danger"]),
      lines: z.array(SummaryItem).min(1),
    }),
  ),
});
export const StoredSummary = z.discriminatedUnion("version", [Summary1, Summary]);
export type StoredSummary = z.infer<typeof StoredSummary>;

/** What is typed and chosen before it is decided; kept so that nothing of it is lost. */
export const DecisionDraft = z.strictObject({
  decision: z.enum(["approve", "counter", "decline"]).nullable(),
  answers: z
    .array(z.strictObject({ matter: MatterId, answer: MatterAnswer.nullable(), words: z.string().max(1000) }))
    .max(20),
  price: z.string().max(40),
  conditions: z.string().max(4000),
  /** The last day a counter stands, as typed. Drafts kept before offers had an end have none. */
  until: z.string().max(40).optional(),
});
export type DecisionDraft = z.infer<typeof DecisionDraft>;
