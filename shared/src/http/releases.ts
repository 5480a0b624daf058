import { z } from "zod";
import { Entry } from "../comparison.ts";
import { Finding } from "../finding.ts";
import { Instant, ObjectId } from "../identifier.ts";
import { MatterId } from "../matter.ts";
import { Severity } from "../severity.ts";
import { CreatedDraft, pageOf, PageQuery, Revision, type Contract } from "./paging.ts";

/** Indexes into the comparison's entries. Never one that was found better than stated. */
export const ReleaseRequest = z.strictObject({ entries: z.array(z.int().nonnegative()).min(1).max(500) });
export type ReleaseRequest = z.infer<typeof ReleaseRequest>;
export const ReleasesMade = z.strictObject({ items: z.array(CreatedDraft) });
export type ReleasesMade = z.infer<typeof ReleasesMade>;

export const ReleaseState = z.enum(["released", "accepted", "contested"]);
export type ReleaseState = z.infer<typeof ReleaseState>;

/** A finding as the other side sees it: not by whom, and with the instrument's name instead of the report's own id for it. */
export const ReleasedFinding = Finding.omit({ person: true, instrument: true }).extend({
  instrumentName: z.string().nullable(),
});
export type ReleasedFinding = z.infer<typeof ReleasedFinding>;

/** What a released entry belongs to, joined and worded from the released entries alone. */
export const ReleasedMatter = z.strictObject({
  id: MatterId,
  severity: Severity,
  headline: z.string(),
  /** Something bad was found; `false` where it could only be. */
  found: z.boolean(),
});
export type ReleasedMatter = z.infer<typeof ReleasedMatter>;

/** One disputed entry laid before the dealer: the two answers, and nothing else of the inspection. */
export const Release = z.strictObject({
  id: ObjectId,
  revision: Revision,
  vehicle: ObjectId,
  comparison: ObjectId,
  entryIndex: z.int().nonnegative(),
  entry: Entry,
  a: ReleasedFinding.nullable(),
  b: ReleasedFinding.nullable(),
  /** `null` where it belongs to none, and for what was released before matters were kept with it. */
  matter: ReleasedMatter.nullable(),
  state: ReleaseState,
  reason: z.string().nullable(),
  releasedAt: Instant,
  answeredAt: Instant.nullable(),
});
export type Release = z.infer<typeof Release>;

export const ReleaseAnswer = z.strictObject({
  answer: z.enum(["accept", "contest"]),
  reason: z.string().trim().min(1).max(2000),
});
export type ReleaseAnswer = z.infer<typeof ReleaseAnswer>;

export const ReleaseQuery = PageQuery.extend({
  vehicle: ObjectId.optional(),
  comparison: ObjectId.optional(),
  state: ReleaseState.optional(),
});
export type ReleaseQuery = z.infer<typeof ReleaseQuery>;

export const releaseContracts = {
  "releases.create": { body: ReleaseRequest, status: 201, answer: ReleasesMade },
  "releases.list": { query: ReleaseQuery, status: 200, answer: pageOf(Release) },
  "releases.get": { status: 200, answer: Release },
  "releases.answer": { body: ReleaseAnswer, status: 201, answer: CreatedDraft },
} as const satisfies Record<string, Contract>;
