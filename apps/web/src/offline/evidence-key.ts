/** Under what the files of a report are asked for. It stands alone, so that whoever only looks at pictures gets no store of this device along. */
export const evidenceKey = (report: string) => ["report-evidence", report] as const;
