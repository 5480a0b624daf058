import { kindOf } from "../kinds/index.ts";
import type { Family } from "../kinds/kind.ts";
import type { Group } from "../join/line.ts";
import { groupOf, groupOfGroups, partLines } from "../join/line.ts";
import type { Ranking } from "../order/index.ts";
import { isUnasked } from "../weight/index.ts";

/** What anybody holds in mind, and what a telephone call has room for. */
const ENOUGH = 12;
/** More is a defect of the grouping. */
const MOST = 15;
const REPAIR = 3;
const SMALL = 4;

const merged = (kind: string, groups: readonly Group[]): Group => groupOfGroups(kindOf(kind), null, groups);

const isTrifle = (group: Group): boolean => group.weight >= SMALL;
/** A number or a paper is put right by nobody's tools, and is telephoned about by itself. */
const NO_REPAIR: ReadonlySet<string> = new Set(["unknown", "papers", "numbers", "identity"]);
const isRepair = (group: Group): boolean =>
  !NO_REPAIR.has(group.kind.family) && group.weight >= REPAIR && !isTrifle(group);
const isUnseen = ({ kind }: Group): boolean => kind.family === "unknown" && kind.id !== "no-yardstick";
const isClaims = (group: Group): boolean => isUnseen(group) && group.kind.id !== "unseen";

/** Of some groups, the last ones made one, so that no more than `ENOUGH` are left, but `keep` of them stay by themselves. */
const foldLast = (
  groups: readonly Group[],
  { of, keep, into }: { of: (group: Group) => boolean; keep: number; into: string },
  { ranked }: Ranking,
): readonly Group[] => {
  const over = groups.length - ENOUGH;
  if (over <= 0) return groups;
  // What has been folded before takes more before anything else is folded.
  const candidates = ranked(groups.filter(of)).sort(
    (a, b) => Number(a.kind.id === into) - Number(b.kind.id === into),
  );
  const count = Math.min(candidates.length - keep, over + 1);
  if (count < 2) return groups;
  const last = new Set(candidates.slice(candidates.length - count));
  return [...groups.filter((group) => !last.has(group)), merged(into, [...last])];
};

/** What nobody spoke of, whatever it would have needed, made one; what was claimed or asked for stays by what it needs. */
const unaskedApart = (groups: readonly Group[]): readonly Group[] => {
  const unasked: Group[] = [];
  const others = groups.flatMap((group): Group[] => {
    if (!isUnseen(group)) return [group];
    const { held: silent, others: asked } = partLines(group.lines, ({ entry }) => isUnasked(entry));
    if (silent.length === 0) return [group];
    unasked.push(groupOf(group.kind, group.zone, silent));
    return asked.length === 0 ? [] : [groupOf(group.kind, group.zone, asked)];
  });
  return unasked.length === 0 ? groups : [...others, merged("unseen", unasked)];
};

/** Where the last one of a family before a place stands; -1 where none does. */
const lastOfFamily = (family: Family | undefined, ranked: readonly Group[], before: number): number => {
  let at = before - 1;
  while (at >= 0 && ranked[at]?.kind.family !== family) at -= 1;
  return at;
};

/** Where the last group that another of its family stands before stands, and that one; nothing where no two are of one family. */
const lastTwo = (ranked: readonly Group[]): readonly [graver: number, last: number] | undefined => {
  for (let last = ranked.length - 1; last > 0; last -= 1) {
    const graver = lastOfFamily(ranked[last]?.kind.family, ranked, last);
    if (graver >= 0) return [graver, last];
  }
  return undefined;
};

/** Two groups of one family as one, the graver giving its name. */
const foldedInto = (graver: Group, other: Group): Group =>
  groupOfGroups(graver.kind, graver.zone, [graver, other], graver.zone === null ? graver.elsewhere : true);

/** While there are too many, the two last of one family made one, the graver giving its name. */
const foldFamilies = (groups: readonly Group[], { ranked, stands }: Ranking): readonly Group[] => {
  if (groups.length <= MOST) return groups;
  const left = ranked(groups);
  while (left.length > MOST) {
    const two = lastTwo(left);
    if (two === undefined) break;
    const [group] = left.splice(two[1], 1);
    const [graver] = left.splice(two[0], 1);
    if (graver === undefined || group === undefined) break;
    const folded = foldedInto(graver, group);
    left.splice(stands(folded, left), 0, folded);
  }
  return left;
};

/**
 * About a dozen: trifles fold into one; where there are too many, repairs and then what nobody saw fold from the last, and at the
 * worst what is of one family, so that there are never more than fifteen.
 *
 * @param ranking which group stands before which
 */
export const foldGroups = (groups: readonly Group[], ranking: Ranking): readonly Group[] => {
  const trifles = groups.filter(isTrifle);
  let left: readonly Group[] =
    trifles.length === 0
      ? groups
      : [...groups.filter((group) => !isTrifle(group)), merged("small-things", trifles)];
  if (left.length > ENOUGH) left = unaskedApart(left);
  for (const keep of [2, 0]) {
    left = foldLast(left, { of: isRepair, keep, into: "repairs" }, ranking);
    left = foldLast(left, { of: isClaims, keep, into: "unseen-claims" }, ranking);
  }
  return foldFamilies(left, ranking);
};
