import { Module } from "@nestjs/common";
import { NoticesModule } from "../notices/index.ts";
import { OrdersController } from "./orders.controller.ts";
import { OrdersService } from "./orders.service.ts";

@Module({
  imports: [NoticesModule],
  controllers: [OrdersController],
  providers: [OrdersService],
  exports: [OrdersService],
})
export class OrdersModule {}
