import type { DecisionRequest } from "@evenhand/shared/http/summaries";
import type { FieldProblem } from "@evenhand/shared/problem";
import type { Summary, SummaryItem } from "@evenhand/shared/summary";
import { ProblemError } from "../../platform/problems/problem-error.ts";

type Place = Pick<SummaryItem, "item" | "position">;
const key = ({ item, position }: Place): string => `${item} ${position}`;

/** Open safety items nobody has acknowledged, each place once. */
export function unacknowledged(summary: Summary, acknowledged: readonly Place[]): Place[] {
  const known = new Set(acknowledged.map(key));
  const open = new Map(summary.openSafety.map((item) => [key(item), item]));
  return [...open]
    .filter(([place]) => !known.has(place))
    .map(([, { item, position }]) => ({ item, position }));
}

/** @throws ProblemError `safety-unacknowledged` naming each */
export function checkAcknowledged(summary: Summary, { acknowledgements }: DecisionRequest): void {
  const open = unacknowledged(summary, acknowledgements);
  if (open.length === 0) return;
  throw new ProblemError(
    "safety-unacknowledged",
    "Say of each open safety item, in your own words, that you know of it. Each is named.",
    {
      problems: open.map((place): FieldProblem => ({
        at: "/acknowledgements",
        reason: "not acknowledged in words",
        ...place,
      })),
    },
  );
}

/** A counter-offer offers something. */
export function checkCounter({ decision, price, conditions }: DecisionRequest): void {
  if (decision !== "counter" || price !== undefined || conditions !== undefined) return;
  throw new ProblemError("invalid-fields", "A counter-offer names a price, conditions, or both.", {
    problems: [{ at: "/price", reason: "a counter-offer names a price, conditions, or both" }],
  });
}
