import type { Type } from "@nestjs/common";
import { AccountsModule } from "./accounts/index.ts";
import { AdmissionsModule } from "./admissions/index.ts";
import { BookingModule } from "./booking/index.ts";
import { CalendarsModule } from "./calendars/index.ts";
import { CasesModule } from "./cases/index.ts";
import { ChainModule } from "./chain/index.ts";
import { ComparisonsModule } from "./comparisons/index.ts";
import { ComplaintsModule } from "./complaints/index.ts";
import { DeadlinesModule } from "./deadlines/index.ts";
import { EvidenceModule } from "./evidence/index.ts";
import { HandbookModule } from "./handbook/index.ts";
import { HandOversModule } from "./hand-overs/index.ts";
import { HistoryModule } from "./history/index.ts";
import { InstrumentsModule } from "./instruments/index.ts";
import { MoneyModule } from "./money/index.ts";
import { NoticesModule } from "./notices/index.ts";
import { OrdersModule } from "./orders/index.ts";
import { OrganizationsModule } from "./organizations/index.ts";
import { PublishingModule } from "./publishing/index.ts";
import { QuestionsModule } from "./questions/index.ts";
import { ReadingsModule } from "./readings/index.ts";
import { RecordsModule } from "./records/index.ts";
import { ReleasesModule } from "./releases/index.ts";
import { ReportsModule } from "./reports/index.ts";
import { SitesModule } from "./sites/index.ts";
import { SummariesModule } from "./summaries/index.ts";
import { PapersModule } from "./papers/index.ts";
import { VehiclesModule } from "./vehicles/index.ts";

/** Everything the service can do. */
export const capabilities: readonly Type[] = [
  AccountsModule,
  OrganizationsModule,
  VehiclesModule,
  OrdersModule,
  CasesModule,
  ReportsModule,
  ReadingsModule,
  EvidenceModule,
  ComparisonsModule,
  ReleasesModule,
  SummariesModule,
  MoneyModule,
  PapersModule,
  NoticesModule,
  DeadlinesModule,
  HandbookModule,
  HistoryModule,
  InstrumentsModule,
  CalendarsModule,
  SitesModule,
  AdmissionsModule,
  BookingModule,
  PublishingModule,
  QuestionsModule,
  ComplaintsModule,
  RecordsModule,
  HandOversModule,
  ChainModule,
];
