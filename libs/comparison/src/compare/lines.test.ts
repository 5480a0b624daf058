import { describe, expect, it } from "vitest";
import type { Answer } from "@evenhand/shared/answer";
import type { Entry } from "@evenhand/shared/comparison";
import type { Finding, Firmness } from "@evenhand/shared/finding";
import type { UnitSymbol } from "@evenhand/shared/unit";
import { finding, inspection, sheet, statement } from "../../testing/small-reports.ts";
import { compare } from "./index.ts";

type Place = readonly [item: string, position?: string];
type Said = Answer | null;

const instruments = [{ id: "gauge", name: "gauge" }];
const findings = (said: Said, [item, position = ""]: Place, more: Partial<Finding> = {}): Finding[] =>
  said === null ? [] : [finding(item, said, { position, ...more })];

const linesAt = (
  place: Place,
  a: Said,
  b: Said,
  moreA?: Partial<Finding>,
  moreB?: Partial<Finding>,
): Entry[] =>
  compare(
    statement(findings(a, place, moreA), { instruments }),
    inspection(findings(b, place, moreB), { instruments }),
    sheet,
  ).entries.filter(({ item, position }) => item === place[0] && position === (place[1] ?? ""));
const lineAt = (...of: Parameters<typeof linesAt>): Entry | undefined => linesAt(...of)[0];

const working = (value: "yes" | "no" | "intermittent"): Answer => ({ kind: "working", value });
const choice = (option: string): Answer => ({ kind: "choice", option });
const grade = (value: string): Answer => ({ kind: "grade", scale: "house", value });
const code = (text: string): Answer => ({ kind: "code", text });
const read = (unit: UnitSymbol, ...values: number[]): Answer => ({
  kind: "reading",
  unit,
  values: values.map((value) => ({ value })),
});
const unseen: Answer = { kind: "not-seen", reason: "covered" };

const HORN: Place = ["electrics.horn"];
const HOOD: Place = ["body.faults", "hood"];
const TREAD: Place = ["wheels.tread-depth", "left-front"];
const LIEN: Place = ["identity.lien"];
const PLATE: Place = ["identity.vin", "main-plate"];
const SEAL: Place = ["driveline.pinion-seal"];

/** Outcome, what each side is called by itself, and how grave the line is. */
const callsAt = (...of: Parameters<typeof linesAt>): string => {
  const line = lineAt(...of);
  return `${line?.outcome}: ${line?.calls.a} against ${line?.calls.b}, ${line?.severity}`;
};

describe("how grave a line is", () => {
  it.each<[string, Place, Said, Said, string]>([
    [
      "good on both sides: not at all",
      HORN,
      working("yes"),
      working("yes"),
      "agree: good against good, null",
    ],
    [
      "bad on both sides: as what was found",
      HORN,
      working("no"),
      working("no"),
      "agree: repair against repair, repair",
    ],
    [
      "found bad: as what was found",
      HORN,
      working("yes"),
      working("no"),
      "differ: good against repair, repair",
    ],
    [
      "in doubt and found bad",
      HORN,
      working("yes"),
      working("intermittent"),
      "doubtful: good against repair, repair",
    ],
    [
      "found better than stated: hardly",
      HORN,
      working("no"),
      working("yes"),
      "differ: repair against good, small",
    ],
    [
      "found better, both good: hardly",
      LIEN,
      choice("released"),
      choice("none"),
      "doubtful: good against good, small",
    ],
    [
      "found good and less than was said: dearer, and hurts nobody, whatever the item",
      LIEN,
      choice("none"),
      choice("released"),
      "doubtful: good against good, repair",
    ],
    [
      "a belt worn evenly and stated as new",
      ["interior.belt-webbing", "left-front"],
      grade("as-new"),
      grade("even-wear"),
      "differ: good against good, repair",
    ],
    [
      "so too where the item itself is a trifle: as the item says",
      ["interior.headliner"],
      grade("as-new"),
      grade("even-wear"),
      "differ: good against good, small",
    ],
    [
      "a reading that is good and near its limit: as the item says",
      TREAD,
      read("1/32in", 9, 9, 9),
      read("1/32in", 2, 3, 3),
      "differ: good against good, danger",
    ],
    [
      "a reading that is bad, and near a graver limit: as past that",
      ["brakes.lining-thickness", "left-front"],
      read("mm", 6),
      read("mm", 1),
      "differ: good against repair, danger",
    ],
    [
      "a reading that is good beyond doubt: it hurts nobody",
      TREAD,
      read("1/32in", 9, 9, 9),
      read("1/32in", 4, 4, 4),
      "doubtful: good against good, repair",
    ],
    [
      "numbers in doubt, that nothing judges: as the item says",
      PLATE,
      code("AM58-10442"),
      code("AM58-1O442"),
      "doubtful: no-yardstick against no-yardstick, halt",
    ],
    [
      "answers that cannot be set against each other: as what was stated, where that is bad",
      ["brakes.parking-brake"],
      working("no"),
      { kind: "presence", value: "present" },
      "incomparable: danger against no-yardstick, danger",
    ],
    ["not seen: as the worst it could be", HORN, working("yes"), unseen, "unseen: good against null, repair"],
    ["not inspected, and stated bad", HORN, working("no"), null, "unseen: repair against null, repair"],
    ["sound and not stated: not at all", HORN, null, working("yes"), "consistent: null against good, null"],
    ["bad and not stated", HORN, null, working("no"), "unstated: null against repair, repair"],
    [
      "found, with nothing to judge it by",
      PLATE,
      null,
      code("AM58-10442"),
      "unstated: null against no-yardstick, halt",
    ],
    [
      "a weep where a drip was stated",
      SEAL,
      choice("drip"),
      choice("weep"),
      "agree: repair against small, small",
    ],
  ])("%s", (_name, place, a, b, expected) => {
    expect(callsAt(place, a, b)).toBe(expected);
  });
});

describe("how a fault and a denial are called", () => {
  const dent: Answer = { kind: "faults", found: [{ kind: "dent", spot: "upper-front" }], denied: [] };
  const noDent: Answer = { kind: "faults", found: [], denied: ["dent"] };
  const none: Answer = { kind: "faults", found: [], denied: "all" };
  const rusted: Answer = {
    kind: "faults",
    found: [{ kind: "ding" }, { kind: "perforation" }],
    denied: ["crack"],
  };

  it.each<[string, Said, Said, string[]]>([
    ["both found it", dent, dent, ["consistent: small against small, small"]],
    ["found and denied", noDent, dent, ["differ: null against small, small"]],
    ["stated and not found", dent, noDent, ["doubtful: small against null, small"]],
    ["denied by both", noDent, noDent, ["agree: good against good, null"]],
    [
      "denied by the statement alone",
      noDent,
      { ...none, denied: [] },
      ["consistent: good against null, null"],
    ],
    [
      "denied by the inspection alone",
      { ...none, denied: [] },
      noDent,
      ["consistent: null against good, null"],
    ],
    [
      "a kind denied, and all of them on the other side",
      noDent,
      none,
      ["agree: good against null, null", "consistent: null against good, null"],
    ],
    ["stated, and nobody looked", dent, null, ["unseen: small against null, worth"]],
    ["denied, and nobody looked", noDent, null, ["unseen: good against null, worth"]],
    ["stated, and not seen", dent, unseen, ["unseen: small against null, worth"]],
    [
      "each by itself where only one side speaks",
      null,
      rusted,
      [
        "unstated: null against small, small",
        "unstated: null against worth, worth",
        "consistent: null against good, null",
      ],
    ],
  ])("%s", (_name, a, b, expected) => {
    const lines = linesAt(HOOD, a, b).map(
      ({ outcome, calls, severity }) => `${outcome}: ${calls.a} against ${calls.b}, ${severity}`,
    );
    expect(lines).toEqual(expected);
  });
});

describe("what a line is marked with", () => {
  it.each<[Firmness, Firmness, string[]]>([
    ["asserted", "asserted", []],
    ["hedged", "asserted", ["hedged"]],
    ["second-hand", "asserted", ["second-hand"]],
    ["asserted", "hedged", []],
    ["asserted", "second-hand", []],
  ])("stated %s, found %s", (firmA, firmB, marks) => {
    const line = lineAt(HORN, working("yes"), working("yes"), { firmness: firmA }, { firmness: firmB });
    expect(line).toMatchObject({ marks, firmness: { a: firmA, b: firmB } });
  });

  it.each<[string, Partial<Finding>, Partial<Finding>, boolean]>([
    ["neither", { instrument: "gauge" }, { instrument: "gauge" }, false],
    ["the statement", {}, { instrument: "gauge" }, true],
    ["the inspection", { instrument: "gauge" }, {}, true],
    ["both", {}, {}, true],
  ])("read by eye by %s", (_name, moreA, moreB, marked) => {
    const line = lineAt(TREAD, read("1/32in", 8, 8, 8), read("1/32in", 8, 8, 8), moreA, moreB);
    expect(line?.marks.includes("by-eye")).toBe(marked);
    expect(line?.marks).not.toContain("second-hand");
  });

  it("keeps its own marks beside them", () => {
    const line = lineAt(TREAD, read("1/32in", 1), read("1/32in", 1), { firmness: "hedged" });
    expect(line?.marks).toEqual(["both-bad", "over-limit", "hedged", "by-eye"]);
  });

  it("over the limit, where the one reading there is fails one of several", () => {
    expect(lineAt(TREAD, null, read("1/32in", 1))?.marks).toEqual(["over-limit"]);
    expect(lineAt(TREAD, null, read("1/32in", 8))?.marks).toEqual([]);
    expect(lineAt(TREAD, read("1/32in", 1), null)?.marks).toEqual([]);
  });
});
