import type { StoredHeader } from "@evenhand/shared/http/reports";
import { SecondLook } from "@evenhand/shared/http/reports";
import { ReportKind, type Vehicle } from "@evenhand/shared/report";
import { readableHeader } from "@evenhand/sheet/readable-header";
import { z } from "zod";
import type { Actor } from "../../platform/auth/actor.ts";
import type { Transaction } from "../../platform/database/database.ts";
import { findRow, type Source } from "../../platform/database/rows.ts";
import { found, ProblemError } from "../../platform/problems/problem-error.ts";
import { readVehicle } from "@evenhand/record/report-document";
import { reportToLock, reportToRead } from "./reports.queries.ts";

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
export const lockReport = (tx: Transaction, actor: Actor, id: string): Promise<LockedReport> =>
  readParts(tx, reportToLock, actor, id);

/** The same as it stands, held by nobody. */
export const readReport = (source: Source, actor: Actor, id: string): Promise<LockedReport> =>
  readParts(source, reportToRead, actor, id);

async function readParts(source: Source, text: string, actor: Actor, id: string): Promise<LockedReport> {
  const report = found(await findRow(source, Row, { text, values: [actor.organizations(), id] }), "report");
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
