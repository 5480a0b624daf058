import { Body, Controller } from "@nestjs/common";
import {
  InspectionRequest,
  OperationsRequest,
  ReportChange,
  StatementRequest,
} from "@evenhand/shared/http/reports";
import { By, Id, IfMatch } from "../../platform/access/parameters.ts";
import { Route } from "../../platform/access/route.ts";
import { Actor } from "../../platform/auth/actor.ts";
import { OperationsService } from "./operations.service.ts";
import { ReportVersionsService } from "./report-versions.service.ts";
import { ReportsService } from "./reports.service.ts";
import { SealingService } from "./sealing.service.ts";
import { SecondLooksService } from "./second-look.service.ts";
import type { Transaction } from "../../platform/database/database.ts";
import { InTransaction } from "../../platform/http/in-transaction.ts";

@Controller()
export class ReportsController {
  constructor(
    private readonly reports: ReportsService,
    private readonly operations: OperationsService,
    private readonly sealing: SealingService,
    private readonly secondLooks: SecondLooksService,
    private readonly versions: ReportVersionsService,
  ) {}

  @Route("reports.state")
  state(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Id() vehicle: string,
    @Body({ schema: StatementRequest }) body: StatementRequest,
  ) {
    return this.reports.state(tx, actor, vehicle, body);
  }

  @Route("reports.inspect")
  inspect(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Id() order: string,
    @Body({ schema: InspectionRequest }) body: InspectionRequest,
  ) {
    return this.reports.inspect(tx, actor, order, body);
  }

  @Route("reports.get")
  get(@By() actor: Actor, @Id() id: string) {
    return this.reports.get(actor, id);
  }

  @Route("reports.change")
  change(
    @By() actor: Actor,
    @Id() id: string,
    @IfMatch() revision: number,
    @Body({ schema: ReportChange }) body: ReportChange,
  ) {
    return this.reports.change(actor, id, revision, body);
  }

  @Route("reports.operate")
  operate(
    @By() actor: Actor,
    @Id() id: string,
    @Body({ schema: OperationsRequest }) body: OperationsRequest,
  ) {
    return this.operations.operate(actor, id, body);
  }

  @Route("reports.lookAgain")
  lookAgain(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Id() id: string,
    @IfMatch() revision: number,
  ) {
    return this.secondLooks.ask(tx, actor, id, revision);
  }

  @Route("reports.seal")
  seal(@InTransaction() tx: Transaction, @By() actor: Actor, @Id() id: string, @IfMatch() revision: number) {
    return this.sealing.seal(tx, actor, id, revision);
  }

  @Route("reports.revise")
  revise(@InTransaction() tx: Transaction, @By() actor: Actor, @Id() id: string) {
    return this.reports.revise(tx, actor, id);
  }

  @Route("reportVersions.get")
  getVersion(@By() actor: Actor, @Id() id: string) {
    return this.versions.get(actor, id);
  }

  @Route("reportVersions.document")
  getDocument(@By() actor: Actor, @Id() id: string) {
    return this.versions.document(actor, id);
  }
}
