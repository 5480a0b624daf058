import type { DecisionRequest } from "@evenhand/shared/http/summaries";

/** What somebody who counters lays on the table. */
export type Offer = Pick<DecisionRequest, "price" | "conditions" | "until">;

/**
 * Whether a decision is a counter-offer that offers nothing: neither a price nor conditions.
 *
 * @example isEmptyCounter({ decision: "counter" }) // true
 */
export const isEmptyCounter = ({
  decision,
  price,
  conditions,
}: Pick<DecisionRequest, "decision" | "price" | "conditions">): boolean =>
  decision === "counter" && price === undefined && conditions === undefined;

/** An offer nobody can wait for any more: a slip of the year. */
const MOST_DAYS = 180;
const DAY = 86_400_000;

/**
 * What is wrong with until when an offer is to stand: it is over already, or further off than half a year.
 *
 * @param now when it is made
 * @returns `null` where nothing is, as where it stands until it is answered
 * @example wrongUntil({ until: "2027-05-01T00:00:00Z" }, new Date("2027-05-04T00:00:00Z")) // "over"
 */
export const wrongUntil = ({ until }: Pick<Offer, "until">, now: Date): "over" | "too-far" | null => {
  if (until === undefined) return null;
  const left = new Date(until).getTime() - now.getTime();
  if (left <= 0) return "over";
  return left > MOST_DAYS * DAY ? "too-far" : null;
};
