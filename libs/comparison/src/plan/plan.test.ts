import { isBadCall } from "@evenhand/shared/severity";
import { describe, expect, it } from "vitest";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { applicablePlaces } from "@evenhand/sheet/expand";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { form, sheet } from "../../testing/small-reports.ts";
import { planOf } from "./index.ts";

/** A plan that remembers nothing from another test. */
const freshPlan = () => planOf(compileSheet({ ...sheetVersion1 }));
const picksOf = (item: string, position = "") => Array.from(freshPlan().place(item, position).picks.values());

const formOf = (modelDoors: number) => ({ ...form, doors: modelDoors });
describe("planOf", () => {
  it("is made once for a compiled sheet, another for another", () => {
    expect(planOf(sheet)).toBe(planOf(sheet));
    expect(freshPlan()).not.toBe(planOf(sheet));
  });

  it("has one place for an item and position, with a number of its own", () => {
    const fresh = freshPlan();
    const [horn, radio] = [fresh.place("electrics.horn", ""), fresh.place("electrics.radio", "")];
    expect([horn.number, radio.number, fresh.count()]).toEqual([0, 1, 2]);
    expect(fresh.place("electrics.horn", "")).toBe(horn);
    expect(fresh.count()).toBe(2);
  });

  it("orders places by item and then by position, and knows circumstances", () => {
    const plan = freshPlan();
    const order = (item: string, position = "") => plan.place(item, position).order;
    const cylinders = [1, 2, 3].map((number) => order("engine.compression", `cylinder-${number}`));
    expect(cylinders).toEqual(cylinders.toSorted((a, b) => a - b));
    expect(new Set(cylinders).size).toBe(3);
    const items = sheetVersion1.items.map(({ id }) => id);
    const earlier = items.indexOf("electrics.horn") < items.indexOf("engine.compression");
    expect(order("electrics.horn") < Math.min(...cylinders)).toBe(earlier);
    expect(plan.place("visit.light", "").circumstance).toBe(true);
    expect(plan.place("electrics.horn", "").circumstance).toBe(false);
  });

  it("has a number only for a place it has met", () => {
    const plan = freshPlan();
    expect(plan.numberOf("electrics.horn", "")).toBeUndefined();
    const { number } = plan.place("electrics.horn", "");
    expect(plan.numberOf("electrics.horn", "")).toBe(number);
    expect(plan.numberOf("electrics.horn", "hood")).toBeUndefined();
  });

  it("shares what is an item's among its positions", () => {
    const plan = freshPlan();
    const [hood, roof] = [plan.place("body.faults", "hood"), plan.place("body.faults", "roof")];
    expect(hood.frame).toBe(roof.frame);
    expect(hood.picks).toBe(roof.picks);
    expect(Array.from(hood.frame.kindOrder.keys())).toContain("corrosion");
  });

  it("refuses places the sheet does not have", () => {
    const plan = freshPlan();
    expect(() => plan.place("electrics.cannon", "")).toThrow(RangeError);
    expect(() => plan.place("electrics.horn", "hood")).toThrow(/electrics\.horn at "hood"/);
  });

  it("gives the places that apply to a car, the same list for the same form", () => {
    const plan = freshPlan();
    const places = plan.applicable(form);
    expect(places.map(({ compiled, position }) => `${compiled.item.id} ${position}`)).toEqual(
      applicablePlaces(sheet.sheet, form)
        .filter(({ item }) => item.circumstance !== true && item.asked !== "statement")
        .map(({ item, position }) => `${item.id} ${position}`),
    );
    expect(plan.applicable({ ...form })).toBe(places);
    expect(plan.applicable({ ...form, cylinders: 4 }).length).toBeLessThan(places.length);
  });

  it("forgets forms rather than grow without end", () => {
    const fresh = planOf(compileSheet({ ...sheetVersion1, items: sheetVersion1.items.slice(0, 1) }));
    const first = fresh.applicable(formOf(0));
    for (let doors = 1; doors < 512; doors += 1) fresh.applicable(formOf(doors));
    expect(fresh.applicable(formOf(0))).toBe(first);
    fresh.applicable(formOf(512));
    expect(fresh.applicable(formOf(0))).not.toBe(first);
    expect(fresh.applicable(formOf(0))).toEqual(first);
  });
});

describe("the silent entry", () => {
  it("says that neither report speaks of the place, and cannot be written to", () => {
    const { silent } = freshPlan().place("electrics.horn", "");
    expect(silent).toEqual({
      item: "electrics.horn",
      position: "",
      atom: { of: "answer" },
      outcome: "unseen",
      calls: { a: null, b: null },
      severity: "repair",
      marks: [],
      reason: "not-reported",
      direction: "neither",
      standing: "unseen",
      firmness: { a: null, b: null },
      finding: { a: null, b: null },
    });
    for (const part of [silent, silent.atom, silent.firmness, silent.finding])
      expect(Object.isFrozen(part)).toBe(true);
  });
});

describe("how grave an unseen place can be", () => {
  it.each([
    ["identity.vin", "main-plate", "halt"],
    ["wheels.tire-age", "spare", "small"],
    ["wheels.tire-age", "left-front", "danger"],
    ["wheels.pressure", "spare", "small"],
    ["electrics.lamps", "interior", "small"],
    ["identity.title-number", "", "halt"],
    ["engine.bore", "", "repair"],
  ])("%s at %j: %s", (item, position, severity) => {
    expect(freshPlan().place(item, position).severity).toBe(severity);
  });
});

describe("how grave it is that two answers part, neither of them bad", () => {
  it.each([
    ["identity.vin", "main-plate", "halt"],
    ["identity.paint-code", "", "worth"],
    ["brakes.lining-thickness", "left-front", "repair"],
    ["underbody.ground-clearance", "", "small"],
    ["engine.compression", "cylinder-1", "worth"],
  ])("%s at %j: %s", (item, position, severity) => {
    expect(freshPlan().place(item, position).parted).toBe(severity);
  });
});

const callAt = (item: string, position: string, answer: string) =>
  freshPlan().place(item, position).picks.get(answer)?.call;

const presence = (item: string) => picksOf(item).map(({ answer, call }) => `${answer}: ${call}`);

describe("the answers of a list", () => {
  it("rank what works from yes down", () => {
    expect(picksOf("electrics.horn")).toEqual([
      { answer: "yes", call: "good", rank: 0 },
      { answer: "intermittent", call: "repair", rank: 1 },
      { answer: "no", call: "repair", rank: 2 },
      { answer: "not-known", call: "no-yardstick", rank: 3 },
    ]);
  });

  it("have no rank for presence, which is bad by what it should be", () => {
    expect(picksOf("trunk.jack").map(({ call, rank }) => [isBadCall(call), rank])).toEqual([
      [false, undefined],
      [true, undefined],
      [false, undefined],
    ]);
  });

  it("have the options' order and badness, and a rank only where ordered", () => {
    expect(
      picksOf("identity.originality", "engine")
        .map(({ answer, rank }) => [answer, rank])
        .slice(0, 2),
    ).toEqual([
      ["original-to-car", 0],
      ["right-type-and-date", 1],
    ]);
    expect(picksOf("visit.light").every(({ rank }) => rank === undefined)).toBe(true);
    expect(
      picksOf("driveline.pinion-seal")
        .filter(({ call }) => isBadCall(call))
        .map(({ answer }) => answer),
    ).toEqual(["weep", "drip", "run"]);
  });

  it("are called at the place they stand at: an old spare is a trifle, a weep of fuel is not", () => {
    expect(callAt("wheels.tire-age", "left-front", "over-ten-years")).toBe("danger");
    expect(callAt("wheels.tire-age", "spare", "over-ten-years")).toBe("small");
    expect(callAt("driveline.leaks-before", "oil-pan", "weep")).toBe("small");
    expect(callAt("driveline.leaks-before", "fuel", "weep")).toBe("danger");
  });

  it("are called at each place by itself, whichever of them was met first", () => {
    const plan = freshPlan();
    const callOver = (position: string) =>
      plan.place("wheels.tire-age", position).picks.get("over-ten-years")?.call;
    expect([callOver("left-front"), callOver("spare"), callOver("right-front")]).toEqual([
      "danger",
      "small",
      "danger",
    ]);
    const failing = (position: string) => plan.place("electrics.lamps", position).picks.get("no")?.call;
    expect([failing("left-headlamp"), failing("reverse"), failing("right-headlamp")]).toEqual([
      "danger",
      "small",
      "danger",
    ]);
  });

  it("miss a paper only where it was promised", () => {
    expect(presence("identity.build-sheet")).toEqual([
      "present: good",
      "absent: small",
      "not-known: no-yardstick",
    ]);
    expect(presence("trunk.jack")).toEqual(["present: good", "absent: small", "not-known: no-yardstick"]);
  });

  it("are none for other kinds", () => {
    expect(picksOf("engine.compression", "cylinder-1")).toEqual([]);
  });
});
