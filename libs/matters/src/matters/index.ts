import type { Comparison } from "@evenhand/shared/comparison";
import type { CrossCheck, EntryReference } from "@evenhand/shared/cross-check";
import type { Matter } from "@evenhand/shared/matter";
import { worseSeverity } from "@evenhand/shared/severity";
import type { Severity } from "@evenhand/shared/severity";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { foldGroups } from "../fold/index.ts";
import type { Reports } from "../headline/index.ts";
import { joinLines } from "../join/index.ts";
import { worstFirst } from "../join/line.ts";
import type { Group, Line } from "../join/line.ts";
import { nextStep } from "../next-step/index.ts";
import { rankingOf } from "../order/index.ts";
import { isOpenCheck } from "../weight/index.ts";

/** A matter by codes and figures. Its words are made by `inWords` where somebody reads them. */
export type JoinedMatter = Omit<Matter, "headline" | "found"> & {
  /** The lines it was joined from, gravest first: what its words are made from. */
  readonly group: Group;
};

const severityOf = (lines: readonly Line[]): Severity => {
  let worst: Severity | null = null;
  for (const { entry } of lines) {
    worst = worseSeverity(worst, entry.severity);
    if (worst === "halt") break;
  }
  return worst ?? "small";
};

const costRowsOf = (lines: readonly Line[]): string[] => {
  const rows = new Set<string>();
  let last: string | undefined;
  for (const { of } of lines) {
    // Lines of one row mostly stand together.
    const row = of?.costRow;
    if (row !== undefined && row !== last) rows.add(row);
    last = row;
  }
  return [...rows];
};

const placeKey = ({ item, position }: { readonly item: string; readonly position: string }): string =>
  `${item}@${position}`;

/** An open check, and the places it speaks of. */
type OpenCheck = { readonly index: number; readonly spoken: readonly EntryReference[] };

const openChecksOf = (checks: readonly CrossCheck[]): readonly OpenCheck[] => {
  const open: OpenCheck[] = [];
  for (let index = 0; index < checks.length; index += 1) {
    const check = checks[index];
    if (check !== undefined && isOpenCheck(check))
      open.push({ index, spoken: check.decides.concat(check.bad, check.reads) });
  }
  return open;
};

const NO_LINES: readonly Line[] = [];

/** The first group that holds each place some check speaks of. */
const groupsAt = (
  groups: readonly Group[],
  open: readonly OpenCheck[],
  { items }: Pick<CompiledSheet, "items">,
): ReadonlyMap<string, number> => {
  const isSpokenOf = new Uint8Array(items.size);
  for (const { spoken } of open) for (const { item } of spoken) isSpokenOf[items.get(item)?.order ?? -1] = 1;
  const at = new Map<string, number>();
  for (let group = 0; group < groups.length; group += 1) {
    const lines = groups[group]?.lines ?? NO_LINES;
    // By index: walked otherwise, these lists make garbage with every line.
    for (let place = 0; place < lines.length; place += 1) {
      const line = lines[place];
      if (line?.of === undefined || isSpokenOf[line.of.order] === 0) continue;
      const key = placeKey(line.entry);
      if (!at.has(key)) at.set(key, group);
    }
  }
  return at;
};

/** Open checks by the matter they belong to: the first that holds a line they decided, found bad or read. */
const checksByGroup = (
  groups: readonly Group[],
  { crossChecks }: Pick<Comparison, "crossChecks">,
  sheet: Pick<CompiledSheet, "items">,
): ReadonlyMap<number, number[]> => {
  const open = openChecksOf(crossChecks);
  const at = groupsAt(groups, open, sheet);
  const of = new Map<number, number[]>();
  for (const { index, spoken } of open) {
    let first = Infinity;
    for (const place of spoken) first = Math.min(first, at.get(placeKey(place)) ?? Infinity);
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
 * @example matters(analyze(a, b, sheet), { a, b, sheet })[0]?.kind // "title"
 */
export const matters = (
  comparison: Pick<Comparison, "entries" | "crossChecks">,
  reports: Reports,
): JoinedMatter[] => {
  const ranking = rankingOf(reports.b);
  const groups = ranking.ranked(foldGroups(joinLines(comparison, reports.sheet), ranking));
  const checks = checksByGroup(groups, comparison, reports.sheet);
  return groups.map((group, place): JoinedMatter => {
    const lines = worstFirst(group.lines);
    const { certainty, admitted } = ranking.standing(group);
    return {
      kind: group.kind.id,
      zone: group.zone,
      severity: severityOf(lines),
      certainty,
      decides: group.kind.decides,
      next: nextStep(group),
      question: group.kind.ask,
      admitted,
      lines: lines.map(({ index }) => index),
      checks: checks.get(place) ?? [],
      costRows: costRowsOf(lines),
      group: { ...group, lines },
    };
  });
};
