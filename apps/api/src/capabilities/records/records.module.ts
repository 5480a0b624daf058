import { Module } from "@nestjs/common";
import { ComparisonsModule } from "../comparisons/index.ts";
import { RecordsController } from "./records.controller.ts";
import { RecordsService } from "./records.service.ts";

@Module({ imports: [ComparisonsModule], controllers: [RecordsController], providers: [RecordsService] })
export class RecordsModule {}
