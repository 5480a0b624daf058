import type { QueryResultRow } from "pg";
import type { Database, Transaction } from "./database.ts";

/** Reads rows, inside a transaction or outside any: for statements that are asked for both ways. */
export type Reader = <R extends QueryResultRow>(text: string, values: readonly unknown[]) => Promise<R[]>;

export const readerOn =
  (database: Database): Reader =>
  (text, values) =>
    database.rows({ text, values: [...values] });

export const readerIn =
  (tx: Transaction): Reader =>
  (text, values) =>
    tx.$queryRawUnsafe(text, ...values);
