import type { Comparison } from "@evenhand/shared/comparison";
import type { Matter } from "@evenhand/shared/matter";
import { worseSeverity } from "@evenhand/shared/severity";
import type { Severity } from "@evenhand/shared/severity";
import { foldGroups } from "../fold/index.ts";
import type { Reports } from "../headline/index.ts";
import { joinLines } from "../join/index.ts";
import { worstFirst } from "../join/line.ts";
import type { Group, Line } from "../join/line.ts";
import { nextStep } from "../next-step/index.ts";
import { certaintyOfGroup, isAdmitted, rankingOf, unpriced } from "../order/index.ts";
import type { LikelyCost } from "../order/index.ts";
import { isOpenCheck } from "../weight/index.ts";

export type { LikelyCost } from "../order/index.ts";

/** A matter by codes and figures. Its words are made by `inWords` where somebody reads them. */
export type JoinedMatter = Omit<Matter, "headline" | "found"> & {
  /** The lines it was joined from, gravest first: what its words are made from. */
  readonly group: Group;
};

const severityOf = (lines: readonly Line[]): Severity =>
  lines.reduce<Severity | null>((worst, { entry }) => worseSeverity(worst, entry.severity), null) ?? "small";

const costRowsOf = (lines: readonly Line[]): string[] => {
  const rows = new Set<string>();
  for (const { compiled } of lines) {
    const row = compiled?.item.costRow;
    if (row !== null && row !== undefined) rows.add(row);
  }
  return [...rows];
};

const placeKey = ({ item, position }: { readonly item: string; readonly position: string }): string =>
  `${item}@${position}`;

/** The first group that holds each place some check speaks of. */
const groupsAt = (groups: readonly Group[], items: ReadonlySet<string>): ReadonlyMap<string, number> => {
  const at = new Map<string, number>();
  for (const [index, { lines }] of groups.entries()) {
    for (const { entry } of lines) {
      if (!items.has(entry.item)) continue;
      const key = placeKey(entry);
      if (!at.has(key)) at.set(key, index);
    }
  }
  return at;
};

/** Open checks by the matter they belong to: the first that holds a line they decided, found bad or read. */
const checksByGroup = (
  groups: readonly Group[],
  { crossChecks }: Pick<Comparison, "crossChecks">,
): ReadonlyMap<number, number[]> => {
  const open = [...crossChecks.entries()]
    .filter(([, check]) => isOpenCheck(check))
    .map(([index, { decides, bad, reads }]) => ({ index, spoken: [...decides, ...bad, ...reads] }));
  const at = groupsAt(groups, new Set(open.flatMap(({ spoken }) => spoken.map(({ item }) => item))));
  const of = new Map<number, number[]>();
  for (const { index, spoken } of open) {
    const first = Math.min(...spoken.map((place) => at.get(placeKey(place)) ?? Infinity));
    if (Number.isFinite(first)) of.set(first, [...(of.get(first) ?? []), index]);
  }
  return of;
};

/**
 * What is wrong, in doubt or unknown with a car: about a dozen matters, worst first, each line of halt, danger or worth that is bad,
 * differs, is in doubt, was not mentioned or was not seen in exactly one of them. A pure function: the same comparison gives the same
 * matters in the same order. Codes and figures only: words are `inWords`'.
 *
 * @param comparison of these two reports
 * @param reports both reports and the sheet they were made on
 * @param likely what lines are likely to cost, where a table is known: of two equally grave matters the dearer stands first
 * @example matters(analyze(a, b, sheet), { a, b, sheet })[0]?.kind // "title"
 */
export const matters = (
  comparison: Pick<Comparison, "entries" | "crossChecks">,
  reports: Reports,
  likely: LikelyCost = unpriced,
): JoinedMatter[] => {
  const ranking = rankingOf(reports.b, likely);
  const groups = ranking.ranked(foldGroups(joinLines(comparison, reports.sheet), ranking));
  const checks = checksByGroup(groups, comparison);
  return groups.map((group, place): JoinedMatter => {
    const lines = worstFirst(group.lines);
    return {
      kind: group.kind.id,
      zone: group.zone,
      severity: severityOf(lines),
      certainty: certaintyOfGroup(group, reports.b),
      decides: group.kind.decides,
      next: nextStep(group),
      question: group.kind.ask,
      admitted: isAdmitted(group),
      lines: lines.map(({ index }) => index),
      checks: checks.get(place) ?? [],
      costRows: costRowsOf(lines),
      group: { ...group, lines },
    };
  });
};
