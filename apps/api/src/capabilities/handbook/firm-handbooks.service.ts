import { Injectable } from "@nestjs/common";
import { firmHandbookProblems, PROBLEM_WORDS, reportHandbook } from "@evenhand/handbook/firm-handbook";
import { FirmHandbook, type ReportHandbook } from "@evenhand/shared/cross-check";
import type { FirmHandbookSeen } from "@evenhand/shared/http/handbook";
import type { Vehicle } from "@evenhand/shared/report";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { nextRevision } from "../../platform/database/next-revision.ts";
import { notFound, ProblemError } from "../../platform/problems/problem-error.ts";

const empty: FirmHandbook = { limits: {}, makers: [] };

/** A firm's own figures for the handbook's rules. What of them speaks of a car is sealed with each report on it. */
@Injectable()
export class FirmHandbooksService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  async get(actor: Actor, organization: string): Promise<FirmHandbookSeen> {
    if (!actor.worksFor(organization)) throw notFound("organization");
    return this.database.transaction((tx) => this.read(tx, organization));
  }

  /** Set by the firm's administrators; reports sealed before keep what they were sealed with. */
  async put(
    actor: Actor,
    organizationId: string,
    meant: number,
    handbook: FirmHandbook,
  ): Promise<FirmHandbookSeen> {
    if (!actor.worksFor(organizationId) || !actor.isAdmin(organizationId)) throw notFound("organization");
    refuseProblems(handbook);
    return this.database.transaction(async (tx) => {
      const revision = await nextRevision(tx, organizationId, meant, () => this.read(tx, organizationId));
      const row = { revision, document: handbook, updatedBy: actor.account, updatedAt: this.clock.now() };
      await tx.firmHandbook.upsert({
        where: { organizationId },
        create: { organizationId, ...row },
        update: row,
      });
      return { revision, handbook };
    });
  }

  /** What of a firm's handbook goes into its report on this car. */
  async forReport(
    tx: Transaction,
    organizationId: string,
    vehicle: Vehicle,
  ): Promise<ReportHandbook | undefined> {
    return reportHandbook((await this.read(tx, organizationId)).handbook, vehicle);
  }

  private async read(tx: Transaction, organizationId: string): Promise<FirmHandbookSeen> {
    const row = await tx.firmHandbook.findUnique({ where: { organizationId } });
    return row === null
      ? { revision: 0, handbook: empty }
      : { revision: row.revision, handbook: FirmHandbook.parse(row.document) };
  }
}

function refuseProblems(handbook: FirmHandbook): void {
  const problems = firmHandbookProblems(handbook);
  if (problems.length === 0) return;
  throw new ProblemError("invalid-fields", "Some figures cannot be taken; each is named.", {
    problems: problems.map(({ at, reason }) => ({ at, reason: PROBLEM_WORDS[reason] })),
  });
}
