import type { MatterState } from "@evenhand/shared/summary";

type Released = { readonly entry: number; readonly state: "released" | "accepted" | "contested" };

/**
 * What became of a matter between buyer and dealer: open while nothing of it was laid before the dealer, contested where anything
 * of it is, laid while anything waits for an answer, accepted once everything laid is.
 *
 * @param lines indexes of the matter's lines
 * @param releases what was laid before the dealer, by line
 * @example matterState([4, 9], [{ entry: 9, state: "accepted" }]) // "accepted"
 * @example matterState([4, 9], []) // "open"
 */
export const matterState = (lines: readonly number[], releases: readonly Released[]): MatterState => {
  const of = new Set(lines);
  const states = new Set(releases.filter(({ entry }) => of.has(entry)).map(({ state }) => state));
  if (states.has("contested")) return "contested";
  if (states.has("released")) return "laid";
  return states.has("accepted") ? "accepted" : "open";
};
