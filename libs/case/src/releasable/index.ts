import type { Entry } from "@evenhand/shared/comparison";

/** Why an entry cannot be laid before the dealer. */
export type NotReleasable = "found-better" | "nothing-to-dispute";

const disputed: ReadonlySet<Entry["outcome"]> = new Set(["differ", "unstated", "doubtful"]);

/**
 * What differs, is unstated, doubtful or breaks a rule may be laid before the dealer; never what was found better than stated, and
 * nothing on which both agree.
 *
 * @example whyNotReleasable(entry) // "found-better"
 */
export function whyNotReleasable(
  entry: Pick<Entry, "outcome" | "direction" | "standing" | "coverageOnly">,
): NotReleasable | null {
  if (entry.direction === "found-better") return "found-better";
  const open = disputed.has(entry.outcome) || entry.standing === "contradicted-by-figures";
  return open && entry.coverageOnly !== true ? null : "nothing-to-dispute";
}
