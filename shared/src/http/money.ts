import { z } from "zod";
import { Instant } from "../identifier.ts";
import { LandedCost, LandedCostEntries, TransportRates } from "../landed-cost.ts";
import type { Contract } from "./paging.ts";

const Kept = {
  /** 0 before anything was saved. */
  revision: z.int().nonnegative(),
  savedAt: Instant.nullable(),
};

/** What a case comes to for its buyer, reckoned anew each time from what was entered and what the record has. */
export const LandedCostSeen = z.strictObject({
  ...Kept,
  entries: LandedCostEntries,
  cost: LandedCost,
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
