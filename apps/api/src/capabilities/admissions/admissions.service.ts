import { Injectable } from "@nestjs/common";
import type { AdmissionDecision, AdmissionQuery } from "@evenhand/shared/http/calendars";
import type { CreatedDraft } from "@evenhand/shared/http/paging";
import { checkRevision } from "../../platform/access/parameters.ts";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { readCursor, readPage } from "../../platform/database/page.ts";
import type { JsonText } from "../../platform/http/json-text.ts";
import { found } from "../../platform/problems/problem-error.ts";
import { admissionList } from "./admissions.queries.ts";

const stateAfter = { admit: "admitted", refuse: "refused", suspend: "suspended" } as const;

type Known = { kind: "firm" | "inspector"; revision: number };

/** Which firms and inspectors are let work. What is booked already stays. */
@Injectable()
export class AdmissionsService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
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

  async decide(
    actor: Actor,
    id: string,
    meant: number,
    { decision, reason }: AdmissionDecision,
  ): Promise<CreatedDraft> {
    return this.database.transaction(async (tx) => {
      const { kind, revision: now } = found(await lock(tx, id), "firm or inspector");
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
      return { id, revision };
    });
  }
}

async function lock(tx: Transaction, id: string): Promise<Known | undefined> {
  const [calendar] = await tx.$queryRaw<Known[]>`
    SELECT 'inspector' AS kind, admission_revision AS revision FROM inspector_calendar
    WHERE id = ${id}::uuid FOR UPDATE`;
  if (calendar !== undefined) return calendar;
  await tx.$queryRaw`SELECT id FROM organization WHERE id = ${id}::uuid AND kind = 'inspector' FOR UPDATE`;
  const [firm] = await tx.$queryRaw<Known[]>`
    SELECT 'firm' AS kind, coalesce(f.revision, 0) AS revision FROM organization o
    LEFT JOIN firm_admission f ON f.organization_id = o.id
    WHERE o.id = ${id}::uuid AND o.kind = 'inspector'`;
  return firm;
}
