import type { Entry } from "@evenhand/shared/comparison";
import { Consequence } from "@evenhand/shared/sheet";
import type { ExpectedLoss } from "../expected-loss/index.ts";

/** Outcomes that are discrepancies whatever their standing. */
const DISCREPANT: ReadonlySet<string> = new Set(["doubtful", "differ", "unstated"]);
/** Standings that ask for the buyer's eye whatever the outcome: a limit, a fault on which nothing was claimed. */
const PRESSING: ReadonlySet<string> = new Set([
  "contradicted-by-figures",
  "differs",
  "in-doubt",
  "not-mentioned",
]);

/**
 * Whether an entry is a discrepancy: doubtful, differing, unstated, contradicted by figures, or agreeing within δ on two
 * sides of a limit.
 */
export const isDiscrepancy = (entry: Entry): boolean =>
  entry.standing === "contradicted-by-figures" ||
  (entry.coverageOnly !== true && (DISCREPANT.has(entry.outcome) || PRESSING.has(entry.standing)));

const CONSEQUENCE_RANK = new Map(Consequence.options.map((consequence, rank) => [consequence, rank]));
/** Safety, identity and structure: what no price is set on here stands before what is priced, the rest after it. */
const LAST_DECISIVE = CONSEQUENCE_RANK.get("structure") ?? 0;

/** A flat assertion that fails outranks a hedge, a hedge what was never claimed. */
const FIRMNESS_RANK = { asserted: 0, hedged: 1, "second-hand": 2 } as const;
const NEVER_CLAIMED = 3;

type Key = {
  readonly index: number;
  readonly safety: number;
  /** Unset and decisive, set, unset. */
  readonly tier: number;
  readonly loss: number;
  readonly consequence: number;
  readonly firmness: number;
};

const keyOf = (entry: Entry, index: number, loss: ExpectedLoss): Key => {
  const consequence = CONSEQUENCE_RANK.get(entry.consequence) ?? CONSEQUENCE_RANK.size;
  const set = loss.state === "set";
  return {
    index,
    safety: entry.consequence === "safety" ? 0 : 1,
    tier: set ? 1 : consequence <= LAST_DECISIVE ? 0 : 2,
    loss: set ? loss.minor : 0,
    consequence: set ? 0 : consequence,
    firmness: entry.firmness.a === null ? NEVER_CLAIMED : FIRMNESS_RANK[entry.firmness.a],
  };
};

const morePressing = (a: Key, b: Key): number =>
  a.safety - b.safety ||
  a.tier - b.tier ||
  b.loss - a.loss ||
  a.consequence - b.consequence ||
  a.firmness - b.firmness ||
  a.index - b.index;

/**
 * The discrepancies, most pressing first: safety before all else; then by P(worse than stated) × middle cost to put
 * right, where what has no price goes by its consequence (identity and structure before what is priced, the rest after);
 * then a flat assertion before a hedge; then sheet order.
 *
 * @param lossOf what an entry is expected to cost
 * @returns indexes into `entries`; same input, same order
 * @example order(entries, () => ({ state: "unset" })) // [41, 7, 12, …]
 */
export const order = (entries: readonly Entry[], lossOf: (entry: Entry) => ExpectedLoss): number[] => {
  const keys: Key[] = [];
  for (const [index, entry] of entries.entries()) {
    if (isDiscrepancy(entry)) keys.push(keyOf(entry, index, lossOf(entry)));
  }
  return keys.sort(morePressing).map(({ index }) => index);
};
