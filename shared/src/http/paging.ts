import { z } from "zod";
import { ObjectId } from "../identifier.ts";

/** Keyset paging: `after` is the `next` of the page before. */
export const PageQuery = z.strictObject({
  after: z.string().min(1).max(200).optional(),
  limit: z.coerce.number().int().min(1).max(100).default(25),
});
export type PageQuery = z.infer<typeof PageQuery>;

export const pageOf = <T extends z.ZodType>(item: T) =>
  z.strictObject({ items: z.array(item), next: z.string().nullable() });

/** Rises by one with every change; `ETag: "3"` on reading, `If-Match: "3"` on changing. */
export const Revision = z.int().positive();

export const Created = z.strictObject({ id: ObjectId });
export type Created = z.infer<typeof Created>;
export const CreatedDraft = z.strictObject({ id: ObjectId, revision: Revision });
export type CreatedDraft = z.infer<typeof CreatedDraft>;

/** An organization or a person as others see it. */
export const Named = z.strictObject({ id: ObjectId, name: z.string() });
export type Named = z.infer<typeof Named>;

/** Most bytes of a body where its contract says nothing else: 64 KiB. */
export const usualBodyBytes = 64 * 1024;

/** What is asked for and answered at one route; `answer: null` is an empty 204. */
export type Contract = {
  readonly query?: z.ZodType;
  readonly body?: z.ZodType;
  /** Most bytes of the body, where what the contract takes is larger than usual. */
  readonly bodyBytes?: number;
  /** Keeps the service busy for longer than others: bounded by itself, beside all else that an account may ask. */
  readonly costly?: true;
  readonly status: 200 | 201 | 204;
  readonly answer: z.ZodType | null;
};
