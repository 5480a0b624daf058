import type { QueryConfig } from "pg";
import { z } from "zod";
import type { PageQuery } from "@evenhand/shared/http/paging";
import { JsonText } from "../http/json-text.ts";
import { ProblemError } from "../problems/problem-error.ts";
import type { Database } from "./database.ts";
import { BodyRow, findRow } from "./rows.ts";

/** What a statement that shows something holds on noting it: a part `noted AS (…)` of its WITH, and a column of its one row. */
export type NotingPart = { readonly noted: string; readonly column: string };

const beyondAll = "ffffffff-ffff-ffff-ffff-ffffffffffff";

/** Where a page begins: everything older than this id. */
export function readCursor({ after }: Pick<PageQuery, "after">): string {
  if (after === undefined) return beyondAll;
  if (z.uuid().safeParse(after).success) return after;
  throw new ProblemError("invalid-fields", "The page's beginning is not one this list gave out.", {
    problems: [{ at: "query/after", reason: "the `next` of the page before" }],
  });
}

/**
 * One statement that answers a whole page as JSON text, in a column `body`.
 *
 * @param rows gives at least `id`, newest first, at most one row more than the page holds
 * @param item JSON of one row of `page`
 * @param limit the parameter that holds the page's size, such as `$3`
 * @param noting what notes the page as shown, over `shown_page`, the rows that are on it
 */
export const pageStatement = (rows: string, item: string, limit: string, noting?: NotingPart): string => `
  WITH page AS MATERIALIZED (${rows}),
  placed AS (SELECT page.*, row_number() OVER (ORDER BY page.id DESC) AS row_in_page FROM page)${
    noting === undefined
      ? ""
      : `,
  shown_page AS (SELECT * FROM placed WHERE placed.row_in_page <= ${limit}),
  noted AS (${noting.noted})`
  }
  SELECT json_build_object(
    'items', coalesce(json_agg(${item} ORDER BY page.row_in_page) FILTER (WHERE page.row_in_page <= ${limit}), '[]'),
    'next', CASE WHEN count(*) > ${limit} THEN max(page.id::text) FILTER (WHERE page.row_in_page = ${limit}) END
  )::text AS body${noting === undefined ? "" : `, ${noting.column}`}
  FROM placed page`;

/** The answer of a statement whose one row has a `body`. With a name it is prepared once a connection, which halves what it costs. */
export async function readPage(database: Database, query: QueryConfig): Promise<JsonText> {
  const row = await findRow(database, BodyRow, query);
  return new JsonText(row?.body ?? "");
}
