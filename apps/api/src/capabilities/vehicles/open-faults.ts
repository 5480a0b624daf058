import { Report } from "@evenhand/shared/report";
import type { OpenFault } from "@evenhand/shared/http/publishing";
import { canonicalJson } from "@evenhand/record/canonical-json";
import { z } from "zod";
import type { Reader } from "../../platform/database/reader.ts";

/** Faults the dealer accepted, with what was stated then. `$1` the car. */
const accepted = `SELECT id, answered_at AS since, snapshot FROM release
  WHERE vehicle_id = $1::uuid AND state = 'accepted' ORDER BY answered_at, id`;

const newestStatement = `SELECT document, sealed_at AS sealed FROM report_version
  WHERE vehicle_id = $1::uuid AND kind = 'statement' ORDER BY sealed_at DESC, number DESC LIMIT 1`;

const Snapshot = z.object({
  entry: z.object({ item: z.string(), position: z.string() }),
  a: z.object({ answer: z.unknown() }).nullable(),
});

type Place = { item: string; position: string };
type Statement = { answers: Map<string, string>; sealed: Date };
const keyOf = ({ item, position }: Place): string => `${item} ${position}`;

/**
 * Faults that the newest statement does not answer: it says the same of the place as when the fault was accepted, or nothing.
 * Leaving a claim out is silence, and no answer.
 */
export async function readOpenFaults(read: Reader, vehicle: string): Promise<OpenFault[]> {
  const faults = await read<{ id: string; since: Date; snapshot: unknown }>(accepted, [vehicle]);
  if (faults.length === 0) return [];
  const statement = await readNewest(read, vehicle);
  return faults.flatMap(({ id, since, snapshot }) => {
    const { entry, a } = Snapshot.parse(snapshot);
    const before = a === null ? null : canonicalJson(a.answer);
    if (statement !== null && isAnswered(statement, keyOf(entry), before, since)) return [];
    return [{ release: id, item: entry.item, position: entry.position, since: since.toISOString() }];
  });
}

function isAnswered(
  { answers, sealed }: Statement,
  key: string,
  before: string | null,
  since: Date,
): boolean {
  const now = answers.get(key);
  return sealed > since && now !== undefined && now !== before;
}

async function readNewest(read: Reader, vehicle: string): Promise<Statement | null> {
  const [row] = await read<{ document: Uint8Array; sealed: Date }>(newestStatement, [vehicle]);
  if (row === undefined) return null;
  const { findings } = Report.parse(JSON.parse(Buffer.from(row.document).toString("utf8")));
  return {
    sealed: row.sealed,
    answers: new Map(findings.map((finding) => [keyOf(finding), canonicalJson(finding.answer)])),
  };
}
