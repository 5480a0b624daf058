import type { Finding } from "@evenhand/shared/finding";
import type { Moved } from "@evenhand/shared/http/summaries";
import { changedPlaces } from "@evenhand/record/changed-places";
import { Report } from "@evenhand/shared/report";
import type { Transaction } from "../../platform/database/database.ts";

async function readFindings(tx: Transaction, report: string, number: string): Promise<Finding[]> {
  const version = await tx.reportVersion.findUnique({
    where: { reportId_number: { reportId: report, number: Number(number) } },
    select: { document: true },
  });
  if (version === null) return [];
  return Report.parse(JSON.parse(Buffer.from(version.document).toString("utf8"))).findings;
}

/** Names the findings that changed, where a report moved. */
export async function nameFindings(tx: Transaction, moved: readonly Moved[]): Promise<Moved[]> {
  const named: Moved[] = [];
  for (const each of moved) {
    const isReport = each.what === "statement" || each.what === "inspection";
    if (!isReport || each.was === null || each.now === null) {
      named.push(each);
      continue;
    }
    const [was, now] = [await readFindings(tx, each.id, each.was), await readFindings(tx, each.id, each.now)];
    named.push({ ...each, findings: changedPlaces(was, now) });
  }
  return named;
}
