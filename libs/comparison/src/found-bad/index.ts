import type { Entry } from "@evenhand/shared/comparison";

/**
 * Whether the severity of an entry says what was found, and not only what could be: a place nobody looked at *could* hurt
 * somebody, a loose ball joint *can*. It brings no contract along, since the comparison's page is drawn with it.
 *
 * @example isFoundBad({ calls: { a: null, b: null }, standing: "unseen" }) // false
 * @example isFoundBad({ calls: { a: "good", b: "danger" }, standing: "differs" }) // true
 */
export const isFoundBad = ({ calls, standing }: Pick<Entry, "calls" | "standing">): boolean =>
  (calls.b !== null && calls.b !== "good" && calls.b !== "no-yardstick") ||
  standing === "contradicted-by-figures" ||
  standing === "agreed-fault";
