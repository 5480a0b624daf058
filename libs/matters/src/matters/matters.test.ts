import { describe, expect, it } from "vitest";
import type { CrossCheck } from "@evenhand/shared/cross-check";
import { admitted, comparisonOf, line, namesOf, silent, unasked, unseen } from "../../testing/lines.ts";
import { matters } from "./index.ts";

const of = (...entries: Parameters<typeof comparisonOf>[0]) => matters(comparisonOf(entries), silent);
const worth = { severity: "worth" } as const;
const repair = { severity: "repair" } as const;

const check = (places: string[], more: Partial<CrossCheck> = {}): CrossCheck => ({
  rule: "odometer",
  verdict: "breaks",
  reason: "tired",
  severity: "worth",
  figures: {},
  over: "both-reports",
  strength: "contradicts",
  reads: places.map((place) => ({
    side: "b",
    item: place.split("@")[0] ?? "",
    position: place.split("@")[1] ?? "",
  })),
  claim: null,
  bad: [],
  decides: [],
  ...more,
});

describe("matters", () => {
  it("join what one thing says in many places, worst line first", () => {
    const [brakes, ...others] = of(
      line("brakes.servo", repair),
      line("brakes.hoses@left-front"),
      line("road.braking"),
    );
    expect(others).toEqual([]);
    expect(brakes).toMatchObject({ kind: "brakes", severity: "danger", lines: [1, 2, 0] });
    expect(brakes?.next.step).toBe("do-not-drive");
  });

  it("join a blow by its corner: rail, tower, paint of the next panel, gap, and the car's own shape", () => {
    const found = of(
      line("underbody.rails@right-front", worth),
      line("underbody.towers@right-front"),
      line("body.paint-thickness@hood", worth),
      line("body.paint-history@right-front-door", worth),
      line("gaps.width-top@hood-right-fender", worth),
      line("underbody.wheelbase@right", worth),
      line("body.paint-history@left-quarter", worth),
    );
    expect(namesOf(found)).toEqual(["structure@right-front", "paint"]);
    expect(found[0]?.lines).toHaveLength(6);
  });

  it("keep two corners apart, and rust that is only a repair with neither", () => {
    const found = of(
      line("underbody.inner-rockers@left"),
      line("underbody.spring-hangers@left"),
      line("body.faults@right-rocker", repair),
    );
    expect(namesOf(found)).toEqual(["structure@left", "structure@left-rear", "bodywork"]);
  });

  it("stand by what is worst: halt, danger, worth, repair, trifles in one", () => {
    const found = of(
      line("interior.carpet", { severity: "small" }),
      line("electrics.clock", repair),
      line("electrics.fuel-gauge", { severity: "small" }),
      line("engine.compression@cylinder-1", worth),
      line("brakes.hoses@left-front"),
      line("identity.title-holder", { severity: "halt" }),
    );
    expect(namesOf(found)).toEqual(["title", "brakes", "engine-wear", "instruments", "small-things"]);
    expect(found.map(({ lines }) => lines)).toEqual([[5], [4], [3], [1, 2], [0]]);
  });

  it("put what nobody saw behind what was found one step milder, by what it would have needed", () => {
    const found = of(
      unseen("identity.lien", { severity: "halt" }),
      unseen("road.shifts", worth),
      line("underbody.inner-rockers@left"),
      line("engine.compression@cylinder-1", worth),
      line("electrics.clock", repair),
      line("interior.carpet", { severity: "small" }),
    );
    expect(namesOf(found)).toEqual([
      "structure@left",
      "unseen-papers",
      "engine-wear",
      "instruments",
      "unseen-road",
      "small-things",
    ]);
    expect(found.map(({ next }) => next.step).slice(0, 2)).toEqual(["do-not-drive", "see-paper"]);
  });

  it("let a claim nobody could see stand with what was found of the same thing", () => {
    const found = of(line("brakes.hoses@left-front"), unseen("brakes.lining-thickness@left-rear"));
    expect(namesOf(found)).toEqual(["brakes"]);
    expect(of(line("brakes.servo", repair), unseen("brakes.hoses@left-front"))).toHaveLength(2);
  });

  it("put what both say behind what nobody admitted, and say so", () => {
    const found = of(admitted("brakes.hoses@left-front"), line("wheels.fixings@left-front"));
    expect(namesOf(found)).toEqual(["wheels", "brakes"]);
    expect(found.map((matter) => matter.admitted)).toEqual([false, true]);
  });

  it("take a claim a rule decides to what the rule is about, with the rule beside it", () => {
    const wear: CrossCheck = {
      rule: "rebuilt-engine",
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
    };
    const claim = line("identity.restoration-claim", { ...worth, marks: ["by-figures"] });
    expect(namesOf(matters(comparisonOf([claim]), silent))).toEqual(["history"]);
    const [ruled] = matters(comparisonOf([claim], [wear]), silent);
    expect(ruled).toMatchObject({ kind: "engine-wear", checks: [0] });
  });

  it("name what each would cost by, once, and nothing where the sheet has no cost for it", () => {
    const [brakes] = of(
      line("brakes.hoses@left-front"),
      line("brakes.hoses@right-front"),
      line("brakes.pedal-reserve"),
    );
    const rows = ["brakes.hoses", "brakes.pedal-reserve"].map(
      (item) => silent.sheet.items.get(item)?.item.costRow,
    );
    expect(brakes?.costRows).toEqual(rows);
    const [label] = of(line("identity.market-label"));
    expect(label?.costRows).toEqual([]);
  });

  it("have each open check beside the first matter that it speaks of, and none that holds or speaks of nothing", () => {
    const lines = [
      line("brakes.hoses@left-front"),
      line("wheels.fixings@left-front"),
      line("electrics.clock", repair),
    ];
    const checks = [
      check(["electrics.clock", "wheels.fixings@left-front"]),
      check(["wheels.fixings@left-front"], { verdict: "holds" }),
      check(["wheels.fixings@right-front"]),
      check(["electrics.clock"]),
      check(["wheels.fixings@left-front"], { verdict: "cannot-tell" }),
    ];
    const found = matters(comparisonOf(lines, checks), silent);
    expect(found.map((matter) => [matter.kind, matter.checks])).toEqual([
      ["brakes", []],
      ["wheels", [0, 4]],
      ["instruments", [3]],
    ]);
  });

  it("never count a number in doubt among trifles or repairs", () => {
    const slip = { severity: "repair", outcome: "doubtful", marks: ["perhaps-unit"] } as const;
    const number = line("identity.vin@main-plate", { ...slip, marks: [...slip.marks] });
    const small = line("interior.carpet", { severity: "small" });
    expect(namesOf(of(number, small))).toEqual(["numbers", "small-things"]);
    const repairs = [
      "electrics.clock",
      "electrics.horn",
      "electrics.heat",
      "engine.coolant",
      "engine.timing",
    ];
    const more = [
      "road.take-up",
      "interior.top@fabric",
      "driveline.exhaust@hangers",
      "steering.springs@left-front",
    ];
    const rest = ["brakes.servo", "wheels.tubes", "engine.wiring", "electrics.volts-rest", "interior.smell"];
    const many = [...repairs, ...more, ...rest].map((place) => line(place, repair));
    const found = of(number, ...many);
    expect(found.length).toBeLessThanOrEqual(12);
    expect(namesOf(found)).toContain("numbers");
    expect(namesOf(found)).toContain("repairs");
  });

  it("fold repairs, and what nobody spoke of, where there would be more than a dozen", () => {
    const dangers = [
      "brakes.hoses@left-front",
      "wheels.fixings@left-front",
      "engine.fuel-smell",
      "steering.free-play",
    ];
    const repairs = [
      "electrics.clock",
      "electrics.horn",
      "electrics.heat",
      "engine.coolant",
      "engine.timing",
      "interior.seats@left-front",
      "interior.top@fabric",
      "road.take-up",
      "driveline.leaks-before@oil-pan",
    ];
    const found = of(
      ...dangers.map((place) => line(place)),
      ...repairs.map((place) => line(place, repair)),
      unasked("underbody.rails@left-front"),
      unasked("identity.theft", { severity: "halt" }),
      unseen("road.tracking"),
    );
    expect(found).toHaveLength(12);
    expect(namesOf(found)).toEqual(expect.arrayContaining(["repairs", "unseen", "unseen-road"]));
  });
});
