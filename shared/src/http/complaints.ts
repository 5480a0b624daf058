import { z } from "zod";
import { Instant, ObjectId } from "../identifier.ts";
import { Created, CreatedDraft, Named, pageOf, PageQuery, Revision, type Contract } from "./paging.ts";

export const ComplaintState = z.enum(["received", "opened", "answered"]);
export type ComplaintState = z.infer<typeof ComplaintState>;
export const ComplaintSubject = z.strictObject({
  kind: z.enum(["appointment", "vehicle", "organization", "release", "other"]),
  id: ObjectId.nullable().default(null),
});
export type ComplaintSubject = z.infer<typeof ComplaintSubject>;

export const ComplaintRequest = z.strictObject({
  /** The organization one complains for. */
  organization: ObjectId,
  about: ComplaintSubject,
  text: z.string().trim().min(1).max(10_000),
});
export type ComplaintRequest = z.infer<typeof ComplaintRequest>;
/** Why the contents must be read; logged, and shown to the one who complained. */
export const ComplaintOpening = z.strictObject({ reason: z.string().trim().min(10).max(1000) });
export type ComplaintOpening = z.infer<typeof ComplaintOpening>;
export const ComplaintReply = z.strictObject({ text: z.string().trim().min(1).max(10_000) });
export type ComplaintReply = z.infer<typeof ComplaintReply>;

export const ComplaintSeen = z.strictObject({
  id: ObjectId,
  revision: Revision,
  state: ComplaintState,
  /** The contents: to those who complained, and to an operator who has opened it. */
  from: Named.nullable(),
  about: ComplaintSubject.nullable(),
  text: z.string().nullable(),
  reply: z.string().nullable(),
  receivedAt: Instant,
  answeredAt: Instant.nullable(),
  /** Every time an operator opened it, and why. */
  openings: z.array(z.strictObject({ at: Instant, by: z.string(), reason: z.string() })),
});
export type ComplaintSeen = z.infer<typeof ComplaintSeen>;
export const ComplaintQuery = PageQuery.extend({ state: ComplaintState.optional() });
export type ComplaintQuery = z.infer<typeof ComplaintQuery>;
export const ComplaintCounts = z.strictObject({
  counts: z.array(z.strictObject({ state: ComplaintState, count: z.int() })),
  /** The oldest that waits for an answer. */
  oldestWaiting: Instant.nullable(),
});
export type ComplaintCounts = z.infer<typeof ComplaintCounts>;

export const complaintContracts = {
  "complaints.create": { body: ComplaintRequest, status: 201, answer: Created },
  "complaints.list": { query: ComplaintQuery, status: 200, answer: pageOf(ComplaintSeen) },
  "complaints.counts": { status: 200, answer: ComplaintCounts },
  "complaints.get": { status: 200, answer: ComplaintSeen },
  "complaints.open": { body: ComplaintOpening, status: 201, answer: CreatedDraft },
  "complaints.answer": { body: ComplaintReply, status: 201, answer: CreatedDraft },
} as const satisfies Record<string, Contract>;
