import type { ReportHandbook } from "@evenhand/shared/cross-check";
import type { Report } from "@evenhand/shared/report";
import { currentSheet, toReport } from "@evenhand/record/report-document";
import { checkReport } from "@evenhand/sheet/check-report";
import { z } from "zod";
import type { Transaction } from "../../platform/database/database.ts";
import { readRows, sql } from "../../platform/database/rows.ts";
import { ProblemError } from "../../platform/problems/problem-error.ts";
import type { LockedReport } from "./report-lock.ts";

const PlaceRow = z.object({ item: z.string(), position: z.string(), body: z.unknown() });

/** The whole report, held against its sheet. @throws ProblemError `report-incomplete` with every problem */
export async function readComplete(
  tx: Transaction,
  report: LockedReport,
  handbook: ReportHandbook | undefined,
): Promise<Report> {
  const findings = await readRows(
    tx,
    PlaceRow,
    sql`
    SELECT item, position, body FROM report_finding WHERE report_id = ${report.id}::uuid AND body IS NOT NULL`,
  );
  const author = {
    organization: report.organizationName,
    role: report.kind === "inspection" ? ("inspector" as const) : ("dealer" as const),
  };
  const check = checkReport(toReport({ ...report, author, handbook, findings }), currentSheet);
  const problems = [
    ...(findings.length === 0 ? [{ at: "/findings", reason: "there is not one finding" }] : []),
    ...(check.ok ? [] : check.problems),
  ];
  if (check.ok && problems.length === 0) return check.report;
  throw new ProblemError(
    "report-incomplete",
    "The report does not hold against the sheet; each problem is named.",
    {
      problems,
    },
  );
}
