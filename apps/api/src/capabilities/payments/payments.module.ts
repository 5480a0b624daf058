import { Module } from "@nestjs/common";
import { Payments } from "./payments.ts";
import { RecordingPayments } from "./recording-payments.ts";

@Module({ providers: [{ provide: Payments, useClass: RecordingPayments }], exports: [Payments] })
export class PaymentsModule {}
