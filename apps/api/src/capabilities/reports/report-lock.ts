import type { StoredHeader } from "@evenhand/shared/http/reports";
import { SecondLook } from "@evenhand/shared/http/reports";
import { ReportKind, type Vehicle } from "@evenhand/shared/report";
import { readableHeader } from "@evenhand/sheet/readable-header";
import { z } from "zod";
import type { Actor } from "../../platform/auth/actor.ts";
import type { Transaction } from "../../platform/database/database.ts";
import { findRow } from "../../platform/database/rows.ts";
import { found, ProblemError } from "../../platform/problems/problem-error.ts";
import { readVehicle } from "@evenhand/record/report-document";
import { reportToLock } from "./reports.queries.ts";

export type LockedReport = {
  id: string;
  vehicleId: string;
  organizationId: string;
  organizationName: string;
  orderId: string | null;
  kind: ReportKind;
  revision: number;
  drafting: boolean;
  /** Where it was asked to be looked at again; `null` where nobody asked. */
  secondLook: SecondLook | null;
  /** As far as it can be read: what a finding may refer to. */
  header: StoredHeader;
  /** As it is stored. A change goes into this, so that nothing is lost of what only could not be read. */
  stored: Readonly<Record<string, unknown>>;
  vehicle: Vehicle;
};

const Row = z.object({
  id: z.string(),
  vehicleId: z.string(),
  organizationId: z.string(),
  organizationName: z.string(),
  orderId: z.string().nullable(),
  kind: ReportKind,
  revision: z.number(),
  drafting: z.boolean(),
  secondLook: SecondLook.nullable(),
  header: z.record(z.string(), z.unknown()),
  vehicle: z.unknown(),
});

/** One of the person's own reports, held until the transaction ends; no statement to whoever must be blind. */
export async function lockReport(tx: Transaction, actor: Actor, id: string): Promise<LockedReport> {
  const row = await findRow(tx, Row, { text: reportToLock, values: [actor.organizations(), id] });
  const report = found(row, "report");
  return {
    ...report,
    stored: report.header,
    header: readableHeader(report.header).header,
    vehicle: readVehicle(report.vehicle),
  };
}

/** @throws ProblemError `report-sealed` */
export function checkDrafting(report: LockedReport): void {
  if (report.drafting) return;
  throw new ProblemError(
    "report-sealed",
    "The report is sealed and stays as it is. Begin a new version to change something.",
  );
}
