import { useQuery } from "@tanstack/react-query";
import { createContext, useContext, useMemo } from "react";
import { useUploads } from "../../offline/use-uploads";
import { fileRows } from "./file-rows";
import type { Side } from "./pictures";
import { reportEvidenceQuery } from "./queries";

const none: readonly never[] = [];

/** Every file of a report that is written here, and what can be done with it. */
export const useFilesOf = (report: string, side: Side) => {
  const uploads = useUploads(report);
  const owned = useQuery(reportEvidenceQuery(report));
  const { kept = none, sending } = uploads;
  const { items: there = none, missing = none } = owned.data ?? {};
  const rows = useMemo(() => fileRows({ kept, sending, owned: there }), [kept, sending, there]);
  /** The service has told what it has. */
  const known = owned.data !== undefined;
  return { report, side, rows, missing, uploads, known };
};

export type ReportFiles = ReturnType<typeof useFilesOf>;

const FilesAt = createContext<ReportFiles | null>(null);
export const ReportFilesProvider = FilesAt.Provider;

/** The files of the report that the page is of; `null` where it is of none. */
export const useReportFiles = (): ReportFiles | null => useContext(FilesAt);
