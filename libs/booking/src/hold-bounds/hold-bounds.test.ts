import { describe, expect, it } from "vitest";
import { findHoldRefusal, HOLDS_OF_A_BUYER, type OpenHold } from "./index.ts";

const held = (id: string, until: number, ...cars: string[]): OpenHold => ({ id, cars, until });
const ask = (open: readonly OpenHold[], ...cars: string[]) => findHoldRefusal(open, cars, HOLDS_OF_A_BUYER);

describe("another hour", () => {
  it("may be held by whoever holds fewer than two, for another car", () => {
    expect(ask([], "x")).toBeNull();
    expect(ask([held("a", 5, "x")], "y", "z")).toBeNull();
  });

  it("is refused for a car that is held for already, whichever of several cars it is", () => {
    expect(ask([held("a", 5, "x", "y")], "z", "y")).toEqual({
      code: "car-held-already",
      hold: held("a", 5, "x", "y"),
    });
  });

  it("is refused to whoever holds two, naming the one that runs out first", () => {
    const open = [held("a", 9, "x"), held("b", 5, "y")];
    expect(ask(open, "z")).toEqual({ code: "too-many-held", hold: held("b", 5, "y") });
    expect(ask(open, "x")).toEqual({ code: "car-held-already", hold: held("a", 9, "x") });
  });
});
