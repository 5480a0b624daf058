import type { Atom, Figures, LimitFigures } from "@evenhand/shared/comparison";
import type { Mark } from "@evenhand/shared/comparison";
import type { Direction, Outcome, Standing } from "@evenhand/shared/outcome";
import type { Reason } from "../reason/index.ts";

/** What a comparison of two answers says; the place, the findings and the atom are added outside. */
export type Judgment = {
  readonly outcome: Outcome;
  readonly reason: Reason;
  readonly direction: Direction;
  readonly standing: Standing;
  readonly figures?: Figures | undefined;
  readonly limits?: LimitFigures[] | undefined;
  readonly marks?: readonly Mark[] | undefined;
  /** Seen, sound and not stated. */
  readonly coverageOnly?: boolean | undefined;
};

/**
 * What is said in the one shape that all of it has, whoever says it: every line looks into it, and looking into many shapes by turns is
 * slow. Who makes a judgment a line writes all eight parts in this order.
 */
export const inOneShape = ({
  outcome,
  reason,
  direction,
  standing,
  figures,
  limits,
  marks,
  coverageOnly,
}: Judgment): Judgment => ({ outcome, reason, direction, standing, figures, limits, marks, coverageOnly });

/** One atom of an answer and what is said of it. */
export type AtomJudgment = { readonly atom: Atom; readonly said: Judgment };

/** Takes one atom of an answer and what is said of it, in the order of the lines. */
export type Say = (atom: Atom, said: Judgment) => void;

/** The atom of an answer that is compared as a whole; one object for all of them, so that nobody may write to it. */
export const WHOLE: Atom = Object.freeze({ of: "answer" });

/** The mark of what both say is bad. */
export const BOTH_BAD: readonly Mark[] = Object.freeze<Mark[]>(["both-bad"]);

/** A sound place the statement did not speak of: nothing to agree on, counted in coverage alone. */
export const SEEN_SOUND = inOneShape({
  outcome: "consistent",
  reason: "seen-sound-not-stated",
  direction: "neither",
  standing: "not-mentioned",
  coverageOnly: true,
});
