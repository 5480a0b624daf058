import { createHash, randomUUID } from "node:crypto";
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import type { Ground } from "../served/ground.ts";

type At = Pick<Ground, "client" | "files" | "report">;

/** As the last byte of an upload leaves it: all of it is in the storage, and a worker is told. */
const putInLine = `WITH arrived AS (
  INSERT INTO evidence (id, report_id, organization_id, account_id, item, position, name, sha256, bytes, received, parts, state,
    created_at, expires_at)
  SELECT $2::uuid, r.id, r.organization_id, $2::uuid, '', '', 'photograph.jpg', $3, $4::int, $4::int, jsonb_build_array($5::text),
    'pending', now(), now() + interval '1 day'
  FROM report_version rv JOIN report r ON r.id = rv.report_id WHERE rv.id = $1)
  INSERT INTO pgboss.job (name, data) VALUES ('evidence', json_build_object('id', $2::text))`;
const undecided = `SELECT count(*)::int AS count FROM evidence e LEFT JOIN evidence_file f ON f.id = e.file_id
  WHERE coalesce(f.state, e.state) IN ('pending', 'checked')`;
const refused = `SELECT coalesce(f.refused, e.refused)::text AS why FROM evidence e LEFT JOIN evidence_file f ON f.id = e.file_id
  WHERE coalesce(f.state, e.state) = 'refused' LIMIT 1`;

/** Photographs that have come whole and that nobody has looked at. */
export async function putAllInLine(
  { client, files, report }: At,
  photographs: readonly Uint8Array[],
): Promise<void> {
  for (const photograph of photographs) {
    const id = randomUUID();
    const key = `uploads/${id}/0-${randomUUID()}`;
    mkdirSync(join(files, "uploads", id), { recursive: true });
    writeFileSync(join(files, key), photograph);
    const hash = createHash("sha256").update(photograph).digest("hex");
    await client.query(putInLine, [report, id, hash, photograph.length, key]);
  }
}

/** How many are still to be looked at. @throws where one was refused: none of them is to be */
export async function leftInLine({ client }: Pick<At, "client">): Promise<number> {
  const { rows: why } = await client.query<{ why: string }>(refused);
  if (why[0] !== undefined) throw new Error(`A photograph was refused: ${why[0].why}`);
  const { rows } = await client.query<{ count: number }>(undecided);
  return rows[0]?.count ?? 0;
}

const span = `SELECT extract(epoch FROM (SELECT max(decided_at) FROM evidence_file) - min(started_on))::float8 AS seconds
  FROM pgboss.job WHERE name = 'evidence' AND created_on >= $1`;

/** Seconds from beginning with the first of what was put in line since then to being done with the last. */
export async function secondsOfWork({ client }: Pick<At, "client">, since: Date): Promise<number> {
  const { rows } = await client.query<{ seconds: number | null }>(span, [since]);
  return rows[0]?.seconds ?? Number.NaN;
}

/** No picture is known any more, so that the next ones are held against nothing. */
export async function forgetPrints({ client }: Pick<At, "client">): Promise<void> {
  await client.query("TRUNCATE picture_print, picture_likeness");
}

export async function untilDone(at: Pick<At, "client">): Promise<void> {
  const deadline = performance.now() + 300_000;
  while ((await leftInLine(at)) > 0) {
    if (performance.now() > deadline)
      throw new Error("The worker did not get through its photographs in five minutes.");
    await pause(200);
  }
}
