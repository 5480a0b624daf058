import { Module } from "@nestjs/common";
import { VehiclesModule } from "../vehicles/index.ts";
import { PublishingController } from "./publishing.controller.ts";
import { PublishingService } from "./publishing.service.ts";

@Module({ imports: [VehiclesModule], controllers: [PublishingController], providers: [PublishingService] })
export class PublishingModule {}
