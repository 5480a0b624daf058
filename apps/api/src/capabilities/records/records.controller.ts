import { Controller } from "@nestjs/common";
import { Id } from "../../platform/access/parameters.ts";
import { Route } from "../../platform/access/route.ts";
import { RecordsService } from "./records.service.ts";

@Controller()
export class RecordsController {
  constructor(private readonly records: RecordsService) {}

  @Route("dealerRecords.get")
  get(@Id() id: string) {
    return this.records.get(id);
  }
}
