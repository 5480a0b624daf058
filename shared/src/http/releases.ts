import { z } from "zod";
import { Entry } from "../comparison.ts";
import { Finding } from "../finding.ts";
import { EvidenceState } from "../evidence.ts";
import { Instant, Money, ObjectId, Sha256 } from "../identifier.ts";
import { MatterId } from "../matter.ts";
import { Evidence, SettlementMove, SettlementState, ThreadEntry } from "../settlement.ts";
import { Severity } from "../severity.ts";
import { Original, UploadProgress, Webp } from "./evidence.ts";
import { CreatedDraft, pageOf, PageQuery, Revision, type Contract } from "./paging.ts";

/** Indexes into the comparison's entries. Never one that was found better than stated. */
export const ReleaseRequest = z.strictObject({ entries: z.array(z.int().nonnegative()).min(1).max(500) });
export type ReleaseRequest = z.infer<typeof ReleaseRequest>;
export const ReleasesMade = z.strictObject({ items: z.array(CreatedDraft) });
export type ReleasesMade = z.infer<typeof ReleasesMade>;

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

/** What a revision or another look found of a line, sealed since it was laid. */
const LookedAgain = z.strictObject({ entry: Entry, b: ReleasedFinding.nullable() });

/** One disputed entry laid before the dealer: the two answers, nothing else of the inspection, and how it is settled. */
export const Release = z.strictObject({
  id: ObjectId,
  revision: Revision,
  /** As whom the person sees it. */
  as: z.enum(["buyer", "dealer", "inspector"]),
  vehicle: ObjectId,
  comparison: ObjectId,
  entryIndex: z.int().nonnegative(),
  /** Where the line stands in the newest comparison that has it; `null` to whoever does not read comparisons. */
  standsIn: z.strictObject({ comparison: ObjectId, entryIndex: z.int().nonnegative() }).nullable(),
  entry: Entry,
  a: ReleasedFinding.nullable(),
  b: ReleasedFinding.nullable(),
  /** `null` where nothing was sealed of it since. */
  looked: LookedAgain.nullable(),
  /** `null` where it belongs to none, and for what was released before matters were kept with it. */
  matter: ReleasedMatter.nullable(),
  state: SettlementState,
  /** When the next step is due; `null` at an end. */
  deadline: Instant.nullable(),
  /** IANA zone of the site by whose open hours it was reckoned; `null` where the car stands at none. */
  zone: z.string().nullable(),
  /** The dealer's last word for accepting or contesting. */
  reason: z.string().nullable(),
  releasedAt: Instant,
  answeredAt: Instant.nullable(),
  /** Everything done about it, the first first. To the inspector what the inspector is asked about, and not what is offered. */
  thread: z.array(ThreadEntry),
});
export type Release = z.infer<typeof Release>;

const byPeople = SettlementMove.exclude(["uphold", "clear", "lapse"]);

/**
 * One move on lines of one car: all of them move, or none. `price` goes with `offer-price`, `remedy` with `offer-remedy`. Words are
 * asked for where a move is nothing without.
 */
export const SettlementRequest = z
  .strictObject({
    lines: z
      .array(z.strictObject({ id: ObjectId, revision: Revision }))
      .min(1)
      .max(100),
    move: byPeople,
    words: z.string().trim().min(1).max(2000).optional(),
    evidence: z.array(Evidence).max(10).default([]),
    price: Money.optional(),
    remedy: z.enum(["repair", "part", "document"]).optional(),
  })
  .refine(({ move, price }) => (move === "offer-price") === (price !== undefined), {
    path: ["price"],
    message: "how much is taken off, with offer-price and with nothing else",
  })
  .refine(({ move, remedy }) => (move === "offer-remedy") === (remedy !== undefined), {
    path: ["remedy"],
    message: "repair, part or document, with offer-remedy and with nothing else",
  });
export type SettlementRequest = z.infer<typeof SettlementRequest>;

/** A line with the state it is in; also a member of the refusal where one has moved on meanwhile. */
export const SettlementLine = z.strictObject({ id: ObjectId, revision: Revision, state: SettlementState });
export type SettlementLine = z.infer<typeof SettlementLine>;
export const SettlementMade = z.strictObject({ lines: z.array(SettlementLine) });
export type SettlementMade = z.infer<typeof SettlementMade>;

export const ReleaseQuery = PageQuery.extend({
  vehicle: ObjectId.optional(),
  comparison: ObjectId.optional(),
  state: SettlementState.optional(),
});
export type ReleaseQuery = z.infer<typeof ReleaseQuery>;

/**
 * A photograph that is to speak for a move: kept with the line, its sender's alone until a move names it, and from then on there for
 * whoever may read that move. It can be named once it is `ready`.
 */
export const ReleasePicture = z.strictObject({
  id: ObjectId,
  /** Of the bytes that were sent. */
  sha256: Sha256,
  bytes: z.int().positive(),
  /** By the service's clock. */
  receivedAt: Instant,
  state: EvidenceState,
  refused: UploadProgress.shape.refused,
});
export type ReleasePicture = z.infer<typeof ReleasePicture>;

export const releaseContracts = {
  "releases.create": { body: ReleaseRequest, status: 201, answer: ReleasesMade },
  "releases.list": { query: ReleaseQuery, status: 200, answer: pageOf(Release) },
  "releases.get": { status: 200, answer: Release },
  "releases.move": { body: SettlementRequest, status: 201, answer: SettlementMade },
  "releasePictures.add": { status: 201, answer: ReleasePicture },
  "releasePictures.list": { status: 200, answer: z.strictObject({ items: z.array(ReleasePicture) }) },
  "releasePictures.small": { status: 200, answer: Webp },
  "releasePictures.large": { status: 200, answer: Webp },
  "releasePictures.original": { status: 200, answer: Original },
  "releasePictures.remove": { status: 204, answer: null },
} as const satisfies Record<string, Contract>;
