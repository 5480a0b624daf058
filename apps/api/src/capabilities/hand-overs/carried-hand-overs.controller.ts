import { Body, Controller } from "@nestjs/common";
import { HandOverReportBody, HandOverSigning } from "@evenhand/shared/http/hand-overs";
import { Secret } from "../../platform/access/parameters.ts";
import { Route } from "../../platform/access/route.ts";
import { CarriedHandOversService } from "./carried-hand-overs.service.ts";

/** What the carrier's link opens, to whoever holds it. */
@Controller()
export class CarriedHandOversController {
  constructor(private readonly carried: CarriedHandOversService) {}

  @Route("carriedHandOvers.get")
  get(@Secret() secret: string) {
    return this.carried.get(secret);
  }

  @Route("carriedHandOvers.preview")
  preview(@Secret() secret: string, @Body({ schema: HandOverReportBody }) body: HandOverReportBody) {
    return this.carried.preview(secret, body);
  }

  @Route("carriedHandOvers.sign")
  sign(@Secret() secret: string, @Body({ schema: HandOverSigning }) body: HandOverSigning) {
    return this.carried.sign(secret, body);
  }
}
