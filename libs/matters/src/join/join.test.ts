import { describe, expect, it } from "vitest";
import type { CrossCheck } from "@evenhand/shared/cross-check";
import { comparisonOf, line, namesOf, silent, unasked, unseen } from "../../testing/lines.ts";
import { matters } from "../matters/index.ts";

type Entries = Parameters<typeof comparisonOf>[0];
const of = (...entries: Entries) => matters(comparisonOf(entries), silent);
/** Kind and place of each matter, with its lines. */
const heldBy = (...entries: Entries) => {
  const found = of(...entries);
  return Object.fromEntries(namesOf(found).map((name, at) => [name, found[at]?.lines.toSorted()]));
};
const worth = { severity: "worth" } as const;
const repair = { severity: "repair" } as const;

const check = (rule: string, more: Partial<CrossCheck> = {}): CrossCheck => ({
  rule,
  verdict: "breaks",
  reason: "tired",
  severity: "worth",
  figures: {},
  over: "both-reports",
  strength: "contradicts",
  reads: [],
  claim: null,
  bad: [],
  decides: [{ side: "a", item: "identity.restoration-claim", position: "" }],
  ...more,
});

describe("a blow", () => {
  it("to a corner takes the end of the car with it; an end by itself stands by itself", () => {
    const support = line("underbody.radiator-support", worth);
    expect(heldBy(support, line("underbody.rails@left-front"))).toEqual({ "structure@left-front": [0, 1] });
    expect(heldBy(support, line("underbody.rails@left-rear"))).toEqual({
      "structure@left-rear": [1],
      "structure@front": [0],
    });
    expect(heldBy(line("trunk.floor"), line("underbody.rails@right-rear"))).toEqual({
      "structure@right-rear": [0, 1],
    });
  });

  it("to both corners: the end belongs to the one that was hit harder", () => {
    const ends = [line("underbody.radiator-support", worth), line("body.paint-history@hood", worth)];
    const left = line("underbody.rails@left-front", worth);
    expect(heldBy(...ends, left, line("underbody.rails@right-front"))).toEqual({
      "structure@right-front": [0, 1, 3],
      "structure@left-front": [2],
    });
    expect(
      heldBy(...ends, line("underbody.rails@left-front"), line("underbody.rails@right-front", worth)),
    ).toEqual({
      "structure@left-front": [0, 1, 2],
      "structure@right-front": [3],
    });
  });

  it("has bent the whole car, where something is bent; rust has not", () => {
    const wheelbase = line("underbody.wheelbase@left", worth);
    expect(heldBy(wheelbase, line("underbody.towers@right-rear"))).toEqual({
      "structure@right-rear": [0, 1],
    });
    expect(heldBy(wheelbase, line("underbody.inner-rockers@left"))).toEqual({
      "structure@left": [1],
      "structure@whole": [0],
    });
    expect(heldBy(wheelbase)).toEqual({ "structure@whole": [0] });
    const stretched = line("underbody.wheelbase@left", repair);
    expect(
      heldBy(stretched, line("underbody.rails@left-front"), line("underbody.rails@left-rear", worth)),
    ).toEqual({
      "structure@left-front": [0, 1],
      "structure@left-rear": [2],
    });
  });

  it("shows in the paint and the gaps beside it, and not on the roof or at the other end", () => {
    const rail = line("underbody.rails@right-front");
    expect(heldBy(rail, line("body.paint-history@right-front-door", worth))).toEqual({
      "structure@right-front": [0, 1],
    });
    expect(heldBy(rail, line("gaps.width-top@hood-cowl", repair))).toEqual({
      "structure@right-front": [0, 1],
    });
    expect(heldBy(rail, line("body.paint-history@roof", worth))).toEqual({
      "structure@right-front": [0],
      paint: [1],
    });
    expect(heldBy(rail, line("gaps.width-top@trunk-tail", repair))).toEqual({
      "structure@right-front": [0],
      fit: [1],
    });
  });

  it("shows in a door that does not latch only where the door itself is", () => {
    const latch = line("doors.latches@left-front", worth);
    const zone = namesOf(of(latch, line("underbody.inner-rockers@left")));
    expect(zone).toEqual(["structure@left", "latches"]);
  });

  it("that is only a repair makes no place of its own, and follows no neighbor", () => {
    const dent = line("body.faults@left-front-door", repair);
    expect(heldBy(dent)).toEqual({ bodywork: [0] });
    expect(heldBy(dent, line("underbody.rails@left-front"))).toEqual({
      "structure@left-front": [1],
      bodywork: [0],
    });
    expect(heldBy(dent, line("underbody.inner-rockers@left"))).toEqual({ "structure@left": [0, 1] });
  });

  it("is called by the panels where only panels are grave, by the structure where that is", () => {
    const rocker = line("body.faults@left-rocker");
    expect(heldBy(rocker)).toEqual({ "bodywork@left": [0] });
    expect(heldBy(rocker, line("underbody.inner-rockers@left", repair))).toEqual({ "bodywork@left": [0, 1] });
    expect(heldBy(rocker, line("underbody.inner-rockers@left", worth))).toEqual({ "structure@left": [0, 1] });
  });
});

describe("what was claimed and not seen", () => {
  it("stands at the place where something as grave was found, paint beside it too", () => {
    const rail = line("underbody.rails@right-front");
    expect(heldBy(rail, unseen("underbody.towers@right-front"))).toEqual({ "structure@right-front": [0, 1] });
    expect(heldBy(rail, unseen("underbody.towers@left-front"))).toEqual({
      "structure@right-front": [0],
      "unseen-lift": [1],
    });
    expect(heldBy(rail, unseen("body.paint-thickness@right-front-door", worth))).toEqual({
      "structure@right-front": [0, 1],
    });
    expect(heldBy(rail, unseen("body.faults@right-front-door", worth))).toEqual({
      "structure@right-front": [0],
      "unseen-looking": [1],
    });
  });

  it("stands by itself where nobody spoke of it, where what was found is milder, or where it needs a drive", () => {
    const hose = line("brakes.hoses@left-front");
    expect(namesOf(of(hose, unasked("brakes.hoses@right-front")))).toEqual(["brakes", "unseen-lift"]);
    expect(namesOf(of(line("brakes.hoses@left-front", worth), unseen("brakes.hoses@right-front")))).toEqual([
      "brakes",
      "unseen-lift",
    ]);
    expect(namesOf(of(hose, unseen("brakes.pull")))).toEqual(["brakes", "unseen-road"]);
    expect(namesOf(of(hose, unseen("brakes.hoses@right-front")))).toEqual(["brakes"]);
  });

  it("of a thing the sheet no longer has needs another look", () => {
    expect(namesOf(of(unseen("brakes.unheard-of")))).toEqual(["unseen-looking"]);
  });
});

describe("a line that a rule decides", () => {
  const claim = line("identity.restoration-claim", { ...worth, marks: ["by-figures"] });
  const ruledBy = (...checks: CrossCheck[]) => namesOf(matters(comparisonOf([claim], checks), silent));

  it("belongs to what the rule is about, and to its own thing where the rule holds or cannot tell", () => {
    expect(ruledBy(check("rebuilt-engine"))).toEqual(["engine-wear"]);
    expect(ruledBy(check("rebuilt-engine", { verdict: "holds" }))).toEqual(["history"]);
    expect(ruledBy(check("rebuilt-engine", { verdict: "cannot-tell" }))).toEqual(["history"]);
    expect(ruledBy(check("unheard-of"))).toEqual(["history"]);
    expect(ruledBy(check("square"))).toEqual(["history"]);
  });

  it("belongs to the first of two rules, also where a rule found it bad", () => {
    expect(ruledBy(check("odometer"), check("rebuilt-engine"))).toEqual(["miles"]);
    const { decides: bad } = check("odometer");
    expect(ruledBy(check("odometer", { decides: [], bad }))).toEqual(["miles"]);
  });

  it("belongs to its own thing where figures did not decide it, or where it lies on the body", () => {
    const told = line("identity.restoration-claim", worth);
    expect(namesOf(matters(comparisonOf([told], [check("odometer")]), silent))).toEqual(["history"]);
    const paint = line("body.paint-history@hood", { ...worth, marks: ["by-figures"] });
    const ruled = check("odometer", {
      decides: [{ side: "a", item: "body.paint-history", position: "hood" }],
    });
    expect(namesOf(matters(comparisonOf([paint], [ruled]), silent))).toEqual(["paint"]);
  });
});
