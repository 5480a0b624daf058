import type { Outcome, Standing } from "@evenhand/shared/outcome";

/** What beside the outcome decides how an item stands for the buyer. */
export type StandingFacts = {
  /** Both sides say it is bad. */
  readonly bothBad?: boolean;
  /** The answers could not have confirmed it, whatever they were. */
  readonly tooCoarse?: boolean;
};

const BY_OUTCOME: Readonly<Record<Outcome, Standing>> = {
  agree: "confirmed",
  consistent: "not-contradicted",
  doubtful: "in-doubt",
  differ: "differs",
  unseen: "unseen",
  unstated: "not-mentioned",
  incomparable: "not-comparable",
};

/**
 * How an entry stands for the buyer. What both call bad is an agreed fault, unless how bad is
 * itself in doubt.
 *
 * @example standingOf("agree", { bothBad: true }) // "agreed-fault"
 * @example standingOf("consistent", { tooCoarse: true }) // "too-coarse"
 */
export const standingOf = (outcome: Outcome, facts: StandingFacts = {}): Standing => {
  if (outcome !== "agree" && outcome !== "consistent") return BY_OUTCOME[outcome];
  if (facts.bothBad === true) return "agreed-fault";
  return outcome === "consistent" && facts.tooCoarse === true ? "too-coarse" : BY_OUTCOME[outcome];
};
