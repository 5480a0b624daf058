import { describe, expect, it } from "vitest";
import type { Entry } from "@evenhand/shared/comparison";
import { comparisonOf, line, silent, unasked, unseen, worded } from "../../testing/lines.ts";

const of = (...entries: Entry[]) => worded(comparisonOf(entries), silent);
const headlineOf = (...entries: Entry[]): string => of(...entries)[0]?.headline ?? "";
const foundIn = (...entries: Entry[]): string => of(...entries)[0]?.found ?? "";
const fault = (place: string, kind: string, more: Partial<Entry> = {}): Entry =>
  line(place, { atom: { of: "fault", kind, b: 0 }, ...more });
const servo = (severity: "halt" | "danger" | "worth" | "repair") => line("brakes.servo", { severity });
const small = (place: string): Entry => line(place, { severity: "small" });

describe("a place on the car", () => {
  const rail = "underbody.rails@left-front";

  it.each([
    ["rust alone", [fault(rail, "perforation")], "Rust at the left front"],
    ["a blow alone", [fault(rail, "buckle")], "Bent or cracked metal at the left front"],
    [
      "both",
      [fault(rail, "corrosion"), fault("underbody.towers@left-front", "bend")],
      "Rust and bent metal at the left front",
    ],
    ["neither", [fault(rail, "patch")], "Repairs or damage at the left front"],
    [
      "no fault at all",
      [line("underbody.floor-repair@right-front")],
      "Repairs or damage along the right side",
    ],
    [
      "a rust that nobody saw",
      [line(rail), fault("underbody.towers@left-front", "corrosion", { outcome: "unseen" })],
      "Repairs or damage at the left front",
    ],
  ])("is told by what was found there: %s", (_, entries, said) => {
    expect(headlineOf(...entries)).toBe(said);
  });

  it("was hit and repaired where the inspector says so, and not where nobody could look", () => {
    const repaired = line("underbody.collision-repair@right-rear");
    expect(headlineOf(repaired, fault("underbody.rails@right-rear", "corrosion"))).toBe(
      "Hit and repaired at the right rear",
    );
    const notSeen = unseen("underbody.collision-repair@right-rear");
    expect(headlineOf(fault("underbody.rails@right-rear", "corrosion"), notSeen)).toBe(
      "Rust at the right rear",
    );
  });

  it("comes behind what its gravest line says by itself", () => {
    const latch = line("doors.latches@left-front");
    expect(headlineOf(latch, fault("underbody.rails@left-front", "corrosion", { severity: "worth" }))).toBe(
      "A door does not stay shut, and rust at the left front",
    );
  });
});

describe("how grave it is", () => {
  it("has words of its own, else those of what is next milder, else trouble with it", () => {
    expect(headlineOf(servo("danger"))).toBe("The brakes are not safe");
    expect(headlineOf(servo("halt"))).toBe("The brakes are not safe");
    expect(headlineOf(servo("worth"))).toBe(headlineOf(servo("repair")));
    expect(headlineOf(servo("repair"))).not.toBe("The brakes are not safe");
    expect(headlineOf(line("body.color@hood", { severity: "repair" }))).toBe("Trouble with color");
  });

  it("goes by what was found, and not by what is graver and in doubt", () => {
    const doubtful = line("brakes.hoses@left-front", { outcome: "doubtful" });
    expect(headlineOf(line("brakes.servo", { severity: "repair" }), doubtful)).not.toMatch(/not safe|hoses/);
  });
});

describe("small things", () => {
  it("are counted, each thing named once, five things at most", () => {
    const three = ["interior.carpet", "electrics.clock", "electrics.fuel-gauge"].map(small);
    expect(headlineOf(...three)).toBe("Small things");
    expect(foundIn(...three)).toMatch(/^3 of them: .+, .+, .+$/);
    expect(foundIn(...three)).not.toMatch(/others/);
    const many = [...three, ...["electrics.heat", "electrics.blower", "electrics.radio"].map(small)];
    expect(foundIn(...many)).toMatch(/^6 of them: .+ and others$/);
    const twice = ["left-front", "right-front", "left-rear"].map((at) => small(`wheels.tire-age@${at}`));
    expect(foundIn(...twice)).toBe("3 of them: claimed tire age");
  });
});

describe("of many lines", () => {
  it("three are named, another thing before the same thing again, the rest counted", () => {
    const lamps = ["left-stop", "right-stop", "left-rear-turn", "right-rear-turn"].map((at) =>
      line(`electrics.lamps@${at}`),
    );
    const said = foundIn(...lamps, line("electrics.horn"), line("electrics.wipers"));
    expect(said.split("; ").map((each) => each.split(/[,:]/)[0])).toEqual([
      "lamps",
      "horn",
      "wipers",
      "and 3 more",
    ]);
    expect(foundIn(...lamps).split("; ")).toHaveLength(4);
    expect(foundIn(...lamps.slice(0, 3))).not.toMatch(/more$/);
  });

  it("what the inspector came to, and could not see, is named before what nobody spoke of", () => {
    const silence = unasked("underbody.rails@left-front", {
      severity: "worth",
      finding: { a: null, b: null },
    });
    const cameTo = unseen("underbody.towers@left-rear", { severity: "worth", finding: { a: null, b: 0 } });
    const claimed = unseen("underbody.floor-pans@left-rear", {
      severity: "worth",
      finding: { a: 0, b: null },
    });
    const dangers = ["wheels.fixings@left-front", "steering.free-play"].map((place) => line(place));
    const places = (entries: Entry[]) =>
      of(...entries, ...dangers)
        .find(({ kind }) => kind === "unseen-lift")
        ?.found.split("; ")
        .map((each) => each.split(",")[0]);
    expect(places([silence, cameTo])).toEqual([
      expect.stringContaining("tower"),
      expect.stringContaining("rail"),
    ]);
    expect(places([silence, claimed])).toEqual(["floor pans", expect.stringContaining("rail")]);
  });

  it("of what nobody knows what was claimed is named first, then the gravest", () => {
    const silence = unasked("underbody.rails@left-front", { severity: "halt" });
    const milder = unseen("underbody.towers@left-rear", { severity: "worth" });
    const graver = unseen("underbody.floor-pans@left-rear");
    expect(
      foundIn(silence, milder, graver)
        .split("; ")
        .map((each) => each.split(",")[0]),
    ).toEqual(["floor pans", expect.stringContaining("tower"), expect.stringContaining("rail")]);
  });
});
