import type { Transaction } from "../../platform/database/database.ts";
import type { LockedReport } from "./report-lock.ts";

type Row = { whole: boolean; committed: Date | null };

/** What an inspection firm has been shown of a car's statements. */
export type Exposure = {
  /** All of a statement was readable to them: nothing they find from then on is blind. */
  readonly whole: boolean;
  /** When statements were last shown as far as findings were committed. */
  readonly committedShownAt: Date | null;
};

export async function readExposure(tx: Transaction, report: LockedReport): Promise<Exposure> {
  const [row] = await tx.$queryRaw<Row[]>`
    SELECT coalesce(bool_or(e.whole), false) OR EXISTS (
        SELECT 1 FROM inspection_order o WHERE o.vehicle_id = ${report.vehicleId}::uuid
          AND o.inspector_id = ${report.organizationId}::uuid AND o.state = 'reported') AS whole,
      max(e.shown_at) FILTER (WHERE NOT e.whole) AS committed
    FROM statement_exposure e
    WHERE e.organization_id = ${report.organizationId}::uuid AND e.vehicle_id = ${report.vehicleId}::uuid`;
  return { whole: row?.whole ?? false, committedShownAt: row?.committed ?? null };
}

/**
 * Was a finding made before any statement on its place was shown? A statement is shown at a place only after something was
 * committed there, so a first finding is blind, and a changed one only while nothing was shown since the first.
 */
export const isBlind = (exposure: Exposure, firstCommittedAt: Date | null): boolean => {
  if (exposure.whole) return false;
  if (firstCommittedAt === null || exposure.committedShownAt === null) return true;
  return firstCommittedAt.getTime() > exposure.committedShownAt.getTime();
};
