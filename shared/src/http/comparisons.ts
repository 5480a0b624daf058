import { z } from "zod";
import { Comparison } from "../comparison.ts";
import { Instant, ObjectId, Sha256 } from "../identifier.ts";
import { Answer } from "../page-one.ts";
import { Created, pageOf, PageQuery, type Contract } from "./paging.ts";

/** `a` and `b` are sealed report versions of the one car. */
export const ComparisonRequest = z.strictObject({ a: ObjectId, b: ObjectId });
export type ComparisonRequest = z.infer<typeof ComparisonRequest>;

export const ComparisonSeen = z.strictObject({
  id: ObjectId,
  vehicle: ObjectId,
  a: ObjectId,
  b: ObjectId,
  /** Seals of the two documents compared. */
  seals: z.strictObject({ a: Sha256, b: Sha256 }),
  engine: z.string(),
  /** SHA-256 of the document's bytes. */
  hash: Sha256,
  createdAt: Instant,
});
export type ComparisonSeen = z.infer<typeof ComparisonSeen>;

export const ComparisonQuery = PageQuery.extend({ vehicle: ObjectId.optional() });
export type ComparisonQuery = z.infer<typeof ComparisonQuery>;

export const comparisonContracts = {
  "comparisons.create": { body: ComparisonRequest, costly: true, status: 201, answer: Created },
  "comparisons.list": { query: ComparisonQuery, status: 200, answer: pageOf(ComparisonSeen) },
  "comparisons.get": { status: 200, answer: ComparisonSeen },
  "comparisons.document": { status: 200, answer: Comparison },
  "comparisons.answer": { status: 200, answer: Answer },
} as const satisfies Record<string, Contract>;
