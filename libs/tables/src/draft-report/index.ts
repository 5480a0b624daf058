import type { Report, ReportInput } from "@evenhand/shared/report";
import type { Sheet } from "@evenhand/shared/sheet";
import { checkReport } from "@evenhand/sheet/check-report";
import type { RowOutcome, TableDraft } from "../read-table/outcome.ts";

/** What a report needs that no inspector's sheet says: the car, who wrote it and when. */
export type DraftHeader = Pick<ReportInput, "kind" | "vehicle" | "author" | "visit">;

/** A finding the sheet would not take: at the row it came from, and why. */
export type LeftOut = { readonly grid: string; readonly row: number; readonly reason: string };

export type DraftReport =
  | { readonly ok: true; readonly report: Report; readonly leftOut: readonly LeftOut[] }
  | { readonly ok: false; readonly reasons: readonly string[] };

type From = { readonly outcome: RowOutcome; readonly finding: ReportInput["findings"][number] };

const inputOf = (
  header: DraftHeader,
  sheet: Sheet,
  draft: TableDraft,
  from: readonly From[],
): ReportInput => ({
  format: "evenhand-report",
  version: 1,
  ...header,
  sheet: { id: sheet.id, version: sheet.version },
  scales: [...draft.scales],
  findings: from.map(({ finding }) => finding),
});

const indexOf = (at: string): number | undefined => {
  const index = /^\/findings\/(\d+)/.exec(at)?.[1];
  return index === undefined ? undefined : Number(index);
};

/**
 * The findings of a draft as a report by the sheet. What the sheet would not take of this car (a unit, a place it does not have) is left
 * out and said, row by row; it stays a draft until somebody who was there confirms it.
 *
 * @returns the report, or what is wrong with the header
 */
export const draftReport = (draft: TableDraft, header: DraftHeader, sheet: Sheet): DraftReport => {
  let from: From[] = draft.rows.flatMap((outcome) =>
    outcome.findings.map(({ finding }) => ({ outcome, finding })),
  );
  const leftOut: LeftOut[] = [];
  for (;;) {
    const check = checkReport(inputOf(header, sheet, draft, from), sheet);
    if (check.ok) return { ok: true, report: check.report, leftOut };
    const wrong = new Map(
      check.problems.flatMap(({ at, reason }) => {
        const index = indexOf(at);
        return index === undefined ? [] : [[index, reason] as const];
      }),
    );
    if (wrong.size === 0)
      return { ok: false, reasons: check.problems.map(({ at, reason }) => `${at}: ${reason}`) };
    for (const [index, reason] of wrong) {
      const outcome = from[index]?.outcome;
      if (outcome !== undefined) leftOut.push({ grid: outcome.grid, row: outcome.row, reason });
    }
    from = from.filter((_, index) => !wrong.has(index));
  }
};
