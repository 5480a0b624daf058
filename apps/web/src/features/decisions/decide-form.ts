import type { DecisionRequest } from "@evenhand/shared/http/summaries";
import type { Summary } from "@evenhand/shared/summary";
import { parseMoney } from "../../ui/money";
import { acknowledgementsOf, type Answers, leftOpen } from "./matter-answers";

export type DecisionKind = DecisionRequest["decision"];
export const decisionKinds = ["approve", "counter", "decline"] as const satisfies readonly DecisionKind[];

/** A decision as it stands on the page. */
export interface DecideForm {
  readonly kind: DecisionKind | undefined;
  /** What was answered of the open matters. */
  readonly answers: Answers;
  /** As typed. */
  readonly price: string;
  readonly conditions: string;
  readonly understood: boolean;
}

export const emptyDecision: DecideForm = {
  kind: undefined,
  answers: {},
  price: "",
  conditions: "",
  understood: false,
};

export const decideAfter = (form: DecideForm, change: Partial<DecideForm>): DecideForm => ({
  ...form,
  ...change,
});

const priceOf = ({ price }: DecideForm) => parseMoney(price, "USD");

/** Whether it may be sent: an approval only with every matter answered and its meaning understood, a counter only with what it asks. */
export const mayDecide = (form: DecideForm, matters: Summary["openMatters"]): boolean => {
  switch (form.kind) {
    case "approve":
      return form.understood && leftOpen(matters, form.answers) === 0;
    case "counter":
      return priceOf(form) !== null || form.conditions.trim() !== "";
    case "decline":
      return true;
    case undefined:
      return false;
  }
};

/**
 * What is sent: of exactly the summary read, by its hash. Price and conditions belong to a
 * counter alone, since its fields are shown with it alone; one who declines answers for nothing.
 */
export const decisionOf = (
  decision: DecisionKind,
  form: DecideForm,
  matters: Summary["openMatters"],
  hash: string,
): DecisionRequest => {
  const counters = decision === "counter";
  const price = counters ? priceOf(form) : null;
  const conditions = counters ? form.conditions.trim() : "";
  return {
    decision,
    hash,
    acknowledgements: decision === "decline" ? [] : acknowledgementsOf(matters, form.answers),
    ...(price === null ? {} : { price }),
    ...(conditions === "" ? {} : { conditions }),
  };
};
