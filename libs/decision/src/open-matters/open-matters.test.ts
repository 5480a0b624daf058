import { describe, expect, it } from "vitest";
import type { Entry } from "@evenhand/shared/comparison";
import { worstSeverity } from "@evenhand/comparison/worst-severity";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { OpenMatterKind } from "@evenhand/shared/summary";
import { MATTERS } from "./kinds.ts";
import { matterOf, matterWords, openMatters, unanswered } from "./index.ts";

const line = (item: string, more: Partial<Entry>): Entry => ({
  item,
  position: "",
  atom: { of: "answer" },
  outcome: "differ",
  calls: { a: "good", b: "danger" },
  severity: "danger",
  marks: [],
  reason: "other-answer",
  direction: "stated-better",
  standing: "differs",
  firmness: { a: "asserted", b: "asserted" },
  finding: { a: 0, b: 0 },
  ...more,
});

describe("openMatters", () => {
  it("names a matter once, whatever number of lines speak of it, what stops the money first", () => {
    const entries = [
      line("brakes.pedal-sink", {}),
      line("electrics.radio", { severity: "repair" }),
      line("road.braking", {}),
      line("interior.silt", { severity: "halt", outcome: "unseen", standing: "unseen" }),
      line("identity.lien", { severity: "halt" }),
    ];
    expect(openMatters(entries)).toEqual([
      { matter: "title", severity: "halt", entries: [4] },
      { matter: "water", severity: "halt", entries: [3] },
      { matter: "brakes", severity: "danger", entries: [0, 2] },
    ]);
  });

  it("goes by severity: money under the brakes is none, a fault both report is one", () => {
    expect(openMatters([line("brakes.servo", { severity: "repair" })])).toEqual([]);
    const both = line("brakes.hoses", { outcome: "agree", standing: "agreed-fault", marks: ["both-bad"] });
    expect(openMatters([both])).toMatchObject([{ matter: "brakes", severity: "danger" }]);
  });

  it("takes the graver severity where one matter has both", () => {
    const entries = [line("identity.vin", {}), line("identity.pad", { severity: "halt" })];
    expect(openMatters(entries)).toEqual([{ matter: "numbers", severity: "halt", entries: [0, 1] }]);
  });

  it("leaves out what was found without a yardstick, unless figures contradict it", () => {
    const plain = line("steering.toe", {
      outcome: "unstated",
      standing: "not-mentioned",
      marks: ["no-yardstick"],
    });
    expect(openMatters([plain])).toEqual([]);
    expect(openMatters([{ ...plain, standing: "contradicted-by-figures" }])).toHaveLength(1);
  });
});

describe("the kinds", () => {
  it("hold every item of the sheet that can stop the money or hurt somebody, each by name or section", () => {
    const members = MATTERS.flatMap((kind) => kind.members);
    const grave = [...compileSheet(sheetVersion1).items.values()].filter((compiled) =>
      (compiled.positionSet?.positions.map(({ id }) => id) ?? [""]).some((position) =>
        ["halt", "danger"].includes(worstSeverity(compiled, position)),
      ),
    );
    const unnamed = grave.filter(
      ({ item }) => !members.includes(item.id) && !members.includes(item.id.split(".")[0] ?? ""),
    );
    expect(grave.length).toBeGreaterThan(100);
    expect(unnamed.map(({ item }) => item.id)).toEqual([]);
    expect(new Set(members).size).toBe(members.length);
  });

  it("name no item the sheet does not have", () => {
    const known = new Set([
      ...sheetVersion1.items.map(({ id }) => id),
      ...sheetVersion1.sections.map(({ id }) => id),
    ]);
    expect(MATTERS.flatMap(({ members }) => members.filter((member) => !known.has(member)))).toEqual([]);
  });

  it("go by the item before its section", () => {
    expect([matterOf("road.braking"), matterOf("road.moves"), matterOf("interior.silt")]).toEqual([
      "brakes",
      "steering",
      "water",
    ]);
    expect(matterWords("title")).toBe("title and liens");
    expect(OpenMatterKind.options).toEqual(MATTERS.map(({ matter }) => matter));
    expect(MATTERS.length).toBeLessThan(10);
  });
});

describe("unanswered", () => {
  const matters = [
    { matter: "title", severity: "halt" },
    { matter: "brakes", severity: "danger" },
  ] as const;

  it("names each matter without an answer", () => {
    expect(unanswered(matters, [])).toEqual([
      { matter: "title", because: "not-answered" },
      { matter: "brakes", because: "not-answered" },
    ]);
  });

  it("asks for words where the money stops, and where it is taken as it is", () => {
    expect(
      unanswered(matters, [
        { matter: "title", answer: "first" },
        { matter: "brakes", answer: "as-it-is" },
      ]).map(({ because }) => because),
    ).toEqual(["no-words", "no-words"]);
    expect(
      unanswered(matters, [
        { matter: "title", answer: "first", words: "The lien is paid off at closing." },
        { matter: "brakes", answer: "dealer" },
      ]),
    ).toEqual([]);
  });
});
