import type { SettlementState } from "@evenhand/shared/settlement";
import type { MatterState } from "@evenhand/shared/summary";
import { owedIn } from "../owed-in/index.ts";

type Released = { readonly entry: number; readonly state: SettlementState };

const of: Readonly<Record<SettlementState, MatterState>> = {
  released: "laid",
  contested: "contested",
  "price-offered": "offered",
  "remedy-offered": "offered",
  "look-offered": "offered",
  refused: "laid",
  asked: "with-inspector",
  revising: "with-inspector",
  "looking-again": "with-inspector",
  promised: "promised",
  proved: "promised",
  accepted: "accepted",
  "finding-stands": "finding-stands",
  "statement-stands": "statement-stands",
  settled: "settled",
  "left-open": "left-open",
};

/** The farthest from settled first. */
const order: readonly MatterState[] = [
  "contested",
  "offered",
  "laid",
  "with-inspector",
  "promised",
  "left-open",
  "finding-stands",
  "accepted",
  "settled",
  "statement-stands",
];

/**
 * How one line stands, as a matter of nothing else would.
 *
 * @example lineState("revising") // "with-inspector"
 */
export const lineState = (state: SettlementState): MatterState => of[state];

/**
 * What became of a matter between buyer and dealer: that of its line that is farthest from settled, open while nothing of it was
 * laid before the dealer.
 *
 * @param lines indexes of the matter's lines
 * @param releases what was laid before the dealer, by line
 * @example matterState([4, 9], [{ entry: 9, state: "accepted" }]) // "accepted"
 * @example matterState([4, 9], []) // "open"
 */
export const matterState = (lines: readonly number[], releases: readonly Released[]): MatterState => {
  const its = new Set(lines);
  const states = new Set(releases.filter(({ entry }) => its.has(entry)).map(({ state }) => lineState(state)));
  return order.find((state) => states.has(state)) ?? "open";
};

export type DueRelease = Released & {
  /** When its next step is due, as an instant in UTC; `null` where no deadline was set. */
  readonly deadline: string | null;
};

/** The next step of a matter: whose it is, of a line in which state, and until when. */
export type MatterOwed = {
  readonly of: "buyer" | "dealer" | "inspector";
  readonly state: SettlementState;
  readonly until: string | null;
};

/**
 * What a line laid before the dealer waits for; `null` at an end.
 *
 * @example lineOwed({ state: "settled", deadline: null }) // null
 */
export const lineOwed = ({ state, deadline }: Pick<DueRelease, "state" | "deadline">): MatterOwed | null => {
  const owed = owedIn(state);
  return owed === null ? null : { of: owed.of, state, until: deadline };
};

const byDeadline = (one: DueRelease, other: DueRelease): number =>
  (one.deadline ?? "~") < (other.deadline ?? "~") ? -1 : 1;

/**
 * What the matter waits for: of the lines it is called after, the one that is due first.
 *
 * @param lines indexes of the matter's lines
 * @param releases what was laid before the dealer, by line
 * @returns `null` where nothing was laid, and where everything laid has ended
 * @example matterOwed([4], [{ entry: 4, state: "released", deadline: "2026-12-01T19:00:00.000Z" }])
 * // { of: "dealer", state: "released", until: "2026-12-01T19:00:00.000Z" }
 */
export const matterOwed = (lines: readonly number[], releases: readonly DueRelease[]): MatterOwed | null => {
  const called = matterState(lines, releases);
  const [first] = releases
    .filter(({ entry, state }) => lines.includes(entry) && lineState(state) === called)
    .toSorted(byDeadline);
  return first === undefined ? null : lineOwed(first);
};
