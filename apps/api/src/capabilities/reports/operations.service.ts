import { Injectable } from "@nestjs/common";
import {
  type DraftEdits,
  editDraft,
  type KnownOperation,
  type StoredFinding,
} from "@evenhand/record/draft-edits";
import { placeKey } from "@evenhand/record/place";
import type { Finding } from "@evenhand/shared/finding";
import type { OperationsAnswer, OperationsRequest } from "@evenhand/shared/http/reports";
import { z } from "zod";
import type { Actor } from "../../platform/auth/actor.ts";
import { sha256Hex } from "../../platform/auth/secret.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { readRows, run, sql } from "../../platform/database/rows.ts";
import { readShown } from "../../platform/access/exposure.ts";
import { checkDrafting, type LockedReport } from "./report-lock.ts";
import { ReportsService } from "./reports.service.ts";

const isFinding = (body: unknown): body is Finding =>
  typeof body === "object" && body !== null && "item" in body && "answer" in body;
/** A finding as it is stored: one that nobody can read any more is answered anew, and named at the seal. */
const FindingRow = z.object({
  item: z.string(),
  position: z.string(),
  revision: z.number(),
  body: z.custom<Finding>(isFinding, "a finding").nullable(),
  firstCommittedAt: z.date(),
});

/** Changes of single findings: each done at most once, ever, and each refused by itself. */
@Injectable()
export class OperationsService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly reports: ReportsService,
  ) {}

  async operate(actor: Actor, id: string, request: OperationsRequest): Promise<OperationsAnswer> {
    return this.database.transaction((tx) => this.apply(tx, actor, id, request));
  }

  /** The same, as part of a larger change. */
  async apply(
    tx: Transaction,
    actor: Actor,
    id: string,
    { operations }: OperationsRequest,
  ): Promise<OperationsAnswer> {
    const report = await this.reports.lockForWork(tx, actor, id);
    checkDrafting(report);
    const draft = {
      report,
      now: this.clock.now(),
      hashOf: sha256Hex,
      again: new Set(report.secondLook?.places.map(placeKey)),
      findings: await loadFindings(tx, report, operations.map(placeOf)),
      known: await loadKnown(
        tx,
        operations.map((each) => each.id),
      ),
      shown:
        report.kind === "inspection" ? await readShown(tx, report.organizationId, report.vehicleId) : null,
    };
    const edits = editDraft(draft, operations);
    const results = [...edits.results];
    if (edits.done.length === 0) return { revision: report.revision, results };
    await storeChanges(tx, actor, report, edits, draft.now);
    return { revision: report.revision + 1, results };
  }
}

const placeOf = (operation: OperationsRequest["operations"][number]): { item: string; position: string } => {
  const { item, position = "" } = operation.op === "set" ? operation.finding : operation;
  return { item: String(item), position: String(position) };
};

async function loadFindings(
  tx: Transaction,
  report: LockedReport,
  places: { item: string; position: string }[],
): Promise<Map<string, StoredFinding>> {
  const rows = await readRows(
    tx,
    FindingRow,
    sql`
    SELECT f.item, f.position, f.revision, f.body, f.first_committed_at AS "firstCommittedAt"
    FROM report_finding f
    JOIN unnest(${places.map((each) => each.item)}::text[], ${places.map((each) => each.position)}::text[])
      AS asked (item, position) ON asked.item = f.item AND asked.position = f.position
    WHERE f.report_id = ${report.id}::uuid`,
  );
  return new Map(rows.map((row) => [placeKey(row), row]));
}

async function loadKnown(tx: Transaction, ids: string[]): Promise<Map<string, KnownOperation>> {
  const rows = await tx.reportOperation.findMany({ where: { id: { in: ids } } });
  return new Map(
    rows.map((row) => [
      row.id,
      { report: row.reportId, hash: Buffer.from(row.requestHash).toString("hex"), revision: row.revision },
    ]),
  );
}

async function storeChanges(
  tx: Transaction,
  actor: Actor,
  report: LockedReport,
  { changed, done }: DraftEdits,
  now: Date,
): Promise<void> {
  const findings = changed.map(({ item, position, stored }) => ({
    item,
    position,
    revision: stored.revision,
    body: stored.body,
    first: stored.firstCommittedAt,
  }));
  await run(
    tx,
    sql`
    INSERT INTO report_finding (report_id, item, position, revision, body, first_committed_at, updated_by, updated_at)
    SELECT ${report.id}::uuid, f.item, f.position, f.revision, nullif(f.body, 'null'::jsonb), f.first,
      ${actor.account}::uuid, ${now}
    FROM jsonb_to_recordset(${JSON.stringify(findings)}::jsonb)
      AS f (item text, position text, revision int, body jsonb, first timestamptz)
    ON CONFLICT (report_id, item, position) DO UPDATE SET revision = excluded.revision, body = excluded.body,
      updated_by = excluded.updated_by, updated_at = excluded.updated_at`,
  );
  await tx.reportOperation.createMany({
    data: done.map((change) => ({
      id: change.id,
      reportId: report.id,
      accountId: actor.account,
      requestHash: new Uint8Array(Buffer.from(change.hash, "hex")),
      revision: change.revision,
      createdAt: now,
    })),
  });
  await tx.report.update({
    where: { id: report.id },
    data: { revision: report.revision + 1, updatedAt: now },
  });
}
