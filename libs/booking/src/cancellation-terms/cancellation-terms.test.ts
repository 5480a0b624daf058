import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CancellationCause } from "@evenhand/shared/booking";
import { COST } from "../../testing/appointments.ts";
import { DAY, HOUR } from "../../testing/builders.ts";
import {
  DEFAULT_TERMS,
  NO_WORK,
  settleCancellation,
  settleReported,
  shareAt,
  type WorkDone,
} from "./index.ts";

const settle = (cause: CancellationCause, notice: number, work: WorkDone = NO_WORK) =>
  settleCancellation({ cause, notice, cost: COST, terms: DEFAULT_TERMS, work });
const SET_OUT = { setOut: true, minutesDone: 0, minutesPlanned: 160 };
const pick = ({
  buyerPays,
  dealerOwes,
  inspectorOwes,
  inspectorGets,
  siteGets,
}: ReturnType<typeof settle>) => [buyerPays, dealerOwes, inspectorOwes, inspectorGets, siteGets];

describe("cancelling costs by cause and notice", () => {
  // Fees: visit 40 000, travel 1 000, site 3 500. Columns: buyer pays, dealer owes, inspector owes, inspector gets, site gets.
  it.each<[CancellationCause, number, WorkDone, number[]]>([
    ["buyer-withdrew", 3 * DAY, NO_WORK, [0, 0, 0, 0, 0]],
    ["buyer-withdrew", 48 * HOUR, NO_WORK, [0, 0, 0, 0, 0]],
    ["buyer-withdrew", 48 * HOUR - 1, NO_WORK, [10_875, 0, 0, 10_000, 875]],
    ["buyer-withdrew", 5 * HOUR, NO_WORK, [21_750, 0, 0, 20_000, 1_750]],
    ["buyer-withdrew", HOUR, SET_OUT, [44_500, 0, 0, 41_000, 3_500]],
    ["buyer-withdrew", -HOUR, SET_OUT, [44_500, 0, 0, 41_000, 3_500]],
    ["inspector-unavailable", HOUR, NO_WORK, [0, 0, 0, 0, 0]],
    ["inspector-missed", -HOUR, NO_WORK, [0, 0, 3_500, 0, 3_500]],
    ["car-sold", 3 * DAY, NO_WORK, [0, 0, 0, 0, 0]],
    ["car-sold", 30 * HOUR, NO_WORK, [0, 20_000, 0, 20_000, 0]],
    ["car-sold", HOUR, SET_OUT, [0, 41_000, 0, 41_000, 0]],
    ["car-absent", 0, SET_OUT, [0, 41_000, 0, 41_000, 0]],
    ["car-warm", 0, SET_OUT, [0, 41_000, 0, 41_000, 0]],
    ["car-not-on-lift", -HOUR, SET_OUT, [0, 41_000, 0, 41_000, 0]],
    ["dealer-unavailable", 10 * HOUR, NO_WORK, [0, 40_000, 0, 40_000, 0]],
    ["weather", HOUR, NO_WORK, [0, 0, 0, 0, 0]],
    ["weather", 0, SET_OUT, [1_000, 0, 0, 1_000, 0]],
    [
      "stopped-for-safety",
      -HOUR,
      { setOut: true, minutesDone: 16, minutesPlanned: 160 },
      [24_500, 0, 0, 21_000, 3_500],
    ],
    [
      "stopped-for-safety",
      -HOUR,
      { setOut: true, minutesDone: 120, minutesPlanned: 160 },
      [34_500, 0, 0, 31_000, 3_500],
    ],
    [
      "stopped-for-safety",
      -HOUR,
      { setOut: true, minutesDone: 999, minutesPlanned: 160 },
      [44_500, 0, 0, 41_000, 3_500],
    ],
    ["stopped-for-safety", -HOUR, NO_WORK, [24_500, 0, 0, 21_000, 3_500]],
  ])("%s with %i ms of notice", (cause, notice, work, amounts) => {
    expect(pick(settle(cause, notice, work))).toEqual(amounts);
  });

  it("keeps the share an earlier change left owing", () => {
    const owing = settleCancellation({
      cause: "buyer-withdrew",
      notice: 30 * DAY,
      cost: COST,
      terms: DEFAULT_TERMS,
      work: NO_WORK,
      leastShare: 5_000,
    });
    expect(owing.buyerPays).toBe(21_750);
  });

  it("takes the last band for anything shorter, and nothing where there are none", () => {
    expect(shareAt(DEFAULT_TERMS.buyerWithdraws, 30 * HOUR)).toBe(2_500);
    expect(shareAt(DEFAULT_TERMS.buyerWithdraws, -DAY)).toBe(10_000);
    expect(shareAt([], 0)).toBe(0);
  });

  it("pays in full for a report", () => {
    expect(pick(settleReported(COST))).toEqual([44_500, 0, 0, 41_000, 3_500]);
  });

  it("is in whole minor units, never negative, never more than was agreed, and adds up", () => {
    const minor = fc.integer({ min: 0, max: 10_000_000 });
    const share = fc.integer({ min: 0, max: 10_000 });
    const question = fc.record({
      cause: fc.constantFrom(...CancellationCause.options),
      notice: fc.integer({ min: -DAY, max: 4 * DAY }),
      cost: fc
        .record({ visit: minor, travel: minor, site: minor })
        .map((one) => ({ currency: "JPY", ...one, total: one.visit + one.travel + one.site })),
      terms: fc
        .record({ weatherTravel: share, safetyLeast: share, missedSite: share })
        .map((some) => ({ ...DEFAULT_TERMS, ...some })),
      work: fc.record({ setOut: fc.boolean(), minutesDone: fc.nat(300), minutesPlanned: fc.nat(300) }),
      leastShare: share,
    });
    fc.assert(
      fc.property(question, (one) => {
        const settled = settleCancellation(one);
        const { buyerPays, buyerRefunded, dealerOwes, inspectorOwes, inspectorGets, siteGets } = settled;
        const amounts = [buyerPays, buyerRefunded, dealerOwes, inspectorOwes, inspectorGets, siteGets];
        expect(
          amounts.every((amount) => Number.isSafeInteger(amount) && amount >= 0 && amount <= one.cost.total),
        ).toBe(true);
        expect(buyerPays + buyerRefunded).toBe(one.cost.total);
        expect(buyerPays + dealerOwes + inspectorOwes).toBe(inspectorGets + siteGets);
        expect(settled.currency).toBe("JPY");
      }),
      { numRuns: 2_000 },
    );
  });

  it("never costs a buyer less for less notice", () => {
    const notice = fc.integer({ min: -DAY, max: 4 * DAY });
    fc.assert(
      fc.property(notice, notice, fc.boolean(), (a, b, setOut) => {
        const pays = (at: number): number => settle("buyer-withdrew", at, { ...NO_WORK, setOut }).buyerPays;
        expect(pays(Math.min(a, b))).toBeGreaterThanOrEqual(pays(Math.max(a, b)));
      }),
      { numRuns: 1_000 },
    );
  });
});
