import { describe, expect, test } from "vitest";
import type { Answer, Fault } from "@evenhand/shared/answer";
import type { Item } from "@evenhand/shared/sheet";
import type { UnitSymbol } from "@evenhand/shared/unit";
import { sheetVersion1 } from "../sheet-version-1/index.ts";
import { callFault, callOf } from "./index.ts";
import type { CallContext } from "./index.ts";

const itemOf = (id: string): Item => {
  const item = sheetVersion1.items.find((each) => each.id === id);
  if (item === undefined) throw new Error(`the sheet has no ${id}`);
  return item;
};
const read = (unit: UnitSymbol, value: number): Answer => ({ kind: "reading", unit, values: [{ value }] });
const calls = (id: string, answers: readonly Answer[]) => answers.map((answer) => callOf(answer, itemOf(id)));
const at = (position: string | undefined): CallContext => (position === undefined ? {} : { position });
const works = (value: "yes" | "no" | "intermittent", position: string) =>
  callOf({ kind: "working", value }, itemOf("electrics.lamps"), at(position));
const leak = (option: string, position?: string) =>
  callOf({ kind: "choice", option }, itemOf("driveline.leaks-before"), at(position));
const graded = (id: string, value: string) => callOf({ kind: "grade", scale: "house", value }, itemOf(id));
const faultKinds = new Map(sheetVersion1.faultKinds.map((kind) => [kind.id, kind]));
const grave = (id: string, fault: Fault, position?: string) =>
  callFault(fault, itemOf(id), { faultKinds, ...at(position) });
const glass = (fault: Fault, position: string) => grave("brightwork.glass-faults", fault, position);
const long = (kind: string, value: number, unit: UnitSymbol = "mm"): Fault => ({
  kind,
  extent: { value, unit },
});

describe("what works, what is there, what was chosen", () => {
  test("a stop lamp is graver than the lamp of the plate, now and then as grave as never", () => {
    expect([works("no", "left-stop"), works("intermittent", "left-stop")]).toEqual(["danger", "danger"]);
    expect([works("no", "plate"), works("intermittent", "plate")]).toEqual(["small", "small"]);
    expect([works("yes", "plate"), works("yes", "left-stop")]).toEqual(["good", "good"]);
  });

  test("what works only now and then may be milder than what never does", () => {
    const item: Item = {
      ...itemOf("electrics.horn"),
      working: { severity: "danger", intermittent: "repair", at: { spare: "small" } },
    };
    const said = (value: "no" | "intermittent", position = "") =>
      callOf({ kind: "working", value }, item, { position });
    expect([said("no"), said("intermittent"), said("intermittent", "spare")]).toEqual([
      "danger",
      "repair",
      "small",
    ]);
  });

  test("a paper nobody promised is missed by nobody", () => {
    expect(
      calls("identity.market-label", [
        { kind: "presence", value: "present" },
        { kind: "presence", value: "absent" },
      ]),
    ).toEqual(["good", "good"]);
  });

  test("what is good neither there nor away has no yardstick", () => {
    const item: Item = {
      ...itemOf("interior.flood-line"),
      presence: { severity: "halt", goodIs: "neither" },
    };
    expect(callOf({ kind: "presence", value: "present" }, item)).toBe("no-yardstick");
  });

  test("a weep of fuel is graver than one of oil, and what the sheet does not offer says nothing", () => {
    expect([leak("weep", "oil-pan"), leak("weep", "fuel"), leak("weep")]).toEqual([
      "small",
      "danger",
      "small",
    ]);
    expect([leak("drip", "oil-pan"), leak("none", "fuel"), leak("torrent", "fuel")]).toEqual([
      "repair",
      "good",
      "no-yardstick",
    ]);
  });

  test("a circumstance of the visit speaks for or against no car", () => {
    expect(calls("visit.light", [{ kind: "choice", option: "daylight" }])).toEqual(["no-yardstick"]);
  });

  test.each([
    ["steering.free-play", { kind: "working", value: "no" }],
    ["electrics.horn", read("mm", 1)],
    ["electrics.horn", { kind: "grade", scale: "house", value: "spent" }],
    ["electrics.horn", { kind: "presence", value: "absent" }],
    ["electrics.horn", { kind: "choice", option: "none" }],
    ["electrics.horn", { kind: "faults", found: [{ kind: "crack" }], denied: [] }],
    ["electrics.horn", { kind: "not-fitted" }],
    ["electrics.horn", { kind: "not-seen", reason: "no-tool" }],
    ["identity.vin", { kind: "code", text: "AM58" }],
  ] satisfies [string, Answer][])(
    "an answer of a kind %s is not asked for has no yardstick: %j",
    (id, answer) => {
      expect(callOf(answer, itemOf(id))).toBe("no-yardstick");
    },
  );
});

describe("grades", () => {
  test("of the house are bad from the item's own grade down", () => {
    const house = ["spent", "heavy-wear", "even-wear", "light-wear", "as-new"];
    expect(house.map((value) => graded("engine.belts", value))).toEqual([
      "repair",
      "repair",
      "good",
      "good",
      "good",
    ]);
  });

  test("on a scale nobody brought say nothing", () => {
    expect(callOf({ kind: "grade", scale: "own", value: "g1" }, itemOf("engine.belts"))).toBe("no-yardstick");
    expect(graded("engine.belts", "fair")).toBe("no-yardstick");
  });

  test("at the very end may be graver than bad", () => {
    const item: Item = {
      ...itemOf("engine.belts"),
      grade: { severity: "repair", badFrom: "heavy-wear", spent: "danger" },
    };
    const said = (value: string) => callOf({ kind: "grade", scale: "house", value }, item);
    expect([said("spent"), said("heavy-wear"), said("even-wear")]).toEqual(["danger", "repair", "good"]);
  });
});

describe("faults", () => {
  test("in the glass by kind, place and size", () => {
    expect(glass({ kind: "crack" }, "windshield")).toBe("danger");
    expect(glass({ kind: "crack" }, "rear-window")).toBe("repair");
    expect([19, 20, 25].map((size) => glass(long("chip", size), "windshield"))).toEqual([
      "small",
      "repair",
      "repair",
    ]);
    expect(glass(long("chip", 1, "in"), "windshield")).toBe("repair");
    expect(glass(long("chip", 1, "in"), "rear-window")).toBe("small");
    expect(glass({ kind: "chip" }, "windshield")).toBe("small");
  });

  test("of a tire: on the road dangerous, on the spare a repair", () => {
    expect([
      grave("wheels.tire-faults", { kind: "cut" }, "left-rear"),
      grave("wheels.tire-faults", { kind: "cut" }),
    ]).toEqual(["danger", "danger"]);
    expect(grave("wheels.tire-faults", { kind: "cut" }, "spare")).toBe("repair");
  });

  test("no row speaks of are as grave as their kind ordinarily is, and an unknown kind wants a repair", () => {
    expect(grave("body.faults", long("scratch", 40), "hood")).toBe("small");
    expect(grave("body.faults", long("scratch", 300), "hood")).toBe("repair");
    expect(callFault({ kind: "scratch" }, itemOf("body.faults"))).toBe("repair");
    expect(callFault(long("dent", 5, "in"), itemOf("body.faults"))).toBe("small");
  });

  test("at one spot may be graver than at another", () => {
    const item: Item = {
      ...itemOf("steering.hoses"),
      faults: {
        kinds: ["chafe"],
        severities: [{ severity: "danger", spots: ["end"] }, { severity: "repair" }],
      },
    };
    const spotted = (spot?: string) =>
      callFault({ kind: "chafe", ...(spot === undefined ? {} : { spot }) }, item);
    expect([spotted("end"), spotted("middle"), spotted()]).toEqual(["danger", "repair", "repair"]);
  });

  test("count by the worst of them, though others were denied", () => {
    const found = [{ kind: "scratch" }, { kind: "perforation" }, { kind: "chip" }];
    const said = callOf({ kind: "faults", found, denied: ["dent"] }, itemOf("body.faults"), {
      position: "left-rocker",
    });
    expect(said).toBe("danger");
    expect(callOf({ kind: "faults", found: [], denied: "all" }, itemOf("body.faults"))).toBe("good");
  });
});
