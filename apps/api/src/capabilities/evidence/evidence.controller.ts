import { Body, Controller } from "@nestjs/common";
import { MarksDrawn } from "@evenhand/shared/http/evidence";
import { By, Id } from "../../platform/access/parameters.ts";
import { Route } from "../../platform/access/route.ts";
import { Actor } from "../../platform/auth/actor.ts";
import { EvidenceService } from "./evidence.service.ts";

@Controller()
export class EvidenceController {
  constructor(private readonly evidence: EvidenceService) {}

  @Route("evidence.ofReport")
  ofReport(@By() actor: Actor, @Id() id: string) {
    return this.evidence.ofReport(actor, id);
  }

  @Route("evidence.ofVersion")
  ofVersion(@By() actor: Actor, @Id() id: string) {
    return this.evidence.ofVersion(actor, id);
  }

  @Route("evidence.ofVehicle")
  ofVehicle(@By() actor: Actor, @Id() id: string) {
    return this.evidence.ofVehicle(actor, id);
  }

  @Route("evidence.small")
  small(@By() actor: Actor, @Id() id: string) {
    return this.evidence.picture(actor, id, "small");
  }

  @Route("evidence.medium")
  medium(@By() actor: Actor, @Id() id: string) {
    return this.evidence.picture(actor, id, "medium");
  }

  @Route("evidence.large")
  large(@By() actor: Actor, @Id() id: string) {
    return this.evidence.picture(actor, id, "large");
  }

  @Route("evidence.original")
  original(@By() actor: Actor, @Id() id: string) {
    return this.evidence.original(actor, id);
  }

  @Route("evidence.mark")
  mark(@By() actor: Actor, @Id() id: string, @Body({ schema: MarksDrawn }) body: MarksDrawn) {
    return this.evidence.mark(actor, id, body);
  }

  @Route("evidence.remove")
  remove(@By() actor: Actor, @Id() id: string) {
    return this.evidence.remove(actor, id);
  }

  @Route("evidence.restore")
  restore(@By() actor: Actor, @Id() id: string) {
    return this.evidence.restore(actor, id);
  }
}
