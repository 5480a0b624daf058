import { Module } from "@nestjs/common";
import { CONFIG } from "../config/index.ts";
import { Jobs } from "../jobs/jobs.ts";
import { TableSweep } from "../jobs/table-sweep.ts";
import { Mailer, mailerOf } from "./mailer.ts";
import { Outbox } from "./outbox.ts";

@Module({
  providers: [Jobs, TableSweep, Outbox, { provide: Mailer, useFactory: mailerOf, inject: [CONFIG] }],
  exports: [Outbox, Jobs],
})
export class MailModule {}
