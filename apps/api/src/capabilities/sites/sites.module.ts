import { Module } from "@nestjs/common";
import { SitesController } from "./sites.controller.ts";
import { SitesService } from "./sites.service.ts";

@Module({ controllers: [SitesController], providers: [SitesService], exports: [SitesService] })
export class SitesModule {}
