import { CaseDecision, CaseParty, CaseStage, CaseVisitState } from "@evenhand/shared/http/cases";
import { HandOverState } from "@evenhand/shared/http/hand-overs";
import { SettlementState } from "@evenhand/shared/settlement";
import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { facts, settling, visit } from "../../testing/case-facts.ts";
import { type CaseFacts, caseOf, type CaseVisit } from "./index.ts";

/** Whose turn an unfinished visit is: written down apart from the rules. */
const turn: Readonly<Partial<Record<CaseVisitState, CaseParty>>> = {
  "asked-for": "inspector",
  "taken-on": "inspector",
  held: "buyer",
  requested: "inspector",
  accepted: "dealer",
  confirmed: "inspector",
  "under-way": "inspector",
};

/** Whose turn a line being settled is, written down apart from the rules. */
const turnOf: Readonly<Partial<Record<SettlementState, CaseParty>>> = {
  released: "dealer",
  refused: "dealer",
  promised: "dealer",
  contested: "buyer",
  "price-offered": "buyer",
  "remedy-offered": "buyer",
  "look-offered": "buyer",
  "looking-again": "buyer",
  proved: "buyer",
  asked: "inspector",
  revising: "inspector",
};

/** Decided, and to be decided anew. */
const undone: readonly CaseDecision[] = ["counter-refused", "counter-withdrawn", "counter-lapsed"];

const ownWriting: ReadonlySet<CaseVisitState> = new Set(["taken-on", "confirmed", "under-way"]);

/** What of the visit is open, and whose it is. */
function openVisit({ state, appointment, order, draft }: CaseVisit): string[] {
  const whose = turn[state];
  if (draft !== null && (whose === undefined || ownWriting.has(state))) return [`${draft} by inspector`];
  return whose === undefined ? [] : [`${appointment ?? order} by ${whose}`];
}

/** Every open part, and whose it is, one by one. */
function openParts({ questions, visits, releases, vehicle, summary, decision, comparison }: CaseFacts) {
  const owedBy = (party: CaseParty) =>
    releases.open.some(({ state }) => state !== "looking-again" && turnOf[state] === party);
  const forDealer = owedBy("dealer");
  const others =
    forDealer || owedBy("inspector") || releases.open.some(({ state }) => state === "looking-again");
  const unread = comparison !== null && decision === null && summary === null && !others;
  const parts: [boolean, string | undefined, CaseParty][] = [
    [questions.drafted !== null, questions.drafted?.first, "buyer"],
    [questions.asked !== null, questions.asked?.first, "dealer"],
    [questions.answered !== null, questions.answered?.first, "dealer"],
    [forDealer, vehicle, "dealer"],
    [owedBy("buyer"), vehicle, "buyer"],
    [owedBy("inspector"), vehicle, "inspector"],
    [summary !== null, summary ?? "", "buyer"],
    [decision?.state === "countered", decision?.id, "dealer"],
    [decision?.state === "countered-back", decision?.id, "buyer"],
    [unread, comparison?.id, "buyer"],
  ];
  const open = parts.filter(([is]) => is).map(([, subject, of]) => `${subject} by ${of}`);
  return [...open, ...visits.flatMap(openVisit)];
}

const instant = fc.option(
  fc.constantFrom("2027-05-01T00:00:00Z", "2027-05-02T00:00:00Z", "2027-05-03T00:00:00Z"),
);
const id = fc.uuid();
const counted = fc.option(fc.record({ count: fc.integer({ min: 1, max: 9 }), first: id }));
const anyVisit: fc.Arbitrary<CaseVisit> = fc
  .record({
    state: fc.constantFrom(...CaseVisitState.options),
    appointment: id,
    order: id,
    deadline: instant,
    start: instant,
    draft: fc.option(id),
    proposed: fc.boolean(),
  })
  .map((one) =>
    one.state in { "asked-for": 0, "taken-on": 0 } ? { ...one, appointment: null, start: null } : one,
  );
const anyFacts: fc.Arbitrary<CaseFacts> = fc.record({
  by: fc.constantFrom(...CaseParty.options),
  vehicle: id,
  listed: fc.boolean(),
  briefed: fc.boolean(),
  questions: fc.record({ drafted: counted, asked: counted, answered: counted, published: counted }),
  visits: fc.array(anyVisit, { maxLength: 3 }),
  comparison: fc.option(fc.record({ id, inspection: fc.constantFrom("first", "second") })),
  releases: fc.record({
    open: fc.array(
      fc.record({
        state: fc.constantFrom(...SettlementState.options),
        count: fc.integer({ min: 1, max: 3 }),
        until: instant,
      }),
      { maxLength: 3 },
    ),
    ended: fc.nat(3),
  }),
  summary: fc.option(id),
  decision: fc.option(
    fc.record({
      id,
      state: fc.constantFrom(...CaseDecision.options),
      until: instant,
      inspection: fc.option(fc.constantFrom("first", "second")),
    }),
  ),
  handOver: fc.option(
    fc.record({
      case: id,
      unanswered: fc.nat(9),
      carried: fc.option(
        fc.record({
          id,
          state: fc.constantFrom(...HandOverState.options.filter((state) => state !== "called-off")),
          until: instant,
          differs: fc.boolean(),
        }),
      ),
    }),
  ),
});

const runs = { numRuns: 3_000 };

describe("any case", () => {
  it("has exactly one next step, or nothing open", () => {
    fc.assert(
      fc.property(anyFacts, (given) => {
        const { waits, next, stage } = caseOf(given);
        expect(next).toEqual(waits[0] ?? null);
        expect(CaseStage.options).toContain(stage);
        const own = waits.filter(({ of }) => of === given.by);
        expect(waits.slice(0, own.length)).toEqual(own);
        for (const list of [own, waits.slice(own.length)]) {
          const untils = list.map(({ until }) => until ?? "~");
          expect(untils).toEqual(untils.toSorted());
        }
      }),
      runs,
    );
  });

  it("leaves no open part without somebody whose it is", () => {
    fc.assert(
      fc.property(anyFacts, (given) => {
        const owed = caseOf(given).waits.map(({ subject, of }) => `${subject} by ${of}`);
        expect(owed).toEqual(expect.arrayContaining(openParts(given)));
      }),
      runs,
    );
  });

  it("names nothing that was not handed in, and asks nobody twice for the same", () => {
    fc.assert(
      fc.property(anyFacts, (given) => {
        const { waits } = caseOf(given);
        const handed = JSON.stringify(given);
        for (const { subject } of waits) expect(handed).toContain(subject);
        const keys = waits.map(({ step, subject }) => `${step} ${subject}`);
        expect(new Set(keys).size).toBe(keys.length);
      }),
      runs,
    );
  });

  it("tells neither dealer nor inspector what the buyer has not done yet", () => {
    fc.assert(
      fc.property(anyFacts, fc.constantFrom("dealer" as const, "inspector" as const), (given, by) => {
        const steps = caseOf({ ...given, by }).waits.map(({ step }) => step);
        expect(steps).not.toContain("book");
        expect(steps).not.toContain("choose-brief");
      }),
      runs,
    );
  });
});

describe("every state of each part with every other", () => {
  const parts = CaseVisitState.options.flatMap((state) =>
    [null, ...CaseDecision.options].flatMap((decision) =>
      [null, "compared"].flatMap((comparison) =>
        [0, 1].flatMap((waiting) =>
          [null, "summed"].flatMap((summary) =>
            CaseParty.options.map((by) => ({ state, decision, comparison, waiting, summary, by })),
          ),
        ),
      ),
    ),
  );

  it(`is looked at: ${parts.length} of them`, () => {
    for (const { state, decision, comparison, waiting, summary, by } of parts) {
      const { next, waits } = caseOf(
        facts({
          by,
          visits: [visit(state)],
          comparison: comparison === null ? null : { id: comparison, inspection: "first" },
          releases: waiting === 0 ? { open: [], ended: 0 } : settling("released", waiting),
          summary,
          decision:
            decision === null ? null : { id: "decided", state: decision, until: null, inspection: "first" },
        }),
      );
      const open =
        state in turn ||
        waiting > 0 ||
        summary !== null ||
        decision === "countered" ||
        decision === "countered-back" ||
        (comparison !== null && (decision === null || undone.includes(decision))) ||
        (by === "buyer" && state !== "reported" && comparison === null && decision === null);
      expect([waits.length > 0, next !== null]).toEqual([open, open]);
    }
  });
});
