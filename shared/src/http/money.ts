import { z } from "zod";
import { BeforeMoneyEntries, BeforeMoneyStanding } from "../before-money.ts";
import { Instant, ItemId, LocalId, Money } from "../identifier.ts";
import { LandedChange, LandedCost, LandedCostEntries, TransportRates } from "../landed-cost.ts";
import { Severity } from "../severity.ts";
import type { Contract } from "./paging.ts";

const Kept = {
  /** 0 before anything was saved. */
  revision: z.int().nonnegative(),
  savedAt: Instant.nullable(),
};

/** What another look would be worth at most, and what to look at next. Arithmetic on the buyer's own figures. */
export const WorthOfLooking = z.strictObject({
  together: Money,
  looks: z.array(
    z.strictObject({
      row: LocalId,
      words: z.string(),
      minutes: z.number().positive(),
      /** It can stop the money or hurt somebody. */
      first: z.boolean(),
    }),
  ),
});
export type WorthOfLooking = z.infer<typeof WorthOfLooking>;

/** What a case comes to for its buyer, reckoned anew each time from what was entered and what the record has. */
export const LandedCostSeen = z.strictObject({
  ...Kept,
  entries: LandedCostEntries,
  cost: LandedCost,
  /** `null` without a limit, a comparison or a table of costs, or where they are not in one currency. */
  worth: WorthOfLooking.nullable(),
});
export type LandedCostSeen = z.infer<typeof LandedCostSeen>;

/** The last twenty times it was saved, the latest first: who changed which line when, from what to what. */
export const LandedCostHistory = z.strictObject({
  items: z.array(
    z.strictObject({
      revision: z.int().positive(),
      savedBy: z.string(),
      savedAt: Instant,
      changes: z.array(LandedChange),
    }),
  ),
});
export type LandedCostHistory = z.infer<typeof LandedCostHistory>;

/**
 * How much is known of what is to be looked at, least first: two answers or figures speak against each other · they cannot be set
 * against each other · nothing is said · it is said with a hedge or from hearsay · it is claimed.
 */
export const KNOWN = ["parted", "incomparable", "silent", "unsure", "claimed"] as const;
export type Known = (typeof KNOWN)[number];

/** Where a visit would begin, by what is known of the car: a proposal. */
export const LookFirst = z.strictObject({
  /** What it goes by: the statement alone, or what an inspection found; nothing where neither is there. */
  from: z.enum(["statement", "comparison", "nothing"]),
  /** The buyer keeps a table of costs, and what has no gravity goes by what it could cost. */
  priced: z.boolean(),
  /** First things first. */
  looks: z.array(
    z.strictObject({
      item: ItemId,
      /** The sheet's, for all of the item. */
      minutes: z.number().positive(),
      /** How grave it can be. */
      severity: Severity,
      known: z.enum(KNOWN),
      /** It was agreed that it is looked at again. */
      again: z.boolean(),
      /** It stands where it does by what it would decide in money. */
      byWorth: z.boolean(),
    }),
  ),
});
export type LookFirst = z.infer<typeof LookFirst>;

/** What a buyer goes through before money moves, beside what the record says at the moment it is asked. */
export const BeforeMoneySeen = z.strictObject({
  ...Kept,
  /** By the last decision: approved, or an offer that was taken. */
  bought: z.boolean(),
  entries: BeforeMoneyEntries,
  standing: BeforeMoneyStanding,
});
export type BeforeMoneySeen = z.infer<typeof BeforeMoneySeen>;

export const TransportRatesSeen = z.strictObject({ ...Kept, rates: TransportRates.nullable() });
export type TransportRatesSeen = z.infer<typeof TransportRatesSeen>;

export const moneyContracts = {
  "lookFirst.get": { costly: true, status: 200, answer: LookFirst },
  "landedCost.get": { costly: true, status: 200, answer: LandedCostSeen },
  "landedCost.put": { body: LandedCostEntries, costly: true, status: 200, answer: LandedCostSeen },
  "landedCost.history": { status: 200, answer: LandedCostHistory },
  "beforeMoney.get": { costly: true, status: 200, answer: BeforeMoneySeen },
  "beforeMoney.put": { body: BeforeMoneyEntries, costly: true, status: 200, answer: BeforeMoneySeen },
  "transportRates.get": { status: 200, answer: TransportRatesSeen },
  "transportRates.put": { body: TransportRates, status: 200, answer: TransportRatesSeen },
} as const satisfies Record<string, Contract>;
