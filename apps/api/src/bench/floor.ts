import { once } from "node:events";
import { createServer, type ServerResponse } from "node:http";
import { Pool, type QueryConfig } from "pg";
import { caseDetails, caseHomes } from "../capabilities/cases/cases.queries.ts";
import { operatorDesk } from "../capabilities/cases/desk.queries.ts";
import { comparisonDetail, comparisonList } from "../capabilities/comparisons/comparisons.queries.ts";
import { orderList } from "../capabilities/orders/orders.queries.ts";
import { questionList } from "../capabilities/questions/questions.queries.ts";
import { versionMeta } from "../capabilities/reports/reports.queries.ts";
import { releaseList } from "../capabilities/releases/releases.queries.ts";
import { decisionList, summaryList } from "../capabilities/summaries/summaries.queries.ts";
import { vehicleDetail, vehicleLists } from "../capabilities/vehicles/vehicles.queries.ts";
import { maySeeComparison } from "../platform/access/row-access.ts";

/** Nothing but the search itself: no question of who may see what. */
const wordsAlone = (condition: string) => `SELECT coalesce(json_agg(found), '[]')::text AS body FROM (
  SELECT v.id, v.make, v.model, v.model_year, v.identification FROM vehicle v
  WHERE ${condition} ORDER BY v.id DESC LIMIT $1) found`;

/** The body as text, as it goes out. */
const asText = (statement: string) => `SELECT read.body::text AS body FROM (${statement}) read`;

/**
 * The floor that reads of the service are measured against: nothing but `http` and `pg`, one statement a request, for one person
 * whose organizations are given. No session, no checks, no log.
 */
const statements = {
  "comparison document": `SELECT convert_from(c.document, 'UTF8') AS body FROM comparison c
    JOIN report_version a ON a.id = c.a_id JOIN report_version b ON b.id = c.b_id JOIN vehicle v ON v.id = c.vehicle_id
    WHERE c.id = $2 AND ${maySeeComparison("a", "b", "v")}`,
  "home of a buyer": asText(caseHomes.buyer),
  "home of a dealer": asText(caseHomes.dealer),
  "home of an inspector": asText(caseHomes.inspector),
  "home of an operator": asText(operatorDesk),
  case: asText(caseDetails.buyer),
  comparison: comparisonDetail,
  comparisons: comparisonList,
  car: vehicleDetail.reading,
  cars: vehicleLists.seen,
  orders: orderList,
  questions: questionList.reading,
  report: versionMeta,
  releases: releaseList.reading,
  summaries: summaryList,
  decisions: decisionList,
  "one word alone": wordsAlone("v.search LIKE $2"),
  "two words alone": wordsAlone("v.search LIKE $2 AND v.search LIKE $3"),
} as const;

export type FloorRead = { path: string; statement: keyof typeof statements; values: unknown[] };

/** Prepared, but for the words: how to look for them depends on how rare they are. */
const toQuery = ({ statement, values }: FloorRead): QueryConfig => ({
  ...(statement.endsWith("alone") ? {} : { name: statement.replaceAll(" ", "-") }),
  text: statements[statement],
  values,
});

function send(response: ServerResponse, status: number, body: string): void {
  const bytes = Buffer.from(body, "utf8");
  response.writeHead(status, { "content-type": "application/json", "content-length": bytes.length });
  response.end(bytes);
}

async function main(): Promise<void> {
  const pool = new Pool({ connectionString: process.env["DATABASE_URL"], max: 10 });
  const reads = new Map<string, QueryConfig>();
  const server = createServer((request, response) => {
    const query = reads.get(request.url ?? "");
    if (query === undefined) return send(response, 404, "{}");
    pool.query<{ body: string }>(query).then(
      ({ rows: [row] }) => send(response, row === undefined ? 404 : 200, row?.body ?? "{}"),
      (error: unknown) => send(response, 500, JSON.stringify(String(error))),
    );
  });
  process.on("message", (message: FloorRead[] | "processor time") => {
    if (message === "processor time") return;
    for (const read of message) reads.set(read.path, toQuery(read));
    process.send?.({ known: reads.size });
  });
  process.once("disconnect", () => process.exit(0));
  server.listen(0, "127.0.0.1");
  await once(server, "listening");
  const address = server.address();
  if (address === null || typeof address === "string") throw new Error("no port is free");
  console.log(`The floor answers at http://127.0.0.1:${address.port}`);
}

await main();
