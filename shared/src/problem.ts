import { z } from "zod";

/** One fault in what was sent: where it stands, why it is refused, and what would work. */
export const FieldProblem = z.strictObject({
  /** JSON Pointer into the body, or `query/limit`, or `header/idempotency-key`. */
  at: z.string(),
  reason: z.string(),
  /** Of a finding: */
  item: z.string().optional(),
  position: z.string().optional(),
});
export type FieldProblem = z.infer<typeof FieldProblem>;

/** RFC 9457 problem document. `type` is stable; `detail` is a sentence for a person. */
export const Problem = z.looseObject({
  type: z.string(),
  title: z.string(),
  status: z.int(),
  detail: z.string(),
  instance: z.string().optional(),
  problems: z.array(FieldProblem).optional(),
});
export type Problem = z.infer<typeof Problem>;
