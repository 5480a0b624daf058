import type { Certainty } from "@evenhand/shared/matter";
import { CERTAINTIES } from "@evenhand/shared/matter";
import { shownAs } from "@evenhand/shared/dearer-first";
import type { Report } from "@evenhand/shared/report";
import { findingOf } from "@evenhand/comparison/finding-of";
import { kindOrder } from "../kinds/index.ts";
import type { Group } from "../join/line.ts";
import { certaintyByOutcome, certaintyOf } from "../weight/index.ts";
import { ZONES } from "../zone/index.ts";

const rankOf = new Map(CERTAINTIES.map((certainty, index) => [certainty, index]));

/**
 * How sure a matter is: as sure as its strongest line of those as weighty as any.
 *
 * @example certaintyOfGroup(brakes, inspection) // "measured"
 */
export const certaintyOfGroup = (group: Group, found: Pick<Report, "findings">): Certainty => {
  const weight = Math.floor(group.weight);
  let best: Certainty = "unknown";
  for (const { entry, weight: own } of group.lines) {
    if (Math.floor(own) > weight) continue;
    const certainty =
      certaintyByOutcome(entry) ?? certaintyOf(entry, findingOf(found.findings, entry.finding.b));
    if (certainty === "measured") return certainty;
    if ((rankOf.get(certainty) ?? 0) < (rankOf.get(best) ?? 0)) best = certainty;
  }
  return best;
};

const TRIFLE = 4;

/** Both say it is bad, and nothing but trifles was found beside it. */
export const isAdmitted = ({ lines }: Group): boolean => {
  let isFound = false;
  for (const { entry, weight, gap } of lines) {
    if (weight >= TRIFLE || gap) continue;
    if (entry.standing !== "agreed-fault") return false;
    isFound = true;
  }
  return isFound;
};

const sureness = (certainty: Certainty): number => rankOf.get(shownAs(certainty)) ?? 0;

/** Whatever nobody spoke of, made one, stands before the trifles: it is no finding, and the answer names it by itself. */
const UNSPOKEN = 3.75;

type Key = readonly number[];

/** How sure a group is, whether both say it is bad, and where that puts it. */
export type Standing = { readonly certainty: Certainty; readonly admitted: boolean; readonly key: Key };

const standingOf = (group: Group, found: Pick<Report, "findings">): Standing => {
  const certainty = certaintyOfGroup(group, found);
  const admitted = isAdmitted(group);
  const key = [
    group.kind.id === "unseen" ? UNSPOKEN : group.weight,
    sureness(certainty),
    admitted ? 1 : 0,
    kindOrder(group.kind.id),
    group.zone === null ? ZONES.length : ZONES.indexOf(group.zone),
    group.first,
  ];
  return { certainty, admitted, key };
};

const compareKeys = (a: Key, b: Key): number => {
  for (let index = 0; index < a.length; index += 1) {
    const difference = (a[index] ?? 0) - (b[index] ?? 0);
    if (difference !== 0) return difference;
  }
  return 0;
};

/** Which groups stand before which. A group's place is worked out once, however often it is asked to be put among others. */
export type Ranking = {
  readonly standing: (group: Group) => Standing;
  /** Groups worst first. */
  readonly ranked: (groups: readonly Group[]) => Group[];
  /** How many of some that are ranked stand before a group. */
  readonly stands: (group: Group, ranked: readonly Group[]) => number;
};

/**
 * Puts groups worst first: halt, danger, worth, repair, small by their weightiest line; within one what was shown before what was said
 * or is in doubt, what nobody admitted before what both say, then in the order of the kinds; what is
 * dearer is the reader's own table's to say (`dearerFirst`).
 *
 * @param found the inspector's report
 */
export const rankingOf = (found: Pick<Report, "findings">): Ranking => {
  const known = new Map<Group, Standing>();
  const standing = (group: Group): Standing => {
    const kept = known.get(group);
    if (kept !== undefined) return kept;
    const made = standingOf(group, found);
    known.set(group, made);
    return made;
  };
  const ranked = (groups: readonly Group[]): Group[] =>
    groups
      .map((group) => ({ group, key: standing(group).key }))
      .sort((a, b) => compareKeys(a.key, b.key))
      .map(({ group }) => group);
  const stands = (group: Group, others: readonly Group[]): number => {
    const { key } = standing(group);
    return others.findLastIndex((other) => compareKeys(standing(other).key, key) <= 0) + 1;
  };
  return { standing, ranked, stands };
};
