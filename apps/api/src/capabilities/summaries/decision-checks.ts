import { matterWords, unanswered } from "@evenhand/decision/open-matters";
import type { DecisionRequest } from "@evenhand/shared/http/summaries";
import type { Summary } from "@evenhand/shared/summary";
import { ProblemError } from "../../platform/problems/problem-error.ts";

const why = {
  "not-answered": "say what you will do about it",
  "no-words": "say in your own words, at least ten characters, what you know of it and why",
} as const;

/** @throws ProblemError `matters-unanswered` naming each */
export function checkAcknowledged({ openMatters }: Summary, { acknowledgements }: DecisionRequest): void {
  const open = unanswered(openMatters, acknowledgements);
  if (open.length === 0) return;
  throw new ProblemError(
    "matters-unanswered",
    "Say of each matter that stops the money or can hurt somebody what you will do about it. Each is named.",
    {
      problems: open.map(({ matter, because }) => ({
        at: "/acknowledgements",
        reason: `${matterWords(matter)}: ${why[because]}`,
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
