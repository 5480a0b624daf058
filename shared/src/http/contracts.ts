import type { RouteId } from "../access.ts";
import { accountContracts } from "./accounts.ts";
import { admissionContracts } from "./admissions.ts";
import { calendarViewContracts } from "./booking/calendar-views.ts";
import { bookingContracts } from "./booking.ts";
import { calendarContracts } from "./calendars.ts";
import { caseContracts } from "./cases.ts";
import { chainContracts } from "./chain.ts";
import { comparisonContracts } from "./comparisons.ts";
import { complaintContracts } from "./complaints.ts";
import { evidenceContracts } from "./evidence.ts";
import { handOverContracts } from "./hand-overs.ts";
import { handbookContracts } from "./handbook.ts";
import { historyContracts } from "./history.ts";
import { instrumentContracts } from "./instruments.ts";
import { moneyContracts } from "./money.ts";
import { noticeContracts } from "./notices.ts";
import { orderContracts } from "./orders.ts";
import { organizationContracts } from "./organizations.ts";
import { paperContracts } from "./papers.ts";
import type { Contract } from "./paging.ts";
import { publishingContracts } from "./publishing.ts";
import { questionContracts } from "./questions.ts";
import { readingContracts } from "./readings.ts";
import { recordContracts } from "./records.ts";
import { releaseContracts } from "./releases.ts";
import { reportContracts } from "./reports.ts";
import { siteContracts } from "./sites.ts";
import { summaryContracts } from "./summaries.ts";
import { vehicleContracts } from "./vehicles.ts";

/** Every route's contract by its id in the access table: what validates requests, documents them, and checks every answer. */
export const contracts = {
  ...accountContracts,
  ...organizationContracts,
  ...vehicleContracts,
  ...orderContracts,
  ...caseContracts,
  ...reportContracts,
  ...readingContracts,
  ...evidenceContracts,
  ...comparisonContracts,
  ...releaseContracts,
  ...summaryContracts,
  ...moneyContracts,
  ...paperContracts,
  ...noticeContracts,
  ...handbookContracts,
  ...historyContracts,
  ...instrumentContracts,
  ...recordContracts,
  ...publishingContracts,
  ...questionContracts,
  ...calendarContracts,
  ...calendarViewContracts,
  ...siteContracts,
  ...admissionContracts,
  ...bookingContracts,
  ...complaintContracts,
  ...handOverContracts,
  ...chainContracts,
} as const satisfies Record<RouteId, Contract>;

export const contractTable: Readonly<Record<RouteId, Contract>> = contracts;
