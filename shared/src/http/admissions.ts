import { z } from "zod";
import { Instant, ObjectId } from "../identifier.ts";
import { AdmissionState } from "./calendars.ts";
import { CreatedDraft, Named, pageOf, PageQuery, type Contract } from "./paging.ts";

/** A firm or an inspector, and whether the operator lets them work. `id` is the firm's or the calendar's. */
export const AdmissionSeen = z.strictObject({
  id: ObjectId,
  revision: z.int().nonnegative(),
  kind: z.enum(["firm", "inspector"]),
  name: z.string(),
  firm: Named,
  state: AdmissionState,
  reason: z.string().nullable(),
  appliedAt: Instant,
  decidedAt: Instant.nullable(),
});
export type AdmissionSeen = z.infer<typeof AdmissionSeen>;
export const AdmissionQuery = PageQuery.extend({ state: AdmissionState.optional() });
export type AdmissionQuery = z.infer<typeof AdmissionQuery>;
export const AdmissionDecision = z.strictObject({
  decision: z.enum(["admit", "refuse", "suspend"]),
  reason: z.string().trim().min(1).max(2000),
});
export type AdmissionDecision = z.infer<typeof AdmissionDecision>;

export const admissionContracts = {
  "admissions.list": { query: AdmissionQuery, status: 200, answer: pageOf(AdmissionSeen) },
  "admissions.decide": { body: AdmissionDecision, status: 201, answer: CreatedDraft },
} as const satisfies Record<string, Contract>;
