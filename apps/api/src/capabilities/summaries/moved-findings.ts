import type { Finding } from "@evenhand/shared/finding";
import type { Moved } from "@evenhand/shared/http/summaries";
import { canonicalJson } from "@evenhand/record/canonical-json";
import { Report } from "@evenhand/shared/report";
import type { Transaction } from "../../platform/database/database.ts";

type Place = Pick<Finding, "item" | "position">;
const key = ({ item, position }: Place): string => `${item} ${position}`;

/** Places at which two versions of one report do not say the same. */
export function changedPlaces(was: readonly Finding[], now: readonly Finding[]): Place[] {
  const before = new Map(was.map((finding) => [key(finding), canonicalJson(finding)]));
  const after = new Map(now.map((finding) => [key(finding), canonicalJson(finding)]));
  return [...new Map([...was, ...now].map((finding) => [key(finding), finding])).entries()]
    .filter(([place]) => before.get(place) !== after.get(place))
    .map(([, { item, position }]) => ({ item, position }));
}

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
