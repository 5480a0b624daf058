import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { AppointmentActor, AppointmentState } from "@evenhand/shared/booking";
import { COST, inState, NOW, START } from "../../testing/appointments.ts";
import { DAY, HOUR } from "../../testing/builders.ts";
import { cancellings } from "./index.ts";

const causesOf = (...asked: Parameters<typeof cancellings>) =>
  cancellings(...asked).map(({ cause }) => cause);

describe("what somebody may name for cancelling", () => {
  it("is their own cause, and what is found at the car only at the car", () => {
    expect(causesOf(inState("confirmed"), "buyer", START - DAY)).toEqual(["buyer-withdrew"]);
    expect(causesOf(inState("confirmed"), "dealer", START - DAY)).toEqual(["dealer-unavailable", "car-sold"]);
    expect(causesOf(inState("confirmed"), "inspector", START - DAY)).not.toContain("car-absent");
    expect(causesOf(inState("confirmed"), "inspector", START)).toContain("car-absent");
    expect(causesOf(inState("reported"), "operator", START)).toEqual([]);
  });

  it("gives all of it back where nothing was paid yet", () => {
    const [only] = cancellings(inState("held"), "buyer", NOW + 1);
    expect(only).toEqual({
      cause: "buyer-withdrew",
      settlement: {
        currency: "USD",
        buyerPays: 0,
        buyerRefunded: COST.total,
        dealerOwes: 0,
        inspectorOwes: 0,
        inspectorGets: 0,
        siteGets: 0,
      },
    });
  });

  it("never loses a cent of what the buyer paid, and never names a cause twice", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...AppointmentState.options),
        fc.constantFrom(...AppointmentActor.options),
        fc.integer({ min: NOW, max: START + 5 * HOUR }),
        (state, actor, now) => {
          const all = cancellings(inState(state), actor, now);
          expect(new Set(all.map(({ cause }) => cause)).size).toBe(all.length);
          for (const { settlement } of all)
            expect(settlement.buyerPays + settlement.buyerRefunded).toBe(COST.total);
        },
      ),
      { numRuns: 1_000 },
    );
  });
});
