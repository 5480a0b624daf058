import { Body, Controller } from "@nestjs/common";
import { FirmInstruments } from "@evenhand/shared/http/instruments";
import { By, Id, IfMatch } from "../../platform/access/parameters.ts";
import { Route } from "../../platform/access/route.ts";
import { Actor } from "../../platform/auth/actor.ts";
import { FirmInstrumentsService } from "./firm-instruments.service.ts";

@Controller()
export class InstrumentsController {
  constructor(private readonly instruments: FirmInstrumentsService) {}

  @Route("firmInstruments.get")
  get(@By() actor: Actor, @Id() id: string) {
    return this.instruments.get(actor, id);
  }

  @Route("firmInstruments.put")
  put(
    @By() actor: Actor,
    @Id() id: string,
    @IfMatch() meant: number,
    @Body({ schema: FirmInstruments }) body: FirmInstruments,
  ) {
    return this.instruments.put(actor, id, meant, body);
  }
}
