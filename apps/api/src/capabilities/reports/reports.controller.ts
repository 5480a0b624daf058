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

@Controller()
export class ReportsController {
  constructor(
    private readonly reports: ReportsService,
    private readonly operations: OperationsService,
    private readonly sealing: SealingService,
    private readonly versions: ReportVersionsService,
  ) {}

  @Route("reports.state")
  state(
    @By() actor: Actor,
    @Id() vehicle: string,
    @Body({ schema: StatementRequest }) body: StatementRequest,
  ) {
    return this.reports.state(actor, vehicle, body);
  }

  @Route("reports.inspect")
  inspect(
    @By() actor: Actor,
    @Id() order: string,
    @Body({ schema: InspectionRequest }) body: InspectionRequest,
  ) {
    return this.reports.inspect(actor, order, body);
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
    return this.operations.apply(actor, id, body);
  }

  @Route("reports.seal")
  seal(@By() actor: Actor, @Id() id: string, @IfMatch() revision: number) {
    return this.sealing.seal(actor, id, revision);
  }

  @Route("reports.revise")
  revise(@By() actor: Actor, @Id() id: string) {
    return this.reports.revise(actor, id);
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
