import type { Answer } from "@evenhand/shared/answer";
import { HandOverComparison } from "@evenhand/shared/hand-over";
import { transportSheet1 } from "@evenhand/sheet/transport-sheet-1";
import { describe, expect, it } from "vitest";
import {
  changed,
  collectionOf,
  deliveryOf,
  foundAt,
  millimeters,
  soundFindings,
  transportSheet,
} from "../../testing/hand-over-reports.ts";
import { handOverWords } from "../hand-over-words/index.ts";
import { compareHandOver } from "./index.ts";

type Others = Parameters<typeof changed>;

const compared = (atCollection: Others, atDelivery: Others) => {
  const reports = {
    collection: collectionOf(changed(...atCollection)),
    delivery: deliveryOf(changed(...atDelivery)),
  };
  const comparison = compareHandOver(reports.collection, reports.delivery, transportSheet);
  // Figures keep their unit by a space that does not break.
  const said = comparison.lines.map((line) =>
    `${line.kind}: ${handOverWords(line, reports, transportSheet1, comparison).sentence}`.replace(
      /\s/gu,
      " ",
    ),
  );
  return { ...comparison, said };
};

const choice = (option: string): Answer => ({ kind: "choice", option });
const dark = ["visit.light", "", choice("dark")] as const;
const dent = (value: number, spot = "middle-center") => ({ kind: "dent", spot, extent: millimeters(value) });
const reads = (value: number, unit: "mi" | "km" = "mi"): Others[number] => [
  "identity.odometer",
  "",
  { kind: "reading", unit, values: [{ value }] },
];
const scratch = (value: number, spot: string) => ({ kind: "scratch", spot, extent: millimeters(value) });
const panel = (position: string, ...found: Parameters<typeof foundAt>[1][]) =>
  ["body.faults", position, foundAt("body.faults", ...found)] as const;

describe("a car that arrives as it left", () => {
  it("has no lines, and every place was looked at twice", () => {
    const same = compared([], []);
    expect(same).toMatchObject({
      lines: [],
      unseen: [],
      odometer: { verdict: "within" },
      keys: { verdict: "within" },
    });
    expect(same.lookedAtTwice).toBe(same.places);
    expect(
      HandOverComparison.parse(compareHandOver(collectionOf([]), deliveryOf([]), transportSheet)),
    ).toBeTruthy();
  });

  it("has none either where the same fault is on both papers", () => {
    expect(compared([panel("hood", dent(80))], [panel("hood", dent(85))]).lines).toEqual([]);
  });
});

describe("what is on one paper and not on the other", () => {
  it.each<[string, Others, Others, string[]]>([
    [
      "a new dent",
      [],
      [panel("left-front-door", dent(80))],
      [
        "new: dent at middle center, 80 mm at delivery: not on the collection report, though the place was looked at",
      ],
    ],
    [
      "a new chip of 3 mm, which collection may have missed",
      [],
      [panel("hood", { kind: "chip", spot: "upper-front", extent: millimeters(3) })],
      [
        "new: chip at upper front, 3 mm at delivery: not on the collection report, and small enough to have been missed there",
      ],
    ],
    [
      "a dent that grew",
      [panel("hood", dent(40))],
      [panel("hood", dent(160))],
      [
        "larger: dent at middle center, 160 mm at delivery; on the collection report it is dent at middle center, 40 mm",
      ],
    ],
    [
      "a second scratch on a panel that had one",
      [panel("hood", scratch(100, "upper-front"))],
      [panel("hood", scratch(100, "upper-front"), scratch(250, "lower-rear"))],
      [
        "new: scratch at lower rear, 250 mm at delivery: not on the collection report, though the place was looked at",
      ],
    ],
    [
      "an engine that no longer starts",
      [],
      [["road.moves", "starts", { kind: "working", value: "no" }]],
      ["worse: does not work at delivery; works at collection"],
    ],
    [
      "a key",
      [],
      [["identity.key-count", "", { kind: "reading", unit: "1", values: [{ value: 1 }] }]],
      ["missing: 1 at delivery; 2 at collection"],
    ],
    [
      "the jack",
      [],
      [["contents.with-it", "jack-and-tools", { kind: "presence", value: "absent" }]],
      ["missing: absent at delivery; present at collection"],
    ],
    [
      "nothing, where there was none to lose",
      [["contents.with-it", "jack-and-tools", { kind: "presence", value: "absent" }]],
      [["contents.with-it", "jack-and-tools", { kind: "presence", value: "absent" }]],
      [],
    ],
    [
      "something left loose on the way",
      [],
      [["contents.loose-items", "", { kind: "presence", value: "present" }]],
      ["worse: present at delivery; absent at collection"],
    ],
    [
      "a leak where there was none",
      [],
      [["road.leaks", "", choice("drip")]],
      ["worse: drops at delivery; nothing at collection"],
    ],
    [
      "a leak one step worse, which two people may judge so",
      [["road.leaks", "", choice("weep")]],
      [["road.leaks", "", choice("drip")]],
      ["perhaps: drops at delivery; damp at collection: the two reports do not settle whether it changed"],
    ],
    [
      "a fault noted at collection alone",
      [panel("hood", dent(80))],
      [],
      [
        "gone: dent at middle center, 80 mm on the collection report, and not on the delivery report: ask whether it was looked at again",
      ],
    ],
  ])("%s", (_, atCollection, atDelivery, said) => {
    expect(compared(atCollection, atDelivery).said).toEqual(said);
  });

  it("accuses nobody", () => {
    const { said } = compared([], [panel("hood", dent(80)), ["road.leaks", "", choice("run")]]);
    expect(said.join(" ")).not.toMatch(/carrier|driver|caused|damaged|fault of/);
  });

  it("puts the gravest first: what is new before what is in doubt", () => {
    const { lines } = compared(
      [["road.leaks", "", choice("weep")]],
      [
        ["road.leaks", "", choice("drip")],
        panel("hood", scratch(60, "upper-front"), dent(200)),
        ["road.moves", "brakes", { kind: "working", value: "no" }],
      ],
    );
    expect(lines.map(({ kind, severity }) => [kind, severity])).toEqual([
      ["new", "repair"],
      ["new", "small"],
      ["worse", "danger"],
      ["perhaps", "repair"],
    ]);
  });
});

describe("what nobody could see", () => {
  it("collected in the dark: nobody can say when a dent came, and none of it is called the same", () => {
    const { said, unseen, lookedAtTwice, places } = compared([dark], [panel("hood", dent(80))]);
    expect(said).toEqual([
      "cannot-say: dent at middle center, 80 mm at delivery; at collection the place was not looked at (too dark), so nobody can say when it came",
    ]);
    expect(unseen.map(({ at, reason }) => [at, reason])).toEqual([["collection", "dark"]]);
    expect(lookedAtTwice).toBe(places - (unseen[0]?.places.length ?? 0));
  });

  it("delivered wet: what was not found was not seen", () => {
    const { lines, unseen } = compared([], [["visit.body-surface", "", choice("wet")]]);
    expect(lines).toEqual([]);
    expect(unseen.map(({ at, reason }) => [at, reason])).toEqual([["delivery", "wet"]]);
    expect(unseen[0]?.places).toContainEqual({ item: "body.faults", position: "hood" });
  });

  it("a second dent beside one seen in the dark is not called new", () => {
    const { lines } = compared(
      [dark, panel("hood", dent(40, "upper-front"))],
      [panel("hood", dent(40, "upper-front"), dent(200, "lower-rear"))],
    );
    expect(lines.map(({ kind }) => kind)).toEqual(["cannot-say"]);
  });

  it("places left out or not known stand by their reason", () => {
    const { unseen } = compared(
      [["road.leaks", "", null]],
      [["road.moves", "steers", { kind: "working", value: "not-known" }]],
    );
    expect(unseen.map(({ at, reason, places }) => [at, reason, places])).toEqual([
      ["collection", "not-reported", [{ item: "road.leaks", position: "" }]],
      ["delivery", "not-known", [{ item: "road.moves", position: "steers" }]],
    ]);
  });
});

describe("the odometer", () => {
  it.each([
    [0, "within", []],
    [2, "within", []],
    [40, "beyond", ["moved"]],
    [-40, "beyond", ["perhaps"]],
  ] as const)("moved %i miles", (moved, verdict, kinds) => {
    const { odometer, lines } = compared([reads(61_240)], [reads(61_240 + moved)]);
    expect(odometer.verdict).toBe(verdict);
    expect(lines.map(({ kind }) => kind)).toEqual(kinds);
  });

  it("says how far, and how far loading may take it", () => {
    expect(compared([reads(61_240)], [reads(61_280)]).said).toEqual([
      "moved: 61,280 mi at delivery, 61,240 mi at collection: farther than the 3 miles that loading and unloading may take",
    ]);
  });

  it("reads kilometers as what they are", () => {
    expect(compared([reads(100, "mi")], [reads(161, "km")]).odometer.verdict).toBe("within");
  });

  it("not read at one of them, says so", () => {
    const { odometer } = compared([["identity.odometer", "", null]], [reads(61_240)]);
    expect(odometer).toMatchObject({ collection: null, delivery: 61_240, verdict: "not-read" });
  });
});

const looked = soundFindings().filter(({ answer }) => answer.kind === "faults");
const kindsOf = (item: string) => [...(transportSheet.items.get(item)?.faultKinds.keys() ?? [])];

it.each([
  ["daylight", "new"],
  ["lamps", "new"],
  ["dim", "cannot-say"],
  ["dark", "cannot-say"],
])(
  "collected in %s, a fault found at delivery is %s: wherever it is, of every kind, and never lost",
  (light, kind) => {
    for (const { item, position } of looked) {
      const found = kindsOf(item).map((each, nth) => ({ kind: each, extent: millimeters(3 ** nth) }));
      const { lines } = compared(
        [["visit.light", "", choice(light)]],
        [[item, position, { kind: "faults", found, denied: [] }]],
      );
      expect(lines.map((line) => [line.kind, line.item, line.position])).toEqual(
        found.map(() => [kind, item, position]),
      );
    }
  },
);
