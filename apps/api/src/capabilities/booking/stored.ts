import type { CancellationTerms } from "@evenhand/booking/cancellation-terms";
import type { VisitCost } from "@evenhand/booking/visit-cost";
import type { VisitPlan } from "@evenhand/booking/visit-plan";
import { BriefItem, VisitStage } from "@evenhand/shared/booking";
import { z } from "zod";

/** What of an appointment is kept as JSON, as the rules of booking made it. */

const Segment = z.object({
  car: z.string(),
  stage: VisitStage,
  from: z.number(),
  to: z.number(),
  lift: z.boolean(),
  daylight: z.boolean(),
  items: z.array(z.string()),
});
const LiftSpell = z.object({
  car: z.string(),
  spell: z.union([z.literal(1), z.literal(2)]),
  from: z.number(),
  to: z.number(),
});
const CarSpan = z.object({
  car: z.string(),
  from: z.number(),
  to: z.number(),
  needsCold: z.boolean(),
  warms: z.boolean(),
});
export const StoredPlan = z.object({
  length: z.number(),
  segments: z.array(Segment),
  lifts: z.array(LiftSpell),
  cars: z.array(CarSpan),
  toAllow: z.array(z.object({ car: z.string(), item: z.string() })),
}) satisfies z.ZodType<VisitPlan>;

export const StoredCost = z.object({
  currency: z.string(),
  visit: z.number(),
  travel: z.number(),
  site: z.number(),
  total: z.number(),
}) satisfies z.ZodType<VisitCost>;

const Band = z.object({ atLeast: z.number(), share: z.number() });
export const StoredTerms = z.object({
  version: z.string(),
  buyerWithdraws: z.array(Band),
  dealerFails: z.array(Band),
  weatherTravel: z.number(),
  safetyLeast: z.number(),
  missedSite: z.number(),
}) satisfies z.ZodType<CancellationTerms>;

export const Permission = z.object({ car: z.string(), item: z.string(), allowed: z.boolean() });
export type Permission = z.infer<typeof Permission>;

/** Another brief that is proposed: when, in epoch milliseconds. */
export const Proposed = z.object({ items: z.array(BriefItem), at: z.number() });
