import type { Entry } from "@evenhand/shared/comparison";
import { SEVERITIES, severityRank } from "@evenhand/shared/severity";
import type { ExpectedLoss } from "../expected-loss/index.ts";

/** Outcomes that are discrepancies whatever their standing. */
const isDiscrepant = ({ outcome }: Entry): boolean =>
  outcome === "doubtful" || outcome === "differ" || outcome === "unstated";
/** Standings that ask for the buyer's eye whatever the outcome: a limit, a fault on which nothing was claimed. */
const isPressing = ({ standing }: Entry): boolean =>
  standing === "contradicted-by-figures" ||
  standing === "differs" ||
  standing === "in-doubt" ||
  standing === "not-mentioned";

/**
 * Whether an entry is a discrepancy: doubtful, differing, unstated, contradicted by figures, or agreeing within δ on two
 * sides of a limit.
 */
export const isDiscrepancy = (entry: Entry): boolean =>
  entry.standing === "contradicted-by-figures" ||
  ((isDiscrepant(entry) || isPressing(entry)) && entry.coverageOnly !== true);

/** A flat assertion that fails outranks a hedge, a hedge what was never claimed. */
const FIRMNESS_RANK = { asserted: 0, hedged: 1, "second-hand": 2 } as const;
const NEVER_CLAIMED = 3;
/** Behind every severity: nothing is known to be wrong. */
const NONE = SEVERITIES.length;

const FIRMNESSES = NEVER_CLAIMED + 1;

const rankOf = ({ severity }: Entry): number => (severity === null ? NONE : severityRank(severity));
const firmnessOf = ({ firmness }: Entry): number =>
  firmness.a === null ? NEVER_CLAIMED : FIRMNESS_RANK[firmness.a];

/** Indexes by severity, and within one by firmness; in each list they rise. */
type Shelves = readonly (readonly number[])[];

/** What the entries of one severity cost decides before their firmness: sorting leaves those alike as they stood. */
const dearestFirst = (indexes: number[], losses: ReadonlyMap<number, number>): number[] =>
  losses.size === 0 ? indexes : indexes.sort((a, b) => (losses.get(b) ?? 0) - (losses.get(a) ?? 0));

const inOrder = (shelves: Shelves, losses: ReadonlyMap<number, number>): number[] => {
  const ordered: number[] = [];
  for (let first = 0; first < shelves.length; first += FIRMNESSES) {
    const indexes = shelves.slice(first, first + FIRMNESSES).flat();
    for (const index of dearestFirst(indexes, losses)) ordered.push(index);
  }
  return ordered;
};

/** What both say is bad costs and ranks as what it is, though nobody disputes it. */
const isAgreedFault = ({ standing }: Entry): boolean => standing === "agreed-fault";

/**
 * The discrepancies and what both say is bad, most pressing first: by the severity of what was found (halt, danger, worth, repair, small); within one by
 * the chance that it falls due × middle cost to put right; then a flat assertion before a hedge; then sheet order. An open lien stands
 * before a chip in the glass, whatever either costs.
 *
 * @param lossOf what an entry is expected to cost
 * @returns indexes into `entries`; same input, same order
 * @example order(entries, () => ({ state: "unset" })) // [41, 7, 12, …]
 */
export const order = (entries: readonly Entry[], lossOf: (entry: Entry) => ExpectedLoss): number[] => {
  const shelves = Array.from({ length: (NONE + 1) * FIRMNESSES }, (): number[] => []);
  const losses = new Map<number, number>();
  for (let index = 0; index < entries.length; index += 1) {
    const entry = entries[index];
    if (entry === undefined || !(isDiscrepancy(entry) || isAgreedFault(entry))) continue;
    shelves[rankOf(entry) * FIRMNESSES + firmnessOf(entry)]?.push(index);
    const loss = lossOf(entry);
    if (loss.state === "set") losses.set(index, loss.minor);
  }
  return inOrder(shelves, losses);
};
