import { z } from "zod";
import { KeptEntry, PublishedKey, Receipt, SealReceipt } from "../chain.ts";
import { Instant, ObjectId, Sha256 } from "../identifier.ts";
import { MemberRole } from "./accounts.ts";
import { OrganizationKind } from "./organizations.ts";
import type { Contract } from "./paging.ts";

export const RecordKeys = z.strictObject({ items: z.array(PublishedKey) });
export type RecordKeys = z.infer<typeof RecordKeys>;

/** A sealed document of the organization: read whole at its address, where it is noted who was shown what. */
const HeldDocument = z.strictObject({
  id: ObjectId,
  kind: z.string(),
  vehicle: ObjectId,
  seal: Sha256,
  sealedAt: Instant,
  address: z.string(),
});

/** Rows as they are kept, by what they are. */
const Rows = z.array(z.record(z.string(), z.unknown()));

/** What an organization holds here, in one document. */
export const OrganizationExport = z.strictObject({
  format: z.literal("evenhand-export-1"),
  madeAt: Instant,
  organization: z.strictObject({
    id: ObjectId,
    name: z.string(),
    kind: OrganizationKind,
    place: z.string().nullable(),
    zone: z.string(),
    createdAt: Instant,
  }),
  members: z.array(
    z.strictObject({ account: ObjectId, name: z.string(), email: z.string(), role: MemberRole }),
  ),
  documents: z.array(HeldDocument),
  /** Reports as they stand, with what was written since the last seal. */
  drafts: Rows,
  decisionDrafts: Rows,
  /** Every save of what things cost, of transport rates, and of what a buyer keeps with a case. */
  costTables: Rows,
  transportRates: Rows,
  caseDocuments: Rows,
  handOvers: Rows,
  vehicles: Rows,
  orders: Rows,
  visits: Rows,
  releases: Rows,
  decisions: Rows,
  questions: Rows,
  complaints: Rows,
  sites: Rows,
  calendars: Rows,
  /** Its record, with the names of its own members alone. */
  record: z.array(KeptEntry),
  receipts: z.array(Receipt),
  keys: z.array(PublishedKey),
});
export type OrganizationExport = z.infer<typeof OrganizationExport>;

export const chainContracts = {
  "recordKeys.list": { status: 200, answer: RecordKeys },
  "receipts.get": { status: 200, answer: SealReceipt },
  "exports.get": { costly: true, status: 200, answer: OrganizationExport },
} as const satisfies Record<string, Contract>;
