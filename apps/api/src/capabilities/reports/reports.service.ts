import { Injectable } from "@nestjs/common";
import type { CreatedDraft } from "@evenhand/shared/http/paging";
import type { InspectionRequest, ReportChange, StatementRequest } from "@evenhand/shared/http/reports";
import { checkRevision } from "../../platform/access/parameters.ts";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import type { Prisma } from "../../platform/database/generated/client.ts";
import { Ids } from "../../platform/database/ids.ts";
import { toJson } from "../../platform/database/to-json.ts";
import { findRow, RevisedBodyRow, run } from "../../platform/database/rows.ts";
import { JsonText } from "../../platform/http/json-text.ts";
import { found, ProblemError } from "../../platform/problems/problem-error.ts";
import { AdmissionsService } from "../admissions/index.ts";
import { carryFindings } from "./carried-findings.ts";
import { FirmInstrumentsService } from "../instruments/index.ts";
import { OrdersService } from "../orders/index.ts";
import { newHeader } from "@evenhand/record/report-document";
import { checkDrafting, type LockedReport, lockReport, readReport } from "./report-lock.ts";
import { noteDraftShown, reportDraft } from "./reports.queries.ts";

type NewReport = Pick<Prisma.ReportUncheckedCreateInput, "vehicleId" | "organizationId" | "orderId" | "kind">;

@Injectable()
export class ReportsService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly ids: Ids,
    private readonly orders: OrdersService,
    private readonly admissions: AdmissionsService,
    private readonly instruments: FirmInstrumentsService,
  ) {}

  /** A dealer begins a statement; there is one line of versions a car. */
  async state(
    tx: Transaction,
    actor: Actor,
    vehicle: string,
    { kind, ...header }: StatementRequest,
  ): Promise<CreatedDraft> {
    const own = { id: vehicle, organizationId: { in: actor.organizations("dealer") } };
    const { organizationId } = found(await tx.vehicle.findFirst({ where: own }), "car");
    const where = { vehicleId: vehicle, organizationId, kind, orderId: null };
    await refuseSecond(tx, where);
    return this.begin(tx, actor, { vehicleId: vehicle, organizationId, kind }, header);
  }

  /** An inspector begins the findings of an order they accepted. */
  async inspect(tx: Transaction, actor: Actor, id: string, header: InspectionRequest): Promise<CreatedDraft> {
    const order = await this.orders.lockForInspector(tx, actor, id);
    if (order.state !== "accepted")
      throw new ProblemError("order-state", "Accept the order first; then the inspection can begin.", {
        members: { state: order.state },
      });
    await this.admissions.requireAdmitted(tx, order.inspectorId);
    await refuseSecond(tx, { orderId: id });
    const { vehicleId, inspectorId } = order;
    const report: NewReport = { vehicleId, organizationId: inspectorId, orderId: id, kind: "inspection" };
    const begun = await this.begin(tx, actor, report, header);
    await carryFindings(tx, order, begun.id);
    return begun;
  }

  async get(actor: Actor, id: string): Promise<JsonText> {
    const row = await findRow(this.database, RevisedBodyRow, {
      name: "report",
      text: reportDraft,
      values: [actor.organizations(), id, actor.account, this.clock.now()],
    });
    const { body, revision } = found(row, "report");
    return new JsonText(body, String(revision));
  }

  /** One's own report as whoever fills it in needs it, while it is a draft. */
  async draft(actor: Actor, id: string): Promise<LockedReport> {
    const report = await readReport(this.database, actor, id);
    checkDrafting(report);
    return report;
  }

  async change(actor: Actor, id: string, meant: number, change: ReportChange): Promise<CreatedDraft> {
    return this.database.transaction(async (tx) => {
      const report = await this.lockForWork(tx, actor, id);
      checkRevision(report.revision, meant);
      checkDrafting(report);
      const { terms, ...rest } = { ...report.stored, ...change };
      const header = terms === null || terms === undefined ? rest : { ...rest, terms };
      return this.update(tx, report, { header: toJson(header) });
    });
  }

  /** Opens the newest sealed version for changes: the next version begins where it ended. */
  async revise(tx: Transaction, actor: Actor, id: string): Promise<CreatedDraft> {
    const report = await this.lockForWork(tx, actor, id);
    if (report.drafting)
      throw new ProblemError("report-still-draft", "The report is a draft already; change it as it is.");
    return this.update(tx, report, { drafting: true });
  }

  /** One's own report with its order, if it has one, in a state in which it may be worked on; held until the transaction ends. */
  async lockForWork(tx: Transaction, actor: Actor, id: string): Promise<LockedReport> {
    const report = await lockReport(tx, actor, id);
    if (report.orderId === null) {
      // A conflict or a problem of the seal tells what stands there.
      const values = [actor.organizations(), id, actor.account, this.clock.now()];
      await run(tx, { text: noteDraftShown, values });
      return report;
    }
    const { state } = await this.orders.lockForInspector(tx, actor, report.orderId);
    if (state === "accepted" || state === "reported") return report;
    throw new ProblemError("order-state", `The order is ${state}; there is nothing to report any more.`, {
      members: { state },
    });
  }

  /** Where the request names no instruments of its own, those the firm keeps in use go with it. */
  private async begin(
    tx: Transaction,
    actor: Actor,
    report: NewReport,
    header: InspectionRequest,
  ): Promise<CreatedDraft> {
    const [id, now] = [this.ids.next(), this.clock.now()];
    const instruments = header.instruments ?? (await this.instruments.forReport(tx, report.organizationId));
    await tx.report.create({
      data: {
        ...report,
        id,
        revision: 1,
        drafting: true,
        header: newHeader({ ...header, instruments }),
        createdBy: actor.account,
        createdAt: now,
        updatedAt: now,
      },
    });
    return { id, revision: 1 };
  }

  private async update(
    tx: Transaction,
    report: LockedReport,
    data: Prisma.ReportUpdateInput,
  ): Promise<CreatedDraft> {
    const revision = report.revision + 1;
    await tx.report.update({
      where: { id: report.id },
      data: { ...data, revision, updatedAt: this.clock.now() },
    });
    return { id: report.id, revision };
  }
}

async function refuseSecond(tx: Transaction, where: Prisma.ReportWhereInput): Promise<void> {
  const there = await tx.report.findFirst({ where, select: { id: true } });
  if (there !== null)
    throw new ProblemError(
      "report-exists",
      "There is one already. Change its draft, or begin a new version of it.",
      {
        members: { report: there.id },
      },
    );
}
