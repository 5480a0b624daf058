import { z } from "zod";
import { Instant, LocalId, Money } from "../identifier.ts";
import { LandedCost, LandedCostEntries, TransportRates } from "../landed-cost.ts";
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

export const TransportRatesSeen = z.strictObject({ ...Kept, rates: TransportRates.nullable() });
export type TransportRatesSeen = z.infer<typeof TransportRatesSeen>;

export const moneyContracts = {
  "landedCost.get": { costly: true, status: 200, answer: LandedCostSeen },
  "landedCost.put": { body: LandedCostEntries, costly: true, status: 200, answer: LandedCostSeen },
  "transportRates.get": { status: 200, answer: TransportRatesSeen },
  "transportRates.put": { body: TransportRates, status: 200, answer: TransportRatesSeen },
} as const satisfies Record<string, Contract>;
