import { z } from "zod";
import { Instant, Money, ObjectId, Sha256 } from "./identifier.ts";

/** A line laid before the dealer, from there to one of its ends. */
export const SettlementState = z.enum([
  /** Laid before the dealer, who has not answered. */
  "released",
  /** The dealer contests it. */
  "contested",
  /** The dealer offers a price, a remedy, or another look. */
  "price-offered",
  "remedy-offered",
  "look-offered",
  /** The buyer refused what was offered. */
  "refused",
  /** The inspector is asked. */
  "asked",
  /** The inspector revises the report. */
  "revising",
  /** Another look is agreed and has to be booked and made. */
  "looking-again",
  /** A remedy was taken, and the dealer owes it. */
  "promised",
  /** The dealer says that it is done, and shows how. */
  "proved",
  /** Ends: the finding stands, for the dealer accepts it. */
  "accepted",
  "finding-stands",
  "statement-stands",
  "settled",
  "left-open",
]);
export type SettlementState = z.infer<typeof SettlementState>;

export const SettlementMove = z.enum([
  "accept",
  "contest",
  "offer-price",
  "offer-remedy",
  "offer-look",
  "prove",
  "take",
  "refuse",
  "ask",
  "confirm",
  "withdraw",
  "leave",
  "stand",
  "revise",
  "look-again",
  /** By sealing: what was found anew bears the finding out, or the statement. */
  "uphold",
  "clear",
  /** By the clock: the hours for an answer are over. */
  "lapse",
]);
export type SettlementMove = z.infer<typeof SettlementMove>;

export const SettlementActor = z.enum(["buyer", "dealer", "inspector", "seal", "clock"]);
export type SettlementActor = z.infer<typeof SettlementActor>;

const words = z.string().trim().min(1).max(2000);
const name = z.string().trim().min(1).max(200);

/** What speaks for a move beside its words. A photograph is named by its bytes too: what was sent cannot become another. */
export const Evidence = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("photograph"), id: ObjectId, sha256: Sha256 }),
  z.strictObject({ kind: z.literal("document"), name, says: words.nullable().default(null) }),
  z.strictObject({
    kind: z.literal("reading"),
    of: name,
    value: z.number(),
    unit: z.string().trim().min(1).max(20),
    instrument: name,
  }),
]);
export type Evidence = z.infer<typeof Evidence>;

/** What the dealer offers. `repair`: with proof of it · `price`: so much off · `part` and `document`: handed over · `look`: an independent one. */
export const Remedy = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("price"), off: Money }),
  z.strictObject({ kind: z.enum(["repair", "part", "document", "look"]) }),
]);
export type Remedy = z.infer<typeof Remedy>;

/** One entry of a line's thread: who did what and when, with words and evidence. It is never changed. */
export const ThreadEntry = z.strictObject({
  at: Instant,
  by: SettlementActor,
  move: SettlementMove,
  from: SettlementState,
  to: SettlementState,
  words: z.string().nullable(),
  evidence: z.array(Evidence),
  remedy: Remedy.nullable(),
});
export type ThreadEntry = z.infer<typeof ThreadEntry>;
