import { type Comparison, type Entry, isUnjudged } from "@evenhand/shared/comparison";
import type { CostTable } from "@evenhand/shared/cost-table";
import type { Report } from "@evenhand/shared/report";
import { type Severity, severityRank } from "@evenhand/shared/severity";
import type { Item, Sheet } from "@evenhand/shared/sheet";
import { KNOWN, type Known } from "@evenhand/shared/http/money";
import { isAskedOnVisit } from "@evenhand/sheet/asked-at";
import { looksAtStake } from "../looks-at-stake/index.ts";
import { varianceTold } from "../worth-of-looking/index.ts";
import { evsi } from "../worth-of-reading/index.ts";

/** As many as anybody reads. */
export const PUT_FIRST = 12;

/** An item to look at, and why. */
export type FirstLook = {
  readonly item: string;
  /** The sheet's, for all of the item. */
  readonly minutes: number;
  /** How grave it can be. */
  readonly severity: Severity;
  readonly known: Known;
  /** It was agreed that it is looked at again. */
  readonly again: boolean;
  /** Whether it stands where it does by what it would decide in money; halt and danger never do. */
  readonly byWorth: boolean;
};

export type LookFirstInput = {
  /** Of the statement with what was found; before any visit with a report that has no findings. */
  readonly comparison: Pick<Comparison, "entries">;
  readonly found: Report;
  readonly sheet: Sheet;
  /** The buyer's own; `null` where none is kept, and nothing is put in money. */
  readonly table: CostTable | null;
  /** What would be left to the buyer on the mean, in the table's currency: 0 as if the purchase stood on the edge. */
  readonly left: number;
  /** Items of which it was agreed that they are looked at again: before all others. */
  readonly again: ReadonlySet<string>;
};

type Candidate = Omit<FirstLook, "byWorth"> & { readonly variance: number; readonly place: number };

/** Nobody knows, or what is said of it does not fit together. */
const isOpen = (entry: Entry): boolean => {
  if (entry.coverageOnly === true || entry.severity === null) return false;
  if (entry.standing === "contradicted-by-figures") return entry.finding.b === null;
  return (
    entry.outcome === "unseen" ||
    entry.outcome === "doubtful" ||
    entry.outcome === "incomparable" ||
    isUnjudged(entry)
  );
};

const knownOf = ({ outcome, standing, calls, firmness }: Entry): Known => {
  if (outcome === "doubtful" || standing === "contradicted-by-figures") return "parted";
  if (outcome === "incomparable") return "incomparable";
  if (calls.a === null) return "silent";
  return firmness.a === "asserted" ? "claimed" : "unsure";
};

const rankOf = ({ severity }: Pick<FirstLook, "severity">): number => severityRank(severity);
const knownRank = ({ known }: Pick<FirstLook, "known">): number => KNOWN.indexOf(known);

type Weighed = Pick<Candidate, "again" | "variance" | "place">;

const candidateOf = (
  { id, minutes, severity: own }: Item,
  lines: readonly Entry[],
  weighed: Weighed,
): Candidate[] => {
  const stakes = lines
    .flatMap((entry) =>
      entry.severity === null ? [] : [{ severity: entry.severity, known: knownOf(entry) }],
    )
    .toSorted((a, b) => rankOf(a) - rankOf(b) || knownRank(a) - knownRank(b));
  // What it was agreed to look at again is, though nothing is open of it any more.
  const agreed = weighed.again ? { severity: own, known: "claimed" as const } : undefined;
  const gravest = stakes[0] ?? agreed;
  return gravest === undefined ? [] : [{ item: id, minutes, ...gravest, ...weighed }];
};

/** What each item moves of what is expected to fall due; what several tell together is shared among them. */
function varianceByItem(input: LookFirstInput): ReadonlyMap<string, number> {
  const { table } = input;
  const of = new Map<string, number>();
  if (table === null) return of;
  for (const look of looksAtStake({ ...input, table })) {
    const share = varianceTold(look) / look.items.length;
    for (const item of look.items) of.set(item, (of.get(item) ?? 0) + share);
  }
  return of;
}

/** Least known first, then what decides most a minute, then the quickest. */
const asUrgent = (a: Candidate, b: Candidate): number =>
  rankOf(a) - rankOf(b) ||
  knownRank(a) - knownRank(b) ||
  b.variance / b.minutes - a.variance / a.minutes ||
  a.minutes - b.minutes ||
  a.place - b.place;

/** One after another, always what adds most a minute to what the ones before it are worth together. */
function byWorth(candidates: readonly Candidate[], left: number, before: number): Candidate[] {
  const order: Candidate[] = [];
  let rest = [...candidates];
  let variance = before;
  const worth = (of: number): number => evsi({ left, spread: Math.sqrt(of), uncertainty: 0 });
  while (rest.length > 0) {
    const known = worth(variance);
    const [next] = rest
      .map((one) => ({ one, gain: (worth(variance + one.variance) - known) / one.minutes }))
      .toSorted(
        (a, b) =>
          b.gain - a.gain ||
          b.one.variance / b.one.minutes - a.one.variance / a.one.minutes ||
          a.one.place - b.one.place,
      );
    if (next === undefined) break;
    order.push(next.one);
    variance += next.one.variance;
    rest = rest.filter((one) => one !== next.one);
  }
  return order;
}

const isFirst = ({ severity }: Pick<FirstLook, "severity">): boolean =>
  severity === "halt" || severity === "danger";

function candidatesOf(input: LookFirstInput): Candidate[] {
  const { comparison, sheet, again } = input;
  const variances = varianceByItem(input);
  const open = Map.groupBy(
    comparison.entries.filter((entry) => again.has(entry.item) || isOpen(entry)),
    ({ item }) => item,
  );
  return sheet.items.filter(isAskedOnVisit).flatMap((item, place) =>
    candidateOf(item, open.get(item.id) ?? [], {
      again: again.has(item.id),
      variance: variances.get(item.id) ?? 0,
      place,
    }),
  );
}

/** Halt and danger first; then what has a price; then the rest. */
function inOrder(candidates: readonly Candidate[], left: number, before: number): Candidate[] {
  const first = candidates.filter(isFirst).toSorted(asUrgent);
  const others = candidates.filter((one) => !isFirst(one));
  const priced = others.filter(({ variance }) => variance > 0);
  const unpriced = others.filter(({ variance }) => variance === 0);
  return [...first, ...byWorth(priced, left, before + sumOf(first)), ...unpriced.toSorted(asUrgent)];
}

const sumOf = (candidates: readonly Candidate[]): number =>
  candidates.reduce((sum, { variance }) => sum + variance, 0);

/**
 * In which order to look at a car: what it was agreed to look at again; what can stop the money, then what can hurt somebody, the
 * least known first; then what adds most a minute to what the looks before it are worth together; then what has no price, by how
 * grave it can be. Only what is open is in it: nobody has seen it, or what is said of it does not fit. What an instrument may be off
 * by is reckoned with. Each item once; the same input, the same order.
 *
 * The looks' worth is that of two acts with the sum taken as normal (`evsi`), since there are too many for every case to be counted.
 *
 * @example lookFirst({ comparison, found, sheet, table: null, left: 0, again: new Set() })[0]?.item // "identity.title-holder"
 */
export function lookFirst(input: LookFirstInput): FirstLook[] {
  const candidates = candidatesOf(input);
  const again = inOrder(
    candidates.filter((one) => one.again),
    input.left,
    0,
  );
  const others = inOrder(
    candidates.filter((one) => !one.again),
    input.left,
    sumOf(again),
  );
  return [...again, ...others].map(({ variance, place: _place, ...look }) => ({
    ...look,
    byWorth: variance > 0 && !isFirst(look),
  }));
}
