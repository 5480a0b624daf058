import type { Evidence, SettlementActor, SettlementMove, SettlementState } from "@evenhand/shared/settlement";
import { owedIn } from "../owed-in/index.ts";
import { SETTLEMENT_STATES } from "../settlement-states/index.ts";
import { decideMove, hasEnded, type StateRefusal } from "../state-table/index.ts";

/** The four ways in which settling ends. An accepted finding stands. */
export type SettlementEnd = "finding-stands" | "statement-stands" | "settled" | "left-open";

/**
 * How it ended; `null` while it is open.
 *
 * @example endOf("accepted") // "finding-stands"
 */
export function endOf(state: SettlementState): SettlementEnd | null {
  switch (state) {
    case "accepted":
    case "finding-stands":
      return "finding-stands";
    case "statement-stands":
    case "settled":
    case "left-open":
      return state;
    default:
      return null;
  }
}

/** States in which the fault is established: the dealer accepted it, or it was upheld. */
export const UPHELD: readonly SettlementState[] = ["accepted", "finding-stands"];

/**
 * What silence comes to in a state; `null` at an end.
 *
 * @example lapseOf("proved") // "settled"
 */
export function lapseOf(state: SettlementState): SettlementState | null {
  const lapsed = decideMove(SETTLEMENT_STATES, state, "lapse", "clock");
  return lapsed.kind === "moved" ? lapsed.to : null;
}

/** Moves that are nothing without a word of why. */
const needWords: ReadonlySet<SettlementMove> = new Set([
  "accept",
  "contest",
  "offer-remedy",
  "prove",
  "refuse",
  "stand",
]);

/** Whether a move is nothing without words. */
export const needsWords = (move: SettlementMove): boolean => needWords.has(move);

/**
 * Moves this actor can make in a state, in the table's order.
 *
 * @example movesOf("asked", "inspector") // ["stand", "revise", "look-again"]
 */
export const movesOf = (state: SettlementState, actor: SettlementActor): SettlementMove[] =>
  SETTLEMENT_STATES.rows
    .filter(({ from, actors }) => from.includes(state) && actors.includes(actor))
    .map(({ move }) => move);

/**
 * Whether a move is this actor's in any state.
 *
 * @example isMoveOf("stand", "buyer") // false
 */
export const isMoveOf = (move: SettlementMove, actor: SettlementActor): boolean =>
  SETTLEMENT_STATES.rows.some((row) => row.move === move && row.actors.includes(actor));

/** A line as it stands. `deadline` in epoch milliseconds. */
export type Settlement = { readonly state: SettlementState; readonly deadline: number | null };

export type Given = { readonly words: string | null; readonly evidence: readonly Evidence[] };

export type SettlementRefusal =
  | StateRefusal<SettlementState, SettlementMove, SettlementActor>
  /** The hours were over before the move came: it stands as silence left it. */
  | { readonly code: "lapsed"; readonly state: SettlementState }
  /** The hours are not over yet. */
  | { readonly code: "not-due"; readonly state: SettlementState }
  | { readonly code: "words-missing"; readonly state: SettlementState };

export type SettlementDecision =
  /** `hours`: how long the next one has, in working hours of the site; `null` at an end. */
  | { readonly kind: "moved"; readonly to: SettlementState; readonly hours: number | null }
  | { readonly kind: "refused"; readonly refusal: SettlementRefusal };

const refuse = (refusal: SettlementRefusal): SettlementDecision => ({ kind: "refused", refusal });

/**
 * Decides a move on a line. A deadline that is past counts whether or not anybody has noted it: what comes after it finds the line
 * as silence left it, and only the clock moves it there.
 *
 * @param now epoch milliseconds
 * @example decide({ state: "released", deadline: 20 }, "accept", "dealer", 10, { words: "They are worn.", evidence: [] })
 * // { kind: "moved", to: "accepted", hours: null }
 */
export function decide(
  { state, deadline }: Settlement,
  move: SettlementMove,
  actor: SettlementActor,
  now: number,
  { words }: Given,
): SettlementDecision {
  const due = deadline !== null && now >= deadline && !hasEnded(SETTLEMENT_STATES, state);
  const late = due ? lapseOf(state) : null;
  if (late !== null && actor !== "clock") return refuse({ code: "lapsed", state: late });
  const moved = decideMove(SETTLEMENT_STATES, state, move, actor);
  if (moved.kind === "refused") return moved;
  if (actor === "clock" && !due) return refuse({ code: "not-due", state });
  if (needsWords(move) && actor !== "seal" && (words ?? "").trim() === "")
    return refuse({ code: "words-missing", state });
  return { kind: "moved", to: moved.to, hours: owedIn(moved.to)?.hours ?? null };
}
