import { leastCostAssignment } from "@evenhand/comparison/assignment";
import type { Meant } from "../propose/reading.ts";

/** A claim with what it may mean, and where it stands. */
export type Asking = { readonly at: number; readonly meant: readonly Meant[] };

const keysOf = ({ item, positions }: Meant): string[] =>
  positions.map((position) => `${item.id} ${position}`);

/** More rivals than these are the same thing written again and again, and no assignment helps. */
const MOST_RIVALS = 8;

/** Claims that ask for one place, in the order they stand; most places are asked for once. */
const rivals = (asking: readonly Asking[]): Asking[][] => {
  const byPlace = new Map<string, Asking[]>();
  for (const one of asking)
    for (const key of one.meant[0] === undefined ? [] : keysOf(one.meant[0])) {
      const group = byPlace.get(key);
      if (group === undefined) byPlace.set(key, [one]);
      else group.push(one);
    }
  const groups = [...byPlace.values()].filter(({ length }) => length > 1 && length <= MOST_RIVALS);
  return [...new Map(groups.map((group) => [group.map(({ at }) => at).join(), group])).values()];
};

/** A second meaning must be nearly as good as the first: a second compression is no leak-down. */
const SECOND = 0.8;
const isAsGood = (found: Meant, best: Meant | undefined): boolean =>
  best === undefined || found.confidence >= SECOND * best.confidence;

/** Heater hoses that are soft are what there is to say of the hoses, though others are good. */
const PRAISE = 0.06;

const costOf = (meant: Meant | undefined): number => {
  if (meant === undefined) return 2;
  const isWhole = meant.positions.length === 1 && meant.positions[0] === "";
  const isOfPart = isWhole && meant.answer.kind !== "working" && meant.answer.kind !== "reading";
  return 1 - meant.confidence + (isOfPart && meant.bad !== true ? PRAISE : 0);
};

const LATER = 0.03;

/** Costs of each claim for each thing that any of them may mean: what it is less than certain, and dear where it means it not at all. */
const costsOf = (
  group: readonly Asking[],
): { readonly ids: readonly string[]; readonly costs: number[][] } => {
  const open = group.map(({ meant }) => meant.filter((one) => isAsGood(one, meant[0])));
  const ids = [...new Set(open.flatMap((meant) => meant.map((one) => keysOf(one).join("|"))))];
  const costs = open.map((meant, row) => [
    // Of two that fit alike the first is meant, however many words the other's name has.
    ...ids.map((id) => costOf(meant.find((one) => keysOf(one).join("|") === id)) + (row > 0 ? LATER : 0)),
    // A claim may also be left without: dearer than a poor fit, the later the dearer.
    ...group.map((_, column) => (column === row ? 1.2 - 0.001 * row : 3)),
  ]);
  return { ids, costs };
};

/** Whether another claim answers the same otherwise. */
const isDisputed = (found: Meant, group: readonly Asking[]): boolean =>
  group.some(({ meant: [best] }) => {
    const isSame = best !== undefined && keysOf(best).join("|") === keysOf(found).join("|");
    return isSame && JSON.stringify(best.answer) !== JSON.stringify(found.answer);
  });

const assign = (group: readonly Asking[], chosen: Map<number, Meant | undefined>): void => {
  const { ids, costs } = costsOf(group);
  for (const [row, column] of leastCostAssignment(costs).entries()) {
    const one = group[row];
    if (one === undefined) continue;
    const found = one.meant.find((candidate) => keysOf(candidate).join("|") === ids[column]);
    const isSecond = found !== one.meant[0];
    const sure = found?.sure === true && !isSecond && !isDisputed(found, group);
    chosen.set(one.at, found === undefined ? undefined : { ...found, sure });
  }
};

/**
 * Which claim gets which item and place, where several ask for the same: the assignment that fits best over all of them. The others
 * mean their second best, or nothing.
 *
 * @returns by the number of the claim; `undefined` where it is left without
 */
export const settlePlaces = (asking: readonly Asking[]): ReadonlyMap<number, Meant | undefined> => {
  const chosen = new Map<number, Meant | undefined>(asking.map(({ at, meant }) => [at, meant[0]]));
  for (const group of rivals(asking)) assign(group, chosen);
  return chosen;
};
