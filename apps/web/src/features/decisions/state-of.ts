import { decisionStateOf, type DecisionState } from "@evenhand/case/decision-states";
import type { Decision } from "@evenhand/shared/http/summaries";

/** Where a decision stands. */
export const stateOf = ({ decision, answer, reply, ended }: Decision): DecisionState =>
  decisionStateOf({
    decision,
    answer: answer?.answer ?? null,
    reply: reply?.reply ?? null,
    ended: ended?.how ?? null,
  });
