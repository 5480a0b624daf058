import { describe, expect, it } from "vitest";
import type { Entry } from "@evenhand/shared/comparison";
import { analyze } from "@evenhand/comparison/analyze";
import type { Answer as Said } from "@evenhand/shared/answer";
import type { Finding } from "@evenhand/shared/finding";
import { Answer } from "@evenhand/shared/page-one";
import type { Report } from "@evenhand/shared/report";
import { sheet } from "../../testing/lines.ts";
import { matters } from "../matters/index.ts";
import { answer } from "./index.ts";

const finding = (item: string, said: Said, more: Partial<Finding> = {}): Finding => ({
  item,
  position: "",
  answer: said,
  firmness: "asserted",
  basis: "seen",
  ...more,
});
const choice = (option: string): Said => ({ kind: "choice", option });
const works = (value: "yes" | "no"): Said => ({ kind: "working", value });

const report = (kind: "statement" | "inspection", findings: Finding[]): Report => ({
  format: "evenhand-report",
  version: 1,
  kind,
  sheet: { id: sheet.sheet.id, version: sheet.sheet.version },
  vehicle: {
    make: "Alderbrook",
    model: "Meridian",
    modelYear: 1958,
    identification: "AM58-10442",
    form: {
      body: "sedan",
      doors: 2,
      cylinders: 6,
      construction: "body-on-frame",
      gearbox: "manual",
      driven: "rear",
      fuelSystem: "carburetor",
      systemVolts: 12,
      brakes: { front: "disc", rear: "drum" },
      leftHandDrive: true,
    },
  },
  author: { organization: "Quiet Hill Inspection", role: "inspector" },
  visit: { started: "2026-05-12T15:00:00Z", ended: "2026-05-12T18:30:00Z", zone: "America/Chicago" },
  instruments: [],
  persons: [],
  scales: [],
  findings,
});

const a = report("statement", [
  finding("identity.title-holder", choice("seller-in-hand")),
  finding("identity.lien", choice("none")),
  finding("electrics.horn", works("yes")),
  finding("electrics.clock", works("no")),
  finding("brakes.pedal-sink", choice("holds")),
]);
const b = report("inspection", [
  finding("identity.title-holder", choice("other-name"), { note: "still the late owner's" }),
  finding("identity.lien", { kind: "not-seen", reason: "no-tool" }),
  finding("electrics.horn", works("yes")),
  finding("electrics.clock", works("no")),
  finding("brakes.pedal-sink", choice("to-floor"), { note: "down in eight seconds" }),
]);
const comparison = analyze(a, b, sheet);
const reports = { a, b, sheet };
const page = answer({ comparison, matters: matters(comparison, reports), reports });

describe("answer", () => {
  it("says who looked, when, how long, and what was not seen for which reason", () => {
    expect(page.looked).toEqual({
      by: "Quiet Hill Inspection",
      started: "2026-05-12T15:00:00Z",
      minutes: 210,
      couldNot: [{ reason: "no-tool", places: 1 }],
    });
  });

  it("keeps what stops the money apart from what could and is not known", () => {
    expect(page.stops[0]).toEqual({
      words: "title: in another name (stated: in the seller's name, in hand)",
      known: true,
    });
    expect(page.stops.filter(({ known }) => !known).map(({ words }) => words)).toContain("lien");
    const halts = comparison.entries.filter(({ severity }: Entry) => severity === "halt");
    expect(page.stops).toHaveLength(halts.length);
  });

  it("says of each place stated what became of it", () => {
    expect(page.claims).toMatchObject({ stated: 5, fell: 2, unseen: 1, disclosed: 1, held: 1, doubtful: 0 });
    expect(page.claims.fallen).toEqual([
      "title: in another name (stated: in the seller's name, in hand)",
      "pedal sinks under held force: falls to the floor (stated: holds)",
    ]);
  });

  it("puts the dealer's line together from claims, and says of each what became of it", () => {
    expect(page.claims.line).toEqual([
      { words: "title: in the seller's name, in hand", became: "fell" },
      { words: "pedal sinks under held force: holds", became: "fell" },
      { words: "lien: none recorded", became: "unseen" },
    ]);
  });

  it("names the lines of each matter with what they came to, gravest first", () => {
    expect(page.matters[1]?.lines).toEqual([
      {
        entry: comparison.entries.findIndex(({ item }) => item === "brakes.pedal-sink"),
        place: "pedal sinks under held force",
        outcome: "differ",
        severity: "danger",
        found: true,
      },
    ]);
  });

  it("is what the contract of a stored answer says", () => {
    expect(Answer.parse(page)).toEqual(page);
    expect(page.cautions.length).toBeGreaterThan(0);
  });

  it("carries the inspector's own words with each matter, what nobody knows apart", () => {
    expect(page.matters.map(({ matter, notes }) => [matter.kind, notes.map(({ words }) => words)])).toEqual([
      ["title", ["still the late owner's"]],
      ["brakes", ["down in eight seconds"]],
      ["instruments", []],
    ]);
    expect(page.unknown[0]?.matter.kind).toBe("unseen-papers");
  });

  it("asks five questions, each once, the gravest first", () => {
    expect(page.questions).toHaveLength(5);
    expect(new Set(page.questions).size).toBe(5);
    expect(page.questions[0]).toMatch(/^Who is named on the title/);
    expect(page.asks?.map(({ words }) => words)).toEqual(page.questions);
    expect(page.asks?.[0]?.item).toBe("identity.title-holder");
  });
});
