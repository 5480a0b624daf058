import { CaseDecision, DeadlineStep } from "@evenhand/shared/http/cases";
import { SettlementState } from "@evenhand/shared/settlement";
import { describe, expect, it } from "vitest";
import { DECISION_STATES } from "../decision-states/index.ts";
import { SETTLEMENT_STATES } from "../settlement-states/index.ts";
import type { StateTable } from "../state-table/index.ts";
import { bookingStep, offerStep, settlingStep } from "./index.ts";

/** Where the clock ends it: these, and no others, have a deadline. */
const lapsing = <S extends string, M extends string, A extends string>({ rows }: StateTable<S, M, A>): S[] =>
  rows.filter(({ move }) => move === "lapse").flatMap(({ from }) => from);
const sorted = (some: readonly string[]): string[] => some.toSorted((a, b) => (a < b ? -1 : 1));

describe("a step with a deadline", () => {
  it("is owed in every state of settling that silence ends, and comes to what it ends in", () => {
    const owed = SettlementState.options.filter((state) => settlingStep(state) !== null);
    expect(sorted(owed)).toEqual(sorted(lapsing(SETTLEMENT_STATES)));
    expect(["released", "refused", "proved"].map((s) => settlingStep(SettlementState.parse(s)))).toEqual([
      { step: "answer-items", of: "dealer", silence: "finding-stands" },
      { step: "answer-items", of: "dealer", silence: "left-open" },
      { step: "check-remedy", of: "buyer", silence: "settled" },
    ]);
  });

  it("is owed in every state of an offer that lapses", () => {
    const owed = CaseDecision.options.filter((state) => offerStep(state) !== null);
    expect(sorted(owed)).toEqual(sorted(lapsing(DECISION_STATES)));
  });

  it("is owed in some state, each of them, and no visit that is agreed has one", () => {
    const visits = ["held", "requested", "accepted", "confirmed", "under-way", "reported"] as const;
    const steps = [
      ...SettlementState.options.map(settlingStep),
      ...CaseDecision.options.map(offerStep),
      ...visits.map(bookingStep),
    ].flatMap((owed) => owed?.step ?? []);
    expect(sorted([...new Set(steps)])).toEqual(sorted(DeadlineStep.options));
    expect(visits.slice(3).map(bookingStep)).toEqual([null, null, null]);
  });
});
