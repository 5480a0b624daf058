import { z } from "zod";
import { Instant, ItemId, ObjectId, PositionId } from "../identifier.ts";
import { nameOf } from "../names.ts";
import { Report, Vehicle } from "../report.ts";
import { EvidenceSeen, Webp } from "./evidence.ts";
import { SealedVersion } from "./vehicles.ts";
import { CreatedDraft, Named, pageOf, PageQuery, Revision, type Contract } from "./paging.ts";

/** A fault the dealer accepted, or that was upheld: it keeps the car from being listed until a new statement answers it. */
export const OpenFault = z.strictObject({
  release: ObjectId,
  item: ItemId,
  position: PositionId,
  since: Instant,
});
export type OpenFault = z.infer<typeof OpenFault>;

export const ListingChange = z.strictObject({
  at: Instant,
  listed: z.boolean(),
  /** `sealed` and `fault` by the service, the others by the dealer. */
  cause: z.enum(["sealed", "fault", "published", "withdrawn"]),
  /** To the dealer alone. */
  reason: z.string().nullable(),
});
export type ListingChange = z.infer<typeof ListingChange>;

export const ListingSeen = z.strictObject({
  vehicle: ObjectId,
  /** Of the car. */
  revision: Revision,
  listed: z.boolean(),
  statement: SealedVersion.nullable(),
  /** To the dealer alone; others get none. */
  openFaults: z.array(OpenFault),
  history: z.array(ListingChange),
});
export type ListingSeen = z.infer<typeof ListingSeen>;
export const PublishRequest = z.strictObject({});
export const WithdrawRequest = z.strictObject({ reason: z.string().trim().min(1).max(500) });
export type WithdrawRequest = z.infer<typeof WithdrawRequest>;

export const ShareLinkRequest = z.strictObject({
  /** For whom, so that the dealer knows which one to revoke. */
  name: nameOf(200),
  /** At most a year ahead. */
  expires: Instant,
});
export type ShareLinkRequest = z.infer<typeof ShareLinkRequest>;
/** The token is in this answer and nowhere else. `path` is the page of the web application. */
export const ShareLinkCreated = z.strictObject({ id: ObjectId, token: z.string(), path: z.string() });
export type ShareLinkCreated = z.infer<typeof ShareLinkCreated>;
export const ShareLinkSeen = z.strictObject({
  id: ObjectId,
  name: z.string(),
  createdAt: Instant,
  expires: Instant,
  revokedAt: Instant.nullable(),
  reads: z.int(),
  lastReadAt: Instant.nullable(),
});
export type ShareLinkSeen = z.infer<typeof ShareLinkSeen>;

/** A photograph sealed in the statement, as whoever holds the link sees it: a copy without metadata. */
export const SharedPicture = EvidenceSeen.pick({
  id: true,
  item: true,
  position: true,
  caption: true,
  width: true,
  height: true,
  placeholder: true,
});
export type SharedPicture = z.infer<typeof SharedPicture>;

/** What a reader who is not signed in gets: the published statement and nothing else. */
export const SharedStatement = z.strictObject({
  vehicle: Vehicle,
  dealer: Named.omit({ id: true }),
  statement: SealedVersion,
  /** By place; first those of the car as a whole. */
  pictures: z.array(SharedPicture),
  document: Report,
});
export type SharedStatement = z.infer<typeof SharedStatement>;

export const publishingContracts = {
  "listing.get": { status: 200, answer: ListingSeen },
  "listing.publish": { body: PublishRequest, status: 201, answer: CreatedDraft },
  "listing.withdraw": { body: WithdrawRequest, status: 201, answer: CreatedDraft },
  "shareLinks.create": { body: ShareLinkRequest, status: 201, answer: ShareLinkCreated },
  "shareLinks.list": { query: PageQuery, status: 200, answer: pageOf(ShareLinkSeen) },
  "shareLinks.revoke": { status: 204, answer: null },
  "sharedStatements.get": { status: 200, answer: SharedStatement },
  "sharedStatements.small": { status: 200, answer: Webp },
  "sharedStatements.large": { status: 200, answer: Webp },
} as const satisfies Record<string, Contract>;
