import { Body, Controller, Query } from "@nestjs/common";
import { SettledLines, SheetRequest, SpokenRequest, TableQuery } from "@evenhand/shared/http/readings";
import { By, Id } from "../../platform/access/parameters.ts";
import { Route } from "../../platform/access/route.ts";
import { Actor } from "../../platform/auth/actor.ts";
import { ReadingsService } from "./readings.service.ts";
import { SheetLinesService } from "./sheet-lines.service.ts";
import { TablesService } from "./tables.service.ts";

@Controller()
export class ReadingsController {
  constructor(
    private readonly readings: ReadingsService,
    private readonly lines: SheetLinesService,
    private readonly tables: TablesService,
  ) {}

  @Route("reports.readSpoken")
  spoken(@By() actor: Actor, @Id() report: string, @Body({ schema: SpokenRequest }) body: SpokenRequest) {
    return this.readings.spoken(actor, report, body);
  }

  @Route("reports.readSheet")
  sheet(@By() actor: Actor, @Id() report: string, @Body({ schema: SheetRequest }) body: SheetRequest) {
    return this.readings.sheet(actor, report, body);
  }

  @Route("reports.settleLines")
  settle(@By() actor: Actor, @Id() report: string, @Body({ schema: SettledLines }) body: SettledLines) {
    return this.lines.settle(actor, report, body);
  }

  @Route("reports.table")
  draftTable(@By() actor: Actor, @Id() report: string, @Query({ schema: TableQuery }) query: TableQuery) {
    return this.tables.ofDraft(actor, report, query);
  }

  @Route("reportVersions.table")
  versionTable(@By() actor: Actor, @Id() version: string, @Query({ schema: TableQuery }) query: TableQuery) {
    return this.tables.ofVersion(actor, version, query);
  }
}
