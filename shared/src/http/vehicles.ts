import { z } from "zod";
import { Instant, Money, ObjectId, Sha256 } from "../identifier.ts";
import { ReportKind, Vehicle } from "../report.ts";
import { ComparisonSeen } from "./comparisons.ts";
import { OrderSeen } from "./orders.ts";
import { CreatedDraft, Named, pageOf, PageQuery, Revision, type Contract } from "./paging.ts";

/** What stands under the car in the list, in the dealer's words. */
const DealerWords = z.string().trim().max(400);

export const VehicleRequest = z.strictObject({
  organization: ObjectId,
  vehicle: Vehicle,
  asking: Money.optional(),
  words: DealerWords.optional(),
});
export type VehicleRequest = z.infer<typeof VehicleRequest>;
/** `listed: false` withdraws; `listed: true` needs a sealed statement that answers what was accepted as wrong. */
export const VehicleChange = z.strictObject({
  vehicle: Vehicle.optional(),
  asking: Money.nullable().optional(),
  words: DealerWords.nullable().optional(),
  listed: z.boolean().optional(),
});
export type VehicleChange = z.infer<typeof VehicleChange>;

export const VehicleQuery = PageQuery.extend({
  /** Words of make, model, year or identification. */
  q: z.string().trim().min(1).max(100).optional(),
});
export type VehicleQuery = z.infer<typeof VehicleQuery>;

export const SealedVersion = z.strictObject({
  id: ObjectId,
  version: z.int().positive(),
  seal: Sha256,
  sealedAt: Instant,
});
export type SealedVersion = z.infer<typeof SealedVersion>;

export const VehicleRow = z.strictObject({
  id: ObjectId,
  make: z.string(),
  model: z.string(),
  modelYear: z.int(),
  identification: z.string(),
  dealer: Named,
  listed: z.boolean(),
  asking: Money.nullable(),
  words: z.string().nullable(),
  /** Words and price are kept from this person, whether or not there are any. */
  withheld: z.boolean(),
  /** The newest sealed statement. */
  statement: SealedVersion.nullable(),
  /** The photograph that stands for it, as `evidence.small` gives it; none where nothing is shown of it, or not to this person. */
  cover: ObjectId.nullable(),
  createdAt: Instant,
});
export type VehicleRow = z.infer<typeof VehicleRow>;

export const VehicleDetail = z.strictObject({
  id: ObjectId,
  revision: Revision,
  vehicle: Vehicle,
  dealer: Named,
  listed: z.boolean(),
  asking: Money.nullable(),
  words: z.string().nullable(),
  /** Words and price are kept from this person, whether or not there are any. */
  withheld: z.boolean(),
  /** Sealed statements, newest first. */
  statements: z.array(SealedVersion),
  /** The dealer's own open drafts; the inspector's stands with the order. */
  drafts: z.array(z.strictObject({ id: ObjectId, revision: Revision, kind: ReportKind })),
  /** Only what the person asking may see. */
  orders: z.array(OrderSeen),
  comparisons: z.array(ComparisonSeen),
});
export type VehicleDetail = z.infer<typeof VehicleDetail>;

export const vehicleContracts = {
  "vehicles.list": { query: VehicleQuery, status: 200, answer: pageOf(VehicleRow) },
  "vehicles.create": { body: VehicleRequest, status: 201, answer: CreatedDraft },
  "vehicles.get": { status: 200, answer: VehicleDetail },
  "vehicles.change": { body: VehicleChange, status: 200, answer: CreatedDraft },
} as const satisfies Record<string, Contract>;
