import { Controller } from "@nestjs/common";
import { By, Id } from "../../platform/access/parameters.ts";
import { Route } from "../../platform/access/route.ts";
import { Actor } from "../../platform/auth/actor.ts";
import { HistoryTables } from "./history-tables.ts";

@Controller()
export class HistoryController {
  constructor(private readonly tables: HistoryTables) {}

  @Route("firmHistory.get")
  get(@By() actor: Actor, @Id() id: string) {
    return this.tables.seenBy(actor, id);
  }
}
