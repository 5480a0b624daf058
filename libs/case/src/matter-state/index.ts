import type { SettlementState } from "@evenhand/shared/settlement";
import type { MatterState } from "@evenhand/shared/summary";

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
