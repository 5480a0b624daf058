import type { CaseStep } from "@evenhand/shared/http/cases";
import { settlingStep } from "../owed-steps/index.ts";
import { owedIn } from "../owed-in/index.ts";
import type { CaseFacts } from "./facts.ts";
import { isBooking, isLooking } from "./visits.ts";

type Settling = {
  readonly step: CaseStep;
  readonly of: "buyer" | "dealer" | "inspector";
  readonly count: number;
  readonly until: string | null;
};

const earlier = (a: string | null, b: string | null): string | null =>
  a === null || b === null ? (a ?? b) : a < b ? a : b;

/** What settling waits for, each step once with its earliest deadline. A look that is booked is the visit's to wait for. */
export function settlingOf(facts: CaseFacts): Settling[] {
  const waits = new Map<CaseStep, Settling>();
  for (const { state, count, until } of facts.releases.open) {
    const owed = settlingStep(state);
    if (owed === null) continue;
    const { step, of } = owed;
    if (step === "book-look" && (isBooking(facts) || isLooking(facts))) continue;
    const known = waits.get(step);
    waits.set(step, {
      step,
      of,
      count: count + (known?.count ?? 0),
      until: earlier(until, known?.until ?? null),
    });
  }
  return [...waits.values()];
}

/** Whether anything of it is another's to answer or to do, or is to be looked at again: what comes of it is not known yet. */
export const waitsForOthers = ({ releases }: CaseFacts): boolean =>
  releases.open.some(
    ({ state }) => state === "looking-again" || ["dealer", "inspector"].includes(owedIn(state)?.of ?? ""),
  );
