import type { Comparison, Entry } from "@evenhand/shared/comparison";

type Tally = Pick<Comparison, "tally" | "standings">;

const empty = (): Tally => ({
  tally: { agree: 0, consistent: 0, doubtful: 0, differ: 0, unseen: 0, unstated: 0, incomparable: 0 },
  standings: {
    confirmed: 0,
    "not-contradicted": 0,
    "too-coarse": 0,
    "in-doubt": 0,
    differs: 0,
    "contradicted-by-figures": 0,
    "not-mentioned": 0,
    unseen: 0,
    "not-comparable": 0,
    "agreed-fault": 0,
  },
});

/**
 * How many entries have each outcome and each standing. What was seen, sound and not stated is counted in coverage
 * alone, unless a rule contradicts it.
 *
 * @example tallyOf(entries).tally.differ // 9
 */
export const tallyOf = (entries: readonly Entry[]): Tally => {
  const counts = empty();
  for (const { outcome, standing, coverageOnly } of entries) {
    if (coverageOnly !== true) counts.tally[outcome] += 1;
    if (coverageOnly !== true || standing === "contradicted-by-figures") counts.standings[standing] += 1;
  }
  return counts;
};
