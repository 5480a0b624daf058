import { isEmptyCounter, type Offer, wrongUntil } from "@evenhand/decision/counter-offer";
import { unanswered } from "@evenhand/decision/matter-answers";
import type { DecisionRequest } from "@evenhand/shared/http/summaries";
import type { Summary } from "@evenhand/shared/summary";
import { ProblemError } from "../../platform/problems/problem-error.ts";

const why = {
  "not-answered": "say what you will do about it",
  "no-words": "say in your own words, at least ten characters, what you know of it and why",
  "same-words": "say what you know of this one by itself: these words stand at another matter already",
  "not-open": "this is none of the summary's open matters; leave it out",
} as const;

/** @throws ProblemError `matters-unanswered` naming each */
export function checkAcknowledged({ openMatters }: Summary, { acknowledgements }: DecisionRequest): void {
  const open = unanswered(openMatters, acknowledgements);
  if (open.length === 0) return;
  const names = new Map(openMatters.map(({ id, name }) => [id, name]));
  throw new ProblemError(
    "matters-unanswered",
    "Say of each matter that stops the money or can hurt somebody what you will do about it. Each is named.",
    {
      problems: open.map(({ matter, because }) => ({
        at: "/acknowledgements",
        reason: `${names.get(matter) ?? matter}: ${why[because]}`,
      })),
    },
  );
}

/** A counter-offer offers something. */
export function checkCounter(request: Offer & { readonly decision: DecisionRequest["decision"] }): void {
  if (!isEmptyCounter(request)) return;
  throw new ProblemError("invalid-fields", "A counter-offer names a price, conditions, or both.", {
    problems: [{ at: "/price", reason: "a counter-offer names a price, conditions, or both" }],
  });
}

const untilWords = {
  over: "a time that has not passed yet",
  "too-far": "a time within half a year",
} as const;

/** An offer stands until a time that somebody can answer by. */
export function checkUntil(offer: Offer, now: Date): void {
  const wrong = wrongUntil(offer, now);
  if (wrong === null) return;
  throw new ProblemError("invalid-fields", "An offer stands until a time that is still to come.", {
    problems: [{ at: "/until", reason: untilWords[wrong] }],
  });
}
