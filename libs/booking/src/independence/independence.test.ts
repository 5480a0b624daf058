import { describe, expect, it } from "vitest";
import { CarDealing, type DeclaredInterest, InterestKind } from "@evenhand/shared/booking";
import { DAY, MONDAY } from "../../testing/builders.ts";
import {
  INDEPENDENCE_YEAR_MS,
  type IndependenceQuestion,
  judgeIndependence,
  splitConflicts,
} from "./index.ts";

const now = MONDAY;
const question = (more: Partial<IndependenceQuestion> = {}): IndependenceQuestion => ({
  now,
  dealer: "dealer-1",
  cars: ["car-1"],
  interests: [],
  dealings: [],
  visits: [],
  ...more,
});
const interest = (more: Partial<DeclaredInterest> = {}): DeclaredInterest => ({
  kind: "owns",
  dealer: "dealer-1",
  holder: "inspector",
  since: "2020-01-01T00:00:00Z",
  endedAt: null,
  note: "",
  ...more,
});
const ended = (before: number): string => new Date(now - before).toISOString();

describe("independence", () => {
  it("lets accept who has nothing to do with dealer or car", () => {
    const elsewhere = interest({ dealer: "dealer-2" });
    const judgment = judgeIndependence(
      question({ interests: [elsewhere], dealings: [{ car: "car-2", dealing: "sold" }] }),
    );
    expect(judgment).toEqual({
      mayAccept: true,
      conflicts: [],
      past: [],
      share: { atDealer: 0, all: 0, share: null },
    });
  });

  it.each(InterestKind.options)("refuses who declares: %s", (kind) => {
    const judgment = judgeIndependence(question({ interests: [interest({ kind, holder: "firm" })] }));
    expect(judgment).toMatchObject({
      mayAccept: false,
      conflicts: [{ code: "interest-in-dealer", kind, holder: "firm" }],
    });
  });

  it.each(CarDealing.options)("refuses who has %s the car", (dealing) => {
    const judgment = judgeIndependence(question({ dealings: [{ car: "car-1", dealing }] }));
    expect(judgment).toMatchObject({
      mayAccept: false,
      conflicts: [{ code: "dealt-with-car", dealing, car: "car-1" }],
    });
  });

  it("counts an interest for a year after it ended, and shows it ever after", () => {
    const fresh = judgeIndependence(
      question({ interests: [interest({ endedAt: ended(INDEPENDENCE_YEAR_MS - DAY) })] }),
    );
    expect([fresh.mayAccept, fresh.past.length]).toEqual([false, 0]);
    const old = judgeIndependence(
      question({ interests: [interest({ endedAt: ended(INDEPENDENCE_YEAR_MS) })] }),
    );
    expect([old.mayAccept, old.past.length]).toEqual([true, 1]);
  });

  it("shows the share of a year's work at the dealer, and never refuses for it", () => {
    const visits = [
      { dealer: "dealer-1", at: now - DAY },
      { dealer: "dealer-1", at: now - 200 * DAY },
      { dealer: "dealer-2", at: now - 364 * DAY },
      { dealer: "dealer-1", at: now - INDEPENDENCE_YEAR_MS },
      { dealer: "dealer-1", at: now + DAY },
    ];
    const judgment = judgeIndependence(question({ visits }));
    expect(judgment.share).toEqual({ atDealer: 2, all: 3, share: 2 / 3 });
    expect(judgment.mayAccept).toBe(true);
  });
});

describe("what speaks against an hour", () => {
  it("is told apart: a part in dealer or car, which no other hour mends, and the rest", () => {
    const conflicts = [{ code: "dealt-with-car" as const, dealing: "repaired" as const, car: "car-1" }];
    const taken = { code: "inspector-taken" as const, taken: { start: now, end: now + DAY } };
    expect(splitConflicts([{ code: "not-independent", conflicts }, taken])).toEqual({
      refusedHour: [taken],
      conflicts,
    });
    expect(splitConflicts([])).toEqual({ refusedHour: [], conflicts: [] });
  });
});
