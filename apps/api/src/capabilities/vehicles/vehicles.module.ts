import { Module } from "@nestjs/common";
import { VehiclesController } from "./vehicles.controller.ts";
import { VehiclesService } from "./vehicles.service.ts";

@Module({ controllers: [VehiclesController], providers: [VehiclesService], exports: [VehiclesService] })
export class VehiclesModule {}
