import type { DecisionRequest } from "@evenhand/shared/http/summaries";

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
