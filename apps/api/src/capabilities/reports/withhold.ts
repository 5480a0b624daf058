import type { WithheldReport } from "@evenhand/shared/http/reports";
import type { Report } from "@evenhand/shared/report";

type Place = { readonly item: string; readonly position: string };
const key = ({ item, position }: Place): string => `${item} ${position}`;

/** A statement with what an inspector has not committed yet left out: where it speaks stays, nothing of what it says does. */
export function withhold(statement: Report, committed: readonly Place[]): WithheldReport {
  const open = new Set(committed.map(key));
  const isOpen = (place: Place): boolean => open.has(key(place));
  return {
    format: "evenhand-report-withheld",
    version: 1,
    kind: statement.kind,
    sheet: statement.sheet,
    vehicle: statement.vehicle,
    author: statement.author,
    instruments: statement.instruments,
    persons: statement.persons,
    scales: statement.scales,
    findings: statement.findings.filter(isOpen),
    withheld: statement.findings
      .filter((finding) => !isOpen(finding))
      .map(({ item, position }) => ({ item, position })),
  };
}
