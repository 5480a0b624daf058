import type { DecisionRequest } from "@evenhand/shared/http/summaries";
import type { DecisionDraft, OpenMatter } from "@evenhand/shared/summary";
import { parseMoney } from "../../ui/money";
import { endOfDay } from "./end-of-day";
import { acknowledgementsOf, type Answers, nothingGiven, openOf } from "./matter-answers";

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
  /** The last day a counter stands, as a date; empty before one is chosen. */
  readonly until: string;
}

export const emptyDecision: DecideForm = {
  kind: undefined,
  answers: {},
  price: "",
  conditions: "",
  until: "",
};

export const decideAfter = (form: DecideForm, change: Partial<DecideForm>): DecideForm => ({
  ...form,
  ...change,
});

/** What the page asks about. */
interface Asked {
  readonly matters: readonly Pick<OpenMatter, "id" | "severity">[];
  /** Of the car's price; absent while it is not known. */
  readonly currency: string | undefined;
}

const priceOf = ({ price }: DecideForm, { currency }: Asked) =>
  currency === undefined ? null : parseMoney(price, currency);

/** As it was left: what is typed is kept with the service, here and on other devices. */
export const formOf = (draft: DecisionDraft | null): DecideForm =>
  draft === null
    ? emptyDecision
    : {
        kind: draft.decision ?? undefined,
        answers: Object.fromEntries(
          draft.answers.map(({ matter, answer, words }) => [matter, { answer, words }]),
        ),
        price: draft.price,
        conditions: draft.conditions,
        until: draft.until ?? "",
      };

/** What is kept of it. */
export const draftOf = ({ kind, answers, price, conditions, until }: DecideForm): DecisionDraft => ({
  decision: kind ?? null,
  answers: Object.entries(answers).map(([matter, given]) => ({ matter, ...nothingGiven, ...given })),
  price,
  conditions,
  until,
});

/** Whether it may be sent: an approval only with every matter answered, a counter only with what it asks. */
export const mayDecide = (form: DecideForm, asked: Asked): boolean => {
  switch (form.kind) {
    case "approve":
      return openOf(asked.matters, form.answers).length === 0;
    case "counter":
      return (
        (priceOf(form, asked) !== null || form.conditions.trim() !== "") && endOfDay(form.until) !== null
      );
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
  asked: Asked & { readonly hash: string },
): DecisionRequest => {
  const counters = decision === "counter";
  const price = counters ? priceOf(form, asked) : null;
  const conditions = counters ? form.conditions.trim() : "";
  const until = counters ? endOfDay(form.until) : null;
  return {
    decision,
    hash: asked.hash,
    acknowledgements: decision === "decline" ? [] : acknowledgementsOf(asked.matters, form.answers),
    ...(price === null ? {} : { price }),
    ...(conditions === "" ? {} : { conditions }),
    ...(until === null ? {} : { until }),
  };
};
