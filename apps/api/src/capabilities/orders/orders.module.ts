import { Module } from "@nestjs/common";
import { AdmissionsModule } from "../admissions/index.ts";
import { CasesModule } from "../cases/index.ts";
import { NoticesModule } from "../notices/index.ts";
import { OrdersController } from "./orders.controller.ts";
import { OrdersService } from "./orders.service.ts";
import { VisitOrdersService } from "./visit-orders.service.ts";

@Module({
  imports: [AdmissionsModule, CasesModule, NoticesModule],
  controllers: [OrdersController],
  providers: [OrdersService, VisitOrdersService],
  exports: [OrdersService, VisitOrdersService],
})
export class OrdersModule {}
