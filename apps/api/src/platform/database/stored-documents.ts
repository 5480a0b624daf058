import type { Comparison } from "@evenhand/shared/comparison";
import type { Answer } from "@evenhand/shared/page-one";
import type { Report } from "@evenhand/shared/report";

type Stored = Report | Comparison | Answer;
type StoredAs<F extends Stored["format"]> = Extract<Stored, { format: F }>;

/** The documents were held against their contracts when they were stored and cannot have changed since. */
const isOf = <F extends Stored["format"]>(value: unknown, format: F): value is StoredAs<F> =>
  typeof value === "object" && value !== null && "format" in value && value.format === format;

function read<F extends Stored["format"]>(bytes: Uint8Array, format: F): StoredAs<F> {
  const value: unknown = JSON.parse(Buffer.from(bytes).toString("utf8"));
  if (!isOf(value, format)) throw new Error("A stored document is not what it was stored as.");
  return value;
}

/** What a report's stored bytes say. */
export const storedReport = (bytes: Uint8Array): Report => read(bytes, "evenhand-report");
/** What a comparison's stored bytes say. */
export const storedComparison = (bytes: Uint8Array): Comparison => read(bytes, "evenhand-comparison");
/** What page one's stored bytes say. */
export const storedAnswer = (bytes: Uint8Array): Answer => read(bytes, "evenhand-answer");
