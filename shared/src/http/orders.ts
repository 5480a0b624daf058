import { z } from "zod";
import { Instant, ObjectId } from "../identifier.ts";
import { CreatedDraft, Named, pageOf, PageQuery, Revision, type Contract } from "./paging.ts";

export const OrderState = z.enum(["ordered", "accepted", "reported", "declined", "cancelled"]);
export type OrderState = z.infer<typeof OrderState>;

/** `statement` is the sealed version the findings will be set against; later versions never replace it. */
export const OrderRequest = z.strictObject({ inspector: ObjectId, statement: ObjectId });
export type OrderRequest = z.infer<typeof OrderRequest>;

/** The inspector declares independence of the dealer and the car, and every interest there is. */
export const OrderAcceptance = z.strictObject({
  independent: z.literal(true),
  interests: z.array(z.string().trim().min(1).max(200)).max(20).default([]),
});
export type OrderAcceptance = z.infer<typeof OrderAcceptance>;
export const OrderEnding = z.strictObject({ reason: z.string().trim().min(1).max(1000) });
export type OrderEnding = z.infer<typeof OrderEnding>;

export const OrderSeen = z.strictObject({
  id: ObjectId,
  revision: Revision,
  state: OrderState,
  vehicle: z.strictObject({
    id: ObjectId,
    make: z.string(),
    model: z.string(),
    modelYear: z.int(),
    identification: z.string(),
  }),
  dealer: Named,
  /** `null` to the inspector until the order is accepted. */
  buyer: Named.nullable(),
  inspector: Named,
  statement: z.strictObject({ id: ObjectId, version: z.int().positive() }),
  interests: z.array(z.string()),
  reason: z.string().nullable(),
  /** The inspection: to its inspector always, to the buyer once sealed. */
  report: z
    .strictObject({
      id: ObjectId,
      drafting: z.boolean(),
      revision: Revision,
      /** Sealed versions, newest first. */
      versions: z.array(z.strictObject({ id: ObjectId, version: z.int().positive(), sealedAt: Instant })),
    })
    .nullable(),
  orderedAt: Instant,
  acceptedAt: Instant.nullable(),
});
export type OrderSeen = z.infer<typeof OrderSeen>;

export const OrderQuery = PageQuery.extend({ state: OrderState.optional(), vehicle: ObjectId.optional() });
export type OrderQuery = z.infer<typeof OrderQuery>;

export const orderContracts = {
  "orders.create": { body: OrderRequest, status: 201, answer: CreatedDraft },
  "orders.list": { query: OrderQuery, status: 200, answer: pageOf(OrderSeen) },
  "orders.get": { status: 200, answer: OrderSeen },
  "orders.accept": { body: OrderAcceptance, status: 201, answer: CreatedDraft },
  "orders.decline": { body: OrderEnding, status: 201, answer: CreatedDraft },
  "orders.cancel": { body: OrderEnding, status: 201, answer: CreatedDraft },
} as const satisfies Record<string, Contract>;
