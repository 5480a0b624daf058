import { z } from "zod";
import { SEVERITIES } from "./terms.ts";

export { SEVERITIES };

/**
 * How grave what was found is, gravest first. It belongs to the answer, never to the item.
 * halt: send no money before this is cleared · danger: can hurt somebody · worth: what the price rests on ·
 * repair: money to put right · small: a trifle.
 */
export const Severity = z.enum(SEVERITIES);
export type Severity = z.infer<typeof Severity>;

/** What one answer is by itself, by the item's own yardstick: good, bad with its severity, or nothing to judge it by. */
export const CALLS = ["good", "no-yardstick", ...SEVERITIES] as const;
export const Call = z.enum(CALLS);
export type Call = z.infer<typeof Call>;

/**
 * Whether a call says that the thing is bad.
 *
 * @example isBadCall("repair") // true
 * @example isBadCall("no-yardstick") // false
 */
export const isBadCall = (call: Call | null | undefined): call is Severity =>
  call !== null && call !== undefined && call !== "good" && call !== "no-yardstick";

/**
 * Place of a severity from the gravest (0 = halt) to the least (4 = small).
 *
 * @example severityRank("danger") // 1
 */
export const severityRank = (severity: Severity): number => {
  // Compared one by one, and not searched for: it is asked several times a line.
  let rank = 0;
  while (rank < SEVERITIES.length && SEVERITIES[rank] !== severity) rank += 1;
  return rank;
};

/**
 * The graver of two severities; `null` is none.
 *
 * @example worseSeverity("small", "worth") // "worth"
 */
export const worseSeverity = (a: Severity | null, b: Severity | null): Severity | null =>
  a === null ? b : b === null ? a : severityRank(a) <= severityRank(b) ? a : b;

/**
 * What a purchase turns on: what stops the money, what can hurt somebody, what the price rests on.
 *
 * @example isDecisive("worth") // true
 * @example isDecisive(null) // false
 */
export const isDecisive = (severity: Severity | null | undefined): boolean =>
  severity === "halt" || severity === "danger" || severity === "worth";
