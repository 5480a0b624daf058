import { Injectable } from "@nestjs/common";
import type { AdmissionDecision, AdmissionQuery } from "@evenhand/shared/http/admissions";
import type { CreatedDraft } from "@evenhand/shared/http/paging";
import { z } from "zod";
import { checkRevision } from "../../platform/access/parameters.ts";
import type { Actor } from "../../platform/auth/actor.ts";
import { sha256Hex } from "../../platform/auth/secret.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { RecordChain } from "../../platform/record/record-chain.ts";
import { readCursor, readPage } from "../../platform/database/page.ts";
import { findRow, run, sql } from "../../platform/database/rows.ts";
import type { JsonText } from "../../platform/http/json-text.ts";
import { found, ProblemError } from "../../platform/problems/problem-error.ts";
import { admissionList } from "./admissions.queries.ts";

const stateAfter = { admit: "admitted", refuse: "refused", suspend: "suspended" } as const;

const Known = z.object({
  kind: z.enum(["firm", "inspector"]),
  revision: z.number(),
  organization: z.string(),
});
type Known = z.infer<typeof Known>;

/**
 * Which firms and inspectors are let work. One who is suspended can neither be ordered, nor accept, nor begin. What is booked already
 * stays until somebody ends it, and what was begun may be finished.
 */
@Injectable()
export class AdmissionsService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly record: RecordChain,
  ) {}

  async list(actor: Actor, query: AdmissionQuery): Promise<JsonText> {
    return readPage(this.database, {
      name: "admission-list",
      text: admissionList,
      values: [
        actor.organizations("inspector"),
        actor.isOperator,
        readCursor(query),
        query.limit,
        query.state ?? null,
      ],
    });
  }

  /**
   * The firm is held until the transaction ends, so that it is not suspended in between.
   *
   * @param inspector the inspector's calendar, where the work is one inspector's
   * @throws ProblemError `not-admitted`
   */
  async requireAdmitted(tx: Transaction, firm: string, inspector?: string): Promise<void> {
    await run(tx, sql`SELECT id FROM organization WHERE id = ${firm}::uuid FOR KEY SHARE`);
    const state = (await tx.firmAdmission.findUnique({ where: { organizationId: firm } }))?.state;
    if (state !== undefined && state !== "admitted")
      throw new ProblemError(
        "not-admitted",
        `The operator has ${state} this inspection firm; it takes and begins no work until that is settled.`,
        { members: { firm } },
      );
    if (inspector === undefined) return;
    // Read and not locked: whoever takes an hour locks the inspector before the visit, and this stands the other way round.
    const calendar = await tx.inspectorCalendar.findUnique({
      where: { id: inspector },
      select: { admission: true },
    });
    if (calendar?.admission !== "admitted")
      throw new ProblemError(
        "not-admitted",
        "The operator has not admitted this inspector, who takes and begins no visit until that is settled.",
        { members: { inspector } },
      );
  }

  async decide(
    tx: Transaction,
    actor: Actor,
    id: string,
    meant: number,
    { decision, reason }: AdmissionDecision,
  ): Promise<CreatedDraft> {
    const { kind, revision: now, organization } = found(await lock(tx, id), "firm or inspector");
    checkRevision(now, meant);
    const revision = now + 1;
    const by = { decidedBy: actor.account, decidedAt: this.clock.now() };
    const state = stateAfter[decision];
    if (kind === "inspector")
      await tx.inspectorCalendar.update({
        where: { id },
        data: { admission: state, admissionReason: reason, admissionRevision: revision, ...by },
      });
    else {
      const data = { state, reason, revision, ...by };
      const where = { organizationId: id };
      await tx.firmAdmission.upsert({ where, create: { organizationId: id, ...data }, update: data });
    }
    this.record.append(tx, {
      kind: "admission.decided",
      organizations: [organization],
      subject: id,
      actor: actor.account,
      content: { of: kind, decision, state, revision, words: sha256Hex(reason) },
    });
    return { id, revision };
  }
}

async function lock(tx: Transaction, id: string): Promise<Known | null> {
  const calendar = await findRow(
    tx,
    Known,
    sql`
    SELECT 'inspector' AS kind, admission_revision AS revision, organization_id AS organization FROM inspector_calendar
    WHERE id = ${id}::uuid FOR UPDATE`,
  );
  if (calendar !== null) return calendar;
  await run(tx, sql`SELECT id FROM organization WHERE id = ${id}::uuid AND kind = 'inspector' FOR UPDATE`);
  const firm = await findRow(
    tx,
    Known,
    sql`
    SELECT 'firm' AS kind, coalesce(f.revision, 0) AS revision, o.id AS organization FROM organization o
    LEFT JOIN firm_admission f ON f.organization_id = o.id
    WHERE o.id = ${id}::uuid AND o.kind = 'inspector'`,
  );
  return firm;
}
