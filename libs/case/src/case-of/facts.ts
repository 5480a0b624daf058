import type { HandOverState } from "@evenhand/shared/http/hand-overs";
import type { CaseDecision, CaseParty, CaseVisitState } from "@evenhand/shared/http/cases";
import type { SettlementState } from "@evenhand/shared/settlement";

/** So many of a kind, and the oldest of them. Instants are UTC as in the interface. */
export type Counted = { readonly count: number; readonly first: string };

export type CaseVisit = {
  readonly state: CaseVisitState;
  /** `null` while it has no hour. */
  readonly appointment: string | null;
  readonly order: string | null;
  /** When the next answer is due. */
  readonly deadline: string | null;
  readonly start: string | null;
  /** Findings in a draft, to the inspector alone. */
  readonly draft: string | null;
  /** Another brief is proposed for it. */
  readonly proposed: boolean;
};

/**
 * What one of the parties may know of a case: one buyer's business with one car. What is kept from somebody is absent from what is
 * handed in, so that nothing of it can be in what comes out.
 */
export type CaseFacts = {
  readonly by: CaseParty;
  readonly vehicle: string;
  readonly listed: boolean;
  /** The buyer has chosen what is to be looked at. */
  readonly briefed: boolean;
  readonly questions: {
    readonly drafted: Counted | null;
    readonly asked: Counted | null;
    /** Answered in the draft of a statement (`first`: the report), not sealed yet. */
    readonly answered: Counted | null;
    readonly published: Counted | null;
  };
  readonly visits: readonly CaseVisit[];
  /** Of the newest sealed inspection against the statement it was ordered on. */
  readonly comparison: { readonly id: string; readonly inspection: string } | null;
  readonly releases: {
    /** Lines being settled, by their state, with the earliest deadline of each. To the inspector those asked about. */
    readonly open: readonly {
      readonly state: SettlementState;
      readonly count: number;
      readonly until: string | null;
    }[];
    /** Of the newest inspection, at an end. */
    readonly ended: number;
  };
  /** The newest that is not decided, of the newest inspection. */
  readonly summary: string | null;
  readonly decision: {
    readonly id: string;
    readonly state: CaseDecision;
    /** Until when the offer stands that waits for an answer. */
    readonly until: string | null;
    /** `null` to the dealer, who does not see the inspection it rests on. */
    readonly inspection: string | null;
  } | null;
  /** Since the car is bought; `null` before, and to the inspector always. */
  readonly handOver: {
    readonly case: string;
    /** Lines of the list before money moves that the buyer has not answered; 0 to the dealer, whose it is not. */
    readonly unanswered: number;
    /** The one that stands, `null` where none does; to the dealer until the car has arrived. */
    readonly carried: {
      readonly id: string;
      readonly state: HandOverState;
      /** Until when the carrier's link signs; once it is delivered, until when a claim is to be made, as entered. */
      readonly until: string | null;
      /** The car did not arrive as it left. */
      readonly differs: boolean;
    } | null;
  } | null;
};
