import { Controller } from "@nestjs/common";
import { By, Id } from "../../platform/access/parameters.ts";
import { Route } from "../../platform/access/route.ts";
import { Actor } from "../../platform/auth/actor.ts";
import { ExportService } from "./export.service.ts";
import { ReceiptsService } from "./receipts.service.ts";

@Controller()
export class ChainController {
  constructor(
    private readonly receipts: ReceiptsService,
    private readonly exports: ExportService,
  ) {}

  @Route("recordKeys.list")
  keys() {
    return this.receipts.published();
  }

  @Route("receipts.get")
  receipt(@By() actor: Actor, @Id() id: string) {
    return this.receipts.get(actor, id);
  }

  @Route("exports.get")
  export(@By() actor: Actor, @Id() id: string) {
    return this.exports.exportOf(actor, id);
  }
}
