import { z } from "zod";
import { NotSeenReason } from "./answer.ts";
import { Comparison } from "./comparison.ts";
import { ItemId, LocalId, Money, PositionId, Sha256 } from "./identifier.ts";
import { Matter, MatterId } from "./matter.ts";
import { Outcome } from "./outcome.ts";
import { ReportKind } from "./report.ts";
import { Severity } from "./severity.ts";

const Count = z.int().nonnegative();

/** What became of one thing stated. */
export const BECAME = ["fell", "doubtful", "unseen", "notComparable", "disclosed", "held"] as const;
export const Became = z.enum(BECAME);
export type Became = z.infer<typeof Became>;

/** A claim of the dealer's line about the car, in words made from the finding, and what became of it. */
export const LineClaim = z.strictObject({ words: z.string(), became: Became });
export type LineClaim = z.infer<typeof LineClaim>;

/** What became of what the statement says, place by place. */
export const Claims = z.strictObject({
  /** Places of which the statement says something. */
  stated: Count,
  /** Of these, the places that can stop a purchase, hurt somebody or carry the price, and how many of those the sheet has: trifles swell neither. */
  decisive: z.strictObject({ stated: Count, onSheet: Count, held: Count }).optional(),
  held: Count,
  /** Faults the statement owned up to, and that were found. */
  disclosed: Count,
  /** Places whose fault the statement made out worse than was found. They count among the others too. Answers made before have none. */
  statedWorse: Count.optional(),
  fell: Count,
  doubtful: Count,
  unseen: Count,
  notComparable: Count,
  /** The gravest that fell, worst first, with what was found. */
  fallen: z.array(z.string()),
  /** The dealer's line: the claims a car is sold by, each with what became of it, those that fell first. */
  line: z.array(LineClaim),
});
export type Claims = z.infer<typeof Claims>;

/** What stops the money: found so, or not known. */
export const Stop = z.strictObject({ words: z.string(), known: z.boolean() });
export type Stop = z.infer<typeof Stop>;

/** A line that speaks of a matter, by its index among the comparison's entries. */
export const MatterLine = z.strictObject({
  entry: Count,
  /** Item and position in words. */
  place: z.string(),
  outcome: Outcome,
  severity: Severity.nullable(),
  /** Something bad was found; `false` where it could only be. */
  found: z.boolean(),
});
export type MatterLine = z.infer<typeof MatterLine>;

/** A matter with what the inspector wrote beside its lines. */
export const AnsweredMatter = z.strictObject({
  matter: Matter,
  /** The inspector's own words, gravest line first, each with its place. */
  notes: z.array(z.strictObject({ place: z.string(), words: z.string() })),
  /** The lines of the matter, as it lists them. */
  lines: z.array(MatterLine),
});
export type AnsweredMatter = z.infer<typeof AnsweredMatter>;

/** A question to the dealer, word for word, and the place it is put on. */
export const Asked = z.strictObject({ words: z.string(), item: ItemId, position: PositionId });
export type Asked = z.infer<typeof Asked>;

/** What makes the word of one side, or of both, weigh less over the whole report. */
export const Softening = z.strictObject({
  /** Stable code of what it is. */
  of: LocalId,
  side: z.enum(["a", "b", "both"]),
  /** A sentence for a buyer, with its counts. */
  words: z.string(),
  /** The arithmetic it rests on, folded where there is room to fold. */
  figures: z.string().optional(),
});
export type Softening = z.infer<typeof Softening>;

const Side = z.strictObject({
  kind: ReportKind,
  organization: z.string(),
  seal: Sha256.nullable(),
  started: z.string(),
  /** IANA time zone of the place. */
  zone: z.string(),
});

/** Page one of a comparison: what a buyer needs to stop or go on. Stored with the comparison it was made of. */
export const Answer = z.strictObject({
  format: z.literal("evenhand-answer"),
  version: z.literal(1),
  engine: z.string(),
  vehicle: Comparison.shape.vehicle,
  a: Side,
  b: Side,
  looked: z.strictObject({
    by: z.string(),
    started: z.string(),
    minutes: z.number().nullable(),
    /** Why places the inspector came to were not seen, with how many. */
    couldNot: z.array(z.strictObject({ reason: NotSeenReason, places: Count })),
  }),
  stops: z.array(Stop),
  claims: Claims,
  /** Worst first. */
  matters: z.array(AnsweredMatter),
  /** Matters of what nobody knows. */
  unknown: z.array(AnsweredMatter),
  questions: z.array(z.string()),
  /** The same with the places they are put on. Answers made before have none. */
  asks: z.array(Asked).optional(),
  /** What softens it, on either side, worst first. Answers made before it was counted have none. */
  soft: z.array(Softening).optional(),
  /** The sheet's cautions for whoever looks again, opens something or drives. */
  cautions: z.array(z.strictObject({ id: LocalId, text: z.string() })),
  /** How many lines stand how, as the comparison counts them. */
  tally: Comparison.shape.tally,
  /** How many rules of the handbook are broken. */
  broken: Count,
});
export type Answer = z.infer<typeof Answer>;

const amount = z.int().nonnegative();

/**
 * What it may cost to put right, from the reader's own table, each figure rounded to two digits, in minor units. At most `low` in
 * 10 of 100 cases, `likely` in 50, `high` in 90. Arithmetic on the reader's figures, never a valuation.
 */
export const AnswerCost = z.strictObject({
  /** What the car is offered at; `null` where nothing is asked. */
  asking: Money.nullable(),
  /** `null`: the reader keeps no table, and nothing is guessed. */
  cost: z
    .strictObject({
      currency: z.string(),
      table: z.string(),
      total: z.strictObject({ low: amount, likely: amount, high: amount }),
      /** What each matter is likely to add, its chance counted in; dearest first. Matters without a price are left out. */
      byMatter: z.array(z.strictObject({ matter: MatterId, likely: amount })),
      /** Rows asked for that the table says nothing of; they add nothing. */
      unset: z.array(LocalId),
    })
    .nullable(),
});
export type AnswerCost = z.infer<typeof AnswerCost>;
