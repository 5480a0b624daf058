import { Injectable } from "@nestjs/common";
import type { CreatedDraft } from "@evenhand/shared/http/paging";
import type { SecondLook } from "@evenhand/shared/http/reports";
import { checkRevision } from "../../platform/access/parameters.ts";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import type { Transaction } from "../../platform/database/database.ts";
import { found, ProblemError } from "../../platform/problems/problem-error.ts";
import { ComparisonsService } from "../comparisons/index.ts";
import { FirmHandbooksService } from "../handbook/index.ts";
import { OrdersService } from "../orders/index.ts";
import { readComplete } from "./complete-report.ts";
import { checkDrafting, type LockedReport } from "./report-lock.ts";
import { ReportsService } from "./reports.service.ts";

/** Asks an inspector to look again, once, before the first version of the inspection is sealed. */
@Injectable()
export class SecondLooksService {
  constructor(
    private readonly clock: Clock,
    private readonly reports: ReportsService,
    private readonly orders: OrdersService,
    private readonly comparisons: ComparisonsService,
    private readonly handbooks: FirmHandbooksService,
  ) {}

  /**
   * Names places and nothing else, once: asked again, the same are named, or whoever changes an answer and asks again would
   * learn from what is gone what was stated.
   */
  async ask(
    tx: Transaction,
    actor: Actor,
    id: string,
    meant: number,
  ): Promise<CreatedDraft & { secondLook: SecondLook }> {
    const report = await this.reports.lockForWork(tx, actor, id);
    checkRevision(report.revision, meant);
    checkDrafting(report);
    const { secondLook } = report;
    if (secondLook !== null) return { id, revision: report.revision, secondLook };
    await refuseSealed(tx, id);
    const asked = { askedAt: this.clock.now().toISOString(), places: await this.places(tx, actor, report) };
    const revision = report.revision + 1;
    const data = { secondLook: asked, revision, updatedAt: this.clock.now() };
    await tx.report.update({ where: { id }, data });
    return { id, revision, secondLook: asked };
  }

  private async places(tx: Transaction, actor: Actor, report: LockedReport): Promise<SecondLook["places"]> {
    const order = await this.orders.lockForInspector(
      tx,
      actor,
      found(report.orderId ?? undefined, "inspection"),
    );
    const handbook = await this.handbooks.forReport(tx, report.organizationId, report.vehicle);
    const inspection = await readComplete(tx, report, handbook);
    return this.comparisons.lookAgain(tx, order.statementId, inspection, report.id);
  }
}

/** @throws ProblemError `report-sealed`: whoever sealed may read the statement, and would look at it, not at the car */
async function refuseSealed(tx: Transaction, id: string): Promise<void> {
  if ((await tx.reportVersion.count({ where: { reportId: id } })) === 0) return;
  throw new ProblemError(
    "report-sealed",
    "A version of this inspection is sealed, and the statement is open to you since. A second look comes before the first seal.",
  );
}
