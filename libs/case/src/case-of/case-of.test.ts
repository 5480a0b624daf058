import { CaseDecision, CaseVisitState, type CaseAwaited, type CaseStep } from "@evenhand/shared/http/cases";
import { describe, expect, it, test } from "vitest";
import { carried, facts, settling, visit } from "../../testing/case-facts.ts";
import { type CaseFacts, caseOf } from "./index.ts";

const compared = { comparison: { id: "compared", inspection: "first" } };
const decided = (state: CaseDecision, inspection: string | null = "first") => ({
  decision: { id: "decided", state, until: null, inspection },
});
const some = (count = 1) => ({ count, first: "oldest" });
const questions = facts().questions;

/** Where it stands, what comes next, and whose it is; written down apart from the rules. */
const stories: [string, Partial<CaseFacts>, string, CaseStep | null, CaseAwaited | null][] = [
  ["nothing chosen yet", {}, "book", "choose-brief", "buyer"],
  ["something chosen", { briefed: true }, "book", "book", "buyer"],
  ["a withdrawn car", { listed: false }, "book", null, null],
  ["a question in draft", { questions: { ...questions, drafted: some() } }, "ask", "send-question", "buyer"],
  [
    "asked, of a withdrawn car",
    { listed: false, questions: { ...questions, asked: some(2) } },
    "ask",
    "answer-question",
    "dealer",
  ],
  [
    "answered in a draft, to the dealer",
    { by: "dealer", questions: { ...questions, answered: some() } },
    "ask",
    "publish-answer",
    "dealer",
  ],
  [
    "all answered, to the dealer",
    { by: "dealer", questions: { ...questions, published: some() } },
    "ask",
    null,
    null,
  ],
  [
    "all answered, to the buyer",
    { briefed: true, questions: { ...questions, published: some() } },
    "book",
    "book",
    "buyer",
  ],
  ["ordered without an hour", { visits: [visit("asked-for")] }, "book", "accept-visit", "inspector"],
  ["taken on without an hour", { visits: [visit("taken-on")] }, "look", "inspect-any-hour", "inspector"],
  ["an hour held", { visits: [visit("held")] }, "book", "request-hour", "buyer"],
  ["an hour asked for", { visits: [visit("requested")] }, "book", "accept-hour", "inspector"],
  ["an hour accepted", { visits: [visit("accepted")] }, "book", "give-access", "dealer"],
  ["an hour confirmed", { visits: [visit("confirmed")] }, "look", "inspect", "inspector"],
  ["under way", { visits: [visit("under-way")] }, "look", "report-visit", "inspector"],
  [
    "findings begun",
    { by: "inspector", visits: [visit("under-way", { draft: "draft" })] },
    "look",
    "seal",
    "inspector",
  ],
  [
    "a report written anew",
    { by: "inspector", visits: [visit("reported", { draft: "draft" })] },
    "look",
    "seal",
    "inspector",
  ],
  ["reported, to its inspector", { by: "inspector", visits: [visit("reported")] }, "read", null, null],
  ["a hold run out", { briefed: true, visits: [visit("expired")] }, "book", "book", "buyer"],
  ["declined by the inspector", { briefed: true, visits: [visit("declined")] }, "book", "book", "buyer"],
  ["compared", { ...compared, visits: [visit("reported")] }, "read", "read", "buyer"],
  [
    "items laid before the dealer",
    { ...compared, releases: settling("released", 2) },
    "settle",
    "answer-items",
    "dealer",
  ],
  [
    "contested",
    { ...compared, releases: settling("contested", 1, "2027-05-04T14:00:00Z") },
    "settle",
    "answer-contest",
    "buyer",
  ],
  [
    "asked, to its inspector",
    { by: "inspector", visits: [visit("reported")], releases: settling("asked") },
    "settle",
    "answer-dispute",
    "inspector",
  ],
  [
    "another look agreed",
    { ...compared, releases: settling("looking-again") },
    "settle",
    "book-look",
    "buyer",
  ],
  [
    "another look booked",
    { ...compared, visits: [visit("confirmed")], releases: settling("looking-again") },
    "settle",
    "inspect",
    "inspector",
  ],
  ["items answered", { ...compared, releases: { open: [], ended: 3 } }, "decide", "sum-up", "buyer"],
  ["items answered, to the dealer", { by: "dealer", releases: { open: [], ended: 3 } }, "settle", null, null],
  ["a summary to decide", { ...compared, summary: "summed" }, "decide", "decide", "buyer"],
  ["approved", { ...compared, ...decided("approved") }, "collect", null, null],
  [
    "bought, with a list to go through and no carrier named",
    { ...compared, ...decided("approved"), handOver: { case: "case", unanswered: 5, carried: null } },
    "collect",
    "before-money",
    "buyer",
  ],
  [
    "the list gone through",
    { ...compared, ...decided("approved"), handOver: { case: "case", unanswered: 0, carried: null } },
    "collect",
    "name-carrier",
    "buyer",
  ],
  [
    "the same to the dealer",
    { by: "dealer", ...decided("approved", null), handOver: { case: "case", unanswered: 0, carried: null } },
    "collect",
    null,
    null,
  ],
  [
    "a carrier invited, to the dealer",
    { by: "dealer", ...decided("approved", null), handOver: carried("arranged") },
    "collect",
    "sign-collection",
    "carrier",
  ],
  [
    "invited, and declined since",
    { ...compared, ...decided("declined"), handOver: carried("arranged") },
    "decide",
    null,
    null,
  ],
  [
    "on the truck, and found anew since",
    {
      ...compared,
      ...decided("approved", "earlier"),
      visits: [],
      handOver: carried("collected"),
      summary: null,
    },
    "collect",
    "read",
    "buyer",
  ],
  [
    "on the truck",
    { ...compared, ...decided("approved"), handOver: carried("collected") },
    "collect",
    "sign-delivery",
    "carrier",
  ],
  [
    "arrived as it left",
    { ...compared, ...decided("approved"), handOver: carried("delivered") },
    "collect",
    null,
    null,
  ],
  [
    "arrived with damage",
    {
      ...compared,
      ...decided("approved"),
      handOver: carried("delivered", { differs: true, until: "2027-05-04T14:00:00Z" }),
    },
    "collect",
    "answer-arrival",
    "buyer",
  ],
  [
    "taken as it arrived",
    { ...compared, ...decided("approved"), handOver: carried("signed-off", { differs: true }) },
    "collect",
    null,
    null,
  ],
  [
    "a claim",
    { ...compared, ...decided("approved"), handOver: carried("claim-open") },
    "collect",
    "close-claim",
    "buyer",
  ],
  [
    "a claim closed",
    { ...compared, ...decided("approved"), handOver: carried("claim-closed") },
    "collect",
    null,
    null,
  ],
  ["declined by the buyer", { ...compared, ...decided("declined") }, "decide", null, null],
  ["a counter-offer", { ...compared, ...decided("countered") }, "decide", "answer-counter", "dealer"],
  [
    "a counter-offer, to the dealer",
    { by: "dealer", ...decided("countered", null) },
    "decide",
    "answer-counter",
    "dealer",
  ],
  ["a counter-offer taken", { ...compared, ...decided("counter-accepted") }, "collect", null, null],
  [
    "a counter-offer refused",
    { ...compared, ...decided("counter-refused") },
    "decide",
    "decide-again",
    "buyer",
  ],
  ["countered back", { ...compared, ...decided("countered-back") }, "decide", "answer-offer", "buyer"],
  ["an offer withdrawn", { ...compared, ...decided("counter-withdrawn") }, "decide", "decide-again", "buyer"],
  ["an offer lapsed", { ...compared, ...decided("counter-lapsed") }, "decide", "decide-again", "buyer"],
  [
    "refused, and summed up anew",
    { ...compared, ...decided("counter-refused"), summary: "again" },
    "decide",
    "decide",
    "buyer",
  ],
  [
    "approved, and found anew since",
    { ...compared, ...decided("approved", "earlier") },
    "read",
    "read",
    "buyer",
  ],
];

describe("a case", () => {
  it.each(stories)("%s", (_, more, stage, step, of) => {
    const standing = caseOf(facts(more));
    expect([standing.stage, standing.next?.step ?? null, standing.next?.of ?? null]).toEqual([
      stage,
      step,
      of,
    ]);
  });

  it("has a story for every state of a visit and every decision", () => {
    const told = JSON.stringify(stories.map(([, more]) => more));
    const open = CaseVisitState.options.filter((state) => !["cancelled", "missed"].includes(state));
    for (const state of [...open, ...CaseDecision.options]) expect(told).toContain(`"${state}"`);
  });
});

test("the person's own comes first, even where another's is due earlier", () => {
  const { waits, next } = caseOf(
    facts({
      questions: { ...questions, drafted: some() },
      visits: [visit("requested", { deadline: "2027-05-01T00:00:00Z" })],
    }),
  );
  expect(next?.step).toBe("send-question");
  expect(waits.map(({ of }) => of)).toEqual(["buyer", "inspector"]);
});

test("of one's own the one with the earliest deadline comes first, and one without a deadline last", () => {
  const visits = [
    visit("requested", { deadline: "2027-05-02T00:00:00Z" }),
    visit("asked-for"),
    visit("requested", { appointment: "sooner", deadline: "2027-05-01T00:00:00Z" }),
  ];
  const { waits } = caseOf(facts({ by: "inspector", visits }));
  expect(waits.map(({ subject }) => subject)).toEqual(["sooner", "visit", "order"]);
});

const stepsWithBrief = (state: CaseVisitState) =>
  caseOf(facts({ by: "inspector", visits: [visit(state, { proposed: true })] })).waits.map(
    ({ step }) => step,
  );

test("another brief that is proposed waits for the inspector until the visit, and not once it is over", () => {
  expect(stepsWithBrief("confirmed")).toEqual(["inspect", "answer-brief"]);
  expect(stepsWithBrief("reported")).toEqual([]);
});
