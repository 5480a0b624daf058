import type { CaseWait } from "@evenhand/shared/http/cases";
import { standingDecision } from "./decision.ts";
import type { CaseFacts } from "./facts.ts";

/** Bought, or agreed to be: what follows is collecting it. */
const bought: ReadonlySet<string> = new Set(["approved", "counter-accepted"]);

export const isBought = (facts: CaseFacts): boolean => bought.has(standingDecision(facts) ?? "");

/** The car has left: it stays bought, whatever is found or decided since. */
export const hasLeft = ({ handOver }: CaseFacts): boolean =>
  handOver !== null && handOver.carried !== null && handOver.carried.state !== "arranged";

type HandOver = NonNullable<CaseFacts["handOver"]>;

/** What the buyer sees to before the car leaves. */
function beforeLeaving({ by }: CaseFacts, { case: subject, unanswered, carried }: HandOver): CaseWait[] {
  if (by !== "buyer") return [];
  const own = { of: "buyer", until: null, subject } as const;
  return [
    ...(unanswered > 0 ? [{ ...own, step: "before-money", count: unanswered } as const] : []),
    ...(carried === null ? [{ ...own, step: "name-carrier", count: 1 } as const] : []),
  ];
}

/** Who owes the next step of the car's way. One that arrived as it left, or was taken as it arrived, waits for nobody. */
function onItsWay({ id: subject, state, until, differs }: NonNullable<HandOver["carried"]>): CaseWait[] {
  const one = { count: 1, subject, until };
  if (state === "arranged") return [{ ...one, step: "sign-collection", of: "carrier" }];
  if (state === "collected") return [{ ...one, step: "sign-delivery", of: "carrier" }];
  if (state === "delivered" && differs) return [{ ...one, step: "answer-arrival", of: "buyer" }];
  return state === "claim-open" ? [{ ...one, step: "close-claim", of: "buyer", until: null }] : [];
}

/** What waits once the car is bought: the list before money moves, a carrier, its two reports, and what is made of the arrival. */
export function collectingWaits(facts: CaseFacts): CaseWait[] {
  const { handOver } = facts;
  if (handOver === null || !(isBought(facts) || hasLeft(facts))) return [];
  const ahead = hasLeft(facts) ? [] : beforeLeaving(facts, handOver);
  return [...ahead, ...(handOver.carried === null ? [] : onItsWay(handOver.carried))];
}
