import { Report } from "@evenhand/shared/report";
import type { OpenFault } from "@evenhand/shared/http/publishing";
import { openFaults, type SealedStatement } from "@evenhand/case/open-faults";
import { z } from "zod";
import { findRow, readRows, type Source } from "../../platform/database/rows.ts";

/** Faults the dealer accepted or that were upheld, with what was stated then. `$1` the car. */
const accepted = `SELECT id, upheld_at AS since, snapshot FROM release
  WHERE vehicle_id = $1::uuid AND upheld_at IS NOT NULL ORDER BY upheld_at, id`;

const newestStatement = `SELECT document, sealed_at AS sealed FROM report_version
  WHERE vehicle_id = $1::uuid AND kind = 'statement' ORDER BY sealed_at DESC, number DESC LIMIT 1`;

const Snapshot = z.object({
  entry: z.object({ item: z.string(), position: z.string() }),
  a: z.object({ answer: z.unknown() }).nullable(),
});

const Accepted = z.object({ id: z.string(), since: z.date(), snapshot: Snapshot });
const Newest = z.object({ document: z.instanceof(Uint8Array), sealed: z.date() });

/** Faults that are established and the newest statement does not answer. */
export async function readOpenFaults(source: Source, vehicle: string): Promise<OpenFault[]> {
  const rows = await readRows(source, Accepted, { text: accepted, values: [vehicle] });
  if (rows.length === 0) return [];
  const faults = rows.map(({ id, since, snapshot }) => {
    const { entry, a } = snapshot;
    return { release: id, ...entry, since: since.getTime(), stated: a === null ? null : a.answer };
  });
  return openFaults(faults, await readNewest(source, vehicle)).map(({ release, item, position, since }) => ({
    release,
    item,
    position,
    since: new Date(since).toISOString(),
  }));
}

async function readNewest(source: Source, vehicle: string): Promise<SealedStatement | null> {
  const row = await findRow(source, Newest, { text: newestStatement, values: [vehicle] });
  if (row === null) return null;
  const { findings } = Report.parse(JSON.parse(Buffer.from(row.document).toString("utf8")));
  return { sealed: row.sealed.getTime(), findings };
}
