import { describe, expect, it } from "vitest";
import { comparisonOf, line, namesOf, silent, unasked, unseen, worded } from "../../testing/lines.ts";

type Entries = Parameters<typeof comparisonOf>[0];
const of = (entries: Entries) => worded(comparisonOf(entries), silent);
const names = (entries: Entries) => namesOf(of(entries));

/** One place each of as many kinds of matter, gravest first where all are as grave. */
const dangers = [
  "underbody.rails@left-front",
  "brakes.hoses@left-front",
  "steering.free-play",
  "steering.springs@left-front",
  "wheels.fixings@left-front",
  "wheels.tread-depth@left-front",
  "engine.fuel-smell",
  "driveline.exhaust@hangers",
  "brightwork.glass-faults@windshield",
  "driveline.joint-play",
].map((place) => line(place));
const repairs = [
  "engine.coolant",
  "driveline.leaks-before@oil-pan",
  "engine.timing",
  "road.take-up",
  "electrics.volts-rest",
  "electrics.horn",
  "electrics.clock",
  "electrics.heat",
  "interior.top@fabric",
  "interior.seats@left-front",
].map((place) => line(place, { severity: "repair" }));

const kindOf = (entry: Entries[number]): string => names([entry])[0] ?? "";

describe("repairs", () => {
  it("stay by themselves as long as there are a dozen matters", () => {
    expect(names([...dangers, ...repairs.slice(0, 2)])).toHaveLength(12);
    expect(names([...dangers, ...repairs.slice(0, 2)])).not.toContain("repairs");
    expect(names(repairs)).toEqual(repairs.map(kindOf));
  });

  it("are made one from the last, no more of them than must be", () => {
    const found = of([...dangers.slice(0, 6), ...repairs.slice(0, 7)]);
    expect(found).toHaveLength(12);
    expect(namesOf(found).slice(6)).toEqual([...repairs.slice(0, 5).map(kindOf), "repairs"]);
    expect(found.at(-1)?.lines).toEqual([11, 12]);
  });

  it("keep their two gravest as long as what nobody saw can be made one instead, and then do not", () => {
    const [first, second, third, fourth] = [
      "road.shifts",
      "engine.smoke-cold",
      "underbody.towers@left-rear",
      "identity.lien",
    ].map((place) => unseen(place, { severity: "worth" }));
    const two = repairs.slice(0, 2);
    const found = of(
      [...dangers.slice(0, 7), ...two, first, second, third, fourth].flatMap((one) => one ?? []),
    );
    expect(found).toHaveLength(12);
    expect(namesOf(found)).toEqual(expect.arrayContaining([...two.map(kindOf), "unseen-claims"]));
    const fewer = names([...dangers.slice(0, 9), ...two, first, second].flatMap((one) => one ?? []));
    expect(fewer).toHaveLength(12);
    expect(fewer).toEqual(expect.arrayContaining(["repairs", "unseen-road", "unseen-running"]));
  });

  it("are never made one with papers, numbers or what the price rests on", () => {
    const paper = line("identity.registration", { severity: "repair" });
    const miles = line("identity.odometer", { severity: "repair" });
    const model = line("identity.claimed-model", { severity: "repair" });
    const price = line("engine.noise", { severity: "worth" });
    const found = of([...dangers.slice(0, 6), paper, miles, model, price, ...repairs]);
    expect(found).toHaveLength(12);
    expect(namesOf(found)).toEqual(
      expect.arrayContaining(["title", "miles", "model", "engine-wear", "repairs"]),
    );
  });

  it("hold every line of what was made one, in the order of the comparison", () => {
    const found = of([...repairs, ...dangers]);
    const folded = found.find(({ kind }) => kind === "repairs");
    expect(found).toHaveLength(12);
    expect(folded?.lines).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9]);
  });
});

describe("what nobody saw", () => {
  const silence = [
    unasked("underbody.towers@left-rear", { severity: "worth" }),
    unasked("interior.carpet", { severity: "worth" }),
  ];

  it("stays by what it needs where there is room", () => {
    expect(names([...dangers.slice(0, 2), ...silence])).toEqual([
      ...dangers.slice(0, 2).map(kindOf),
      "unseen-opened",
      "unseen-lift",
    ]);
  });

  it("is made one where nobody spoke of it, what was claimed staying by what it needs", () => {
    const claimed = unseen("underbody.towers@right-rear", { severity: "worth" });
    const found = of([...dangers, ...silence, claimed, line("electrics.lamps@left-stop")]);
    const at = (kind: string) => found.find((each) => each.kind === kind)?.lines;
    expect(found).toHaveLength(13);
    expect([at("unseen"), at("unseen-lift")]).toEqual([[10, 11], [12]]);
  });

  it("and what was found that nothing judges are two things", () => {
    const unjudged = line("engine.noise", { outcome: "unstated", marks: ["no-yardstick"] });
    const claims = ["road.shifts", "engine.smoke-cold"].map((place) => unseen(place, { severity: "worth" }));
    const found = of([...dangers, unjudged, ...claims]);
    const at = (kind: string) => found.find((each) => each.kind === kind)?.lines;
    expect([at("no-yardstick"), at("unseen-claims")]).toEqual([[10], [11, 12]]);
  });
});

describe("of more than fifteen that can hurt somebody", () => {
  const more = [
    line("electrics.lamps@left-stop"),
    line("electrics.speedometer"),
    line("interior.belt-webbing@left-front"),
    line("engine.wiring"),
    line("identity.title-holder", { severity: "halt" }),
    line("identity.lien", { severity: "halt" }),
  ];

  it("fifteen stay as they are", () => {
    expect(names([...dangers, ...more.slice(0, 5)])).toHaveLength(15);
    expect(of([...dangers, ...more.slice(0, 5)]).every(({ lines }) => lines.length === 1)).toBe(true);
  });

  it("the last one goes to the graver of its family, and gives it its lines", () => {
    const found = of([...dangers, ...more]);
    expect(found).toHaveLength(15);
    const [shared] = found.filter(({ lines }) => lines.length > 1);
    expect(shared && [shared.kind, shared.lines]).toEqual(["lamps", [10, 11]]);
  });

  it("a place on the car that takes something else with it says so", () => {
    const corners = ["left-front", "right-front", "left-rear", "right-rear"];
    const papers = ["identity.title-holder", "identity.lien", "identity.theft", "identity.vin@main-plate"];
    const found = of([
      ...corners.map((corner) => line(`underbody.rails@${corner}`)),
      ...papers.map((place) => line(place, { severity: "halt" })),
      ...dangers.slice(1, 9),
    ]);
    expect(found).toHaveLength(15);
    const shared = found.filter(({ lines }) => lines.length > 1);
    expect(shared.map(({ kind, zone, lines }) => [kind, zone, lines])).toEqual([
      ["structure", "right-rear", [3, 15]],
    ]);
    expect(found.filter(({ headline }) => headline.endsWith("at the right rear and elsewhere"))).toEqual(
      shared,
    );
  });
});
