import { Injectable } from "@nestjs/common";
import type { Sealed } from "@evenhand/shared/http/reports";
import { type SealedText, sealDocument } from "@evenhand/record/seal";
import { checkRevision } from "../../platform/access/parameters.ts";
import type { Actor } from "../../platform/auth/actor.ts";
import { sha256Hex } from "../../platform/auth/secret.ts";
import { Clock } from "../../platform/clock/index.ts";
import type { Transaction } from "../../platform/database/database.ts";
import { Ids } from "../../platform/database/ids.ts";
import { RecordChain } from "../../platform/record/record-chain.ts";
import { ComparisonsService } from "../comparisons/index.ts";
import { EvidenceSealing } from "../evidence/index.ts";
import { FirmHandbooksService } from "../handbook/index.ts";
import { ReportedVisits } from "../booking/index.ts";
import { NoticesService } from "../notices/index.ts";
import { type LockedOrder, OrdersService } from "../orders/index.ts";
import { NewLooks } from "../releases/index.ts";
import { VehiclesService } from "../vehicles/index.ts";
import { readComplete } from "./complete-report.ts";
import { checkDrafting, type LockedReport } from "./report-lock.ts";
import { ReportsService } from "./reports.service.ts";

/** Makes a version of a report that nobody changes again. */
@Injectable()
export class SealingService {
  constructor(
    private readonly clock: Clock,
    private readonly ids: Ids,
    private readonly reports: ReportsService,
    private readonly orders: OrdersService,
    private readonly vehicles: VehiclesService,
    private readonly comparisons: ComparisonsService,
    private readonly notices: NoticesService,
    private readonly handbooks: FirmHandbooksService,
    private readonly visits: ReportedVisits,
    private readonly record: RecordChain,
    private readonly newLooks: NewLooks,
    private readonly evidence: EvidenceSealing,
  ) {}

  /**
   * A statement lists its car; an inspection is set against the frozen statement, and its visit moves on. All of it happens, or
   * nothing; the visit is held before the report, in the order in which everybody locks.
   */
  async seal(tx: Transaction, actor: Actor, id: string, meant: number): Promise<Sealed> {
    const visit = await this.holdVisit(tx, actor, id);
    const report = await this.reports.lockForWork(tx, actor, id);
    checkRevision(report.revision, meant);
    checkDrafting(report);
    const order =
      report.orderId === null ? null : await this.orders.lockForInspector(tx, actor, report.orderId);
    const handbook = await this.handbooks.forReport(tx, report.organizationId, report.vehicle);
    const evidence = await this.evidence.toSeal(tx, report.id);
    const complete = await readComplete(tx, report, handbook);
    const sealed = sealDocument({ ...complete, ...(evidence.length === 0 ? {} : { evidence }) }, sha256Hex);
    const version = await this.store(tx, actor, report, order, sealed);
    if (report.kind === "statement") await this.vehicles.listWithStatement(tx, report.vehicleId);
    const comparison = order === null ? null : await this.report(tx, actor, order, version.id);
    if (visit !== null) await this.visits.noteSealed(tx, visit, actor.account);
    const receipt = await this.record.receiptOf(tx, {
      organization: report.organizationId,
      subject: version.id,
      seal: sealed.seal,
    });
    return { ...version, seal: sealed.seal, comparison, receipt };
  }

  private async store(
    tx: Transaction,
    actor: Actor,
    report: LockedReport,
    order: LockedOrder | null,
    { text, seal }: SealedText,
  ): Promise<{ id: string; version: number }> {
    const [id, now] = [this.ids.next(), this.clock.now()];
    const number = 1 + (await tx.reportVersion.count({ where: { reportId: report.id } }));
    await tx.reportVersion.create({
      data: {
        id,
        reportId: report.id,
        vehicleId: report.vehicleId,
        organizationId: report.organizationId,
        buyerId: order?.buyerId ?? null,
        orderId: report.orderId,
        kind: report.kind,
        number,
        seal,
        document: new Uint8Array(Buffer.from(text, "utf8")),
        sealedBy: actor.account,
        sealedAt: now,
      },
    });
    await this.evidence.noteSealed(tx, report.id, number);
    await tx.report.update({
      where: { id: report.id },
      data: { drafting: false, revision: report.revision + 1, updatedAt: now },
    });
    this.record.append(tx, {
      kind: "report.sealed",
      organizations: [report.organizationId, ...(order === null ? [] : [order.buyerId])],
      subject: id,
      actor: actor.account,
      content: { report: report.id, vehicle: report.vehicleId, of: report.kind, version: number, seal },
    });
    return { id, version: number };
  }

  /** The visit in which one's own inspection was made, if it was made in one. */
  private async holdVisit(tx: Transaction, actor: Actor, id: string): Promise<string | null> {
    const own = { id, organizationId: { in: actor.organizations() } };
    const order = (await tx.report.findFirst({ where: own, select: { orderId: true } }))?.orderId ?? null;
    return order === null ? null : this.visits.hold(tx, order);
  }

  private async report(
    tx: Transaction,
    actor: Actor,
    order: LockedOrder,
    inspection: string,
  ): Promise<string> {
    const comparison = await this.comparisons.make(tx, {
      vehicle: order.vehicleId,
      a: order.statementId,
      b: inspection,
    });
    await this.orders.markReported(tx, order);
    await this.newLooks.noteSealed(tx, comparison, actor.account);
    await this.notices.tell(tx, {
      organization: order.buyerId,
      kind: "inspection-sealed",
      subject: comparison,
      vehicle: order.vehicleId,
    });
    return comparison;
  }
}
