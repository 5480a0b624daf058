import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { AppointmentActor, type AppointmentMove, AppointmentState } from "@evenhand/shared/booking";
import {
  isBetween,
  isTold,
  type Membership,
  orderEndAfter,
  type Parties,
  PAYMENTS_SEEN,
  planFor,
  roleFor,
  rolesIn,
  TOLD_MOVES,
  toldOf,
} from "./index.ts";

const parties: Parties = { buyer: "b", firm: "f", dealer: "d", requestedAt: 1, declaredAt: 2 };
const nobody: Membership = { buyer: [], inspector: [], dealer: [], operator: false };

describe("who has to do with a visit", () => {
  it.each<[string, Partial<Membership>, Partial<Parties>, string[]]>([
    [
      "its buyer, from the hold on",
      { buyer: ["x", "b"] },
      { requestedAt: null, declaredAt: null },
      ["buyer"],
    ],
    ["no inspector while it is only held", { inspector: ["f"] }, { requestedAt: null }, []],
    ["the inspector once asked", { inspector: ["f"] }, { declaredAt: null }, ["inspector"]],
    ["no dealer before the inspector has accepted", { dealer: ["d"] }, { declaredAt: null }, []],
    ["the dealer from then on", { dealer: ["d"] }, {}, ["dealer"]],
    ["whoever runs the service", { operator: true }, { requestedAt: null, declaredAt: null }, ["operator"]],
    [
      "nobody else: another firm of the same kind",
      { buyer: ["d", "f"], inspector: ["b"], dealer: ["f"] },
      {},
      [],
    ],
    ["both, where somebody is both", { inspector: ["f"], dealer: ["d"] }, {}, ["inspector", "dealer"]],
  ])("%s", (_, of, stood, roles) => {
    expect(rolesIn({ ...nobody, ...of }, { ...parties, ...stood })).toEqual(roles);
  });

  it("moves it as the one who can, else as the first of what they are", () => {
    expect(roleFor(["inspector", "dealer"], "decline", "accepted")).toBe("dealer");
    expect(roleFor(["inspector", "dealer"], "decline", "requested")).toBe("inspector");
    expect(roleFor(["inspector", "dealer"], "decline", "reported")).toBe("inspector");
    expect(roleFor([], "decline", "requested")).toBeUndefined();
  });
});

describe("what each sees", () => {
  const plan = { length: 9, segments: [{ items: ["a"] }, { items: ["b", "c"] }], toAllow: ["b"] };

  it("is all of the plan for buyer and inspector; of the items, for the dealer only what they must allow", () => {
    expect(planFor(plan, "buyer")).toBe(plan);
    expect(planFor(plan, "inspector")).toBe(plan);
    const closed = { length: 9, segments: [{ items: [] }, { items: [] }] };
    expect(planFor(plan, "dealer")).toEqual({ ...closed, toAllow: ["b"] });
    expect(planFor(plan, "operator")).toEqual({ ...closed, toAllow: [] });
  });

  it("is of the payments their own, and everybody's for the operator who settles", () => {
    expect(PAYMENTS_SEEN.dealer).toEqual(["dealer", "site"]);
    expect(PAYMENTS_SEEN.operator).toEqual(expect.arrayContaining(Object.values(PAYMENTS_SEEN).flat()));
    expect((["buyer", "inspector", "dealer", "operator"] as const).filter(isBetween)).toEqual([
      "buyer",
      "inspector",
    ]);
  });
});

describe("who hears of a move", () => {
  it("is nobody who made it, no dealer before the acceptance, and nobody of a hold but of its request", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...TOLD_MOVES),
        fc.constantFrom(...AppointmentActor.options),
        fc.constantFrom(...AppointmentState.options),
        fc.constantFrom(null, 5),
        (move, actor, from, declaredAt) => {
          const told = toldOf({ move, actor, from, declaredAt });
          expect(told).not.toContain(actor);
          expect(told.includes("dealer") && declaredAt === null && move !== "accept").toBe(false);
          const quiet = from === "held" && move !== "request";
          const both = ["buyer", "inspector"].every(
            (role) => role === actor || told.some((each) => each === role),
          );
          expect(quiet ? told.length === 0 : both).toBe(true);
        },
      ),
      { numRuns: 1_000 },
    );
  });

  it("is the dealer too of an acceptance and of what comes after", () => {
    expect(toldOf({ move: "accept", actor: "inspector", from: "requested", declaredAt: null })).toEqual([
      "buyer",
      "dealer",
    ]);
    expect(toldOf({ move: "cancel", actor: "buyer", from: "confirmed", declaredAt: 5 })).toEqual([
      "inspector",
      "dealer",
    ]);
    expect((["start", "take-to-road", "report", "cancel"] as const).map(isTold)).toEqual([
      false,
      false,
      false,
      true,
    ]);
  });

  it("and the orders end with the visit: declined by the inspector alone, not at all where it is only moved", () => {
    expect(orderEndAfter("decline", "inspector")?.state).toBe("declined");
    expect(orderEndAfter("decline", "dealer")?.state).toBe("cancelled");
    expect(orderEndAfter("miss", "clock")?.state).toBe("cancelled");
    expect(orderEndAfter("reschedule", "buyer")).toBeNull();
    expect(orderEndAfter("start", "inspector")).toBeNull();
  });

  it.each<[AppointmentMove, AppointmentActor, string]>([
    ["decline", "inspector", "The inspector declined the visit."],
    ["decline", "dealer", "The dealer declined the hour of the visit."],
    ["cancel", "buyer", "The buyer cancelled the visit."],
    ["cancel", "inspector", "The inspector cancelled the visit."],
    ["cancel", "dealer", "The dealer cancelled the visit."],
    ["cancel", "operator", "The operator cancelled the visit."],
    ["miss", "buyer", "The inspector did not come to the visit."],
    ["miss", "clock", "Nobody began the visit at its hour, so it counts as missed."],
    ["expire", "clock", "The visit was not answered in time."],
  ])("of which the order says, after %s by %s, what was done", (move, actor, reason) => {
    expect(orderEndAfter(move, actor)?.reason).toBe(reason);
  });
});
