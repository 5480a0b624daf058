import type { StoredHeader } from "@evenhand/shared/http/reports";
import type { SettledLine } from "@evenhand/tables/read-table";
import type { ReportKind, Vehicle } from "@evenhand/shared/report";

/** What of a draft decides how something is read for it: its car, and what a finding may refer to. */
export type DraftRead = {
  readonly kind: ReportKind;
  readonly vehicle: Vehicle;
  readonly header: StoredHeader;
};

/** What is to be read. It crosses from thread to thread, so it is data alone. */
export type ReadingTask =
  | { readonly is: "spoken"; readonly text: string; readonly draft: DraftRead }
  | {
      readonly is: "sheet";
      readonly bytes: Uint8Array;
      readonly draft: DraftRead;
      readonly settled: ReadonlyMap<string, SettledLine>;
    };

/** The answer's JSON, or why there is none and what would work. */
export type ReadingEnd =
  { readonly ok: true; readonly json: string } | { readonly ok: false; readonly reason: string };
