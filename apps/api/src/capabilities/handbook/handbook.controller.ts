import { Body, Controller } from "@nestjs/common";
import { FirmHandbook } from "@evenhand/shared/cross-check";
import { By, Id, IfMatch } from "../../platform/access/parameters.ts";
import { Route } from "../../platform/access/route.ts";
import { Actor } from "../../platform/auth/actor.ts";
import { FirmHandbooksService } from "./firm-handbooks.service.ts";

@Controller()
export class HandbookController {
  constructor(private readonly handbooks: FirmHandbooksService) {}

  @Route("firmHandbook.get")
  get(@By() actor: Actor, @Id() id: string) {
    return this.handbooks.get(actor, id);
  }

  @Route("firmHandbook.put")
  put(
    @By() actor: Actor,
    @Id() id: string,
    @IfMatch() meant: number,
    @Body({ schema: FirmHandbook }) body: FirmHandbook,
  ) {
    return this.handbooks.put(actor, id, meant, body);
  }
}
