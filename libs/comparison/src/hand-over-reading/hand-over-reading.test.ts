import { transportSheet1 } from "@evenhand/sheet/transport-sheet-1";
import { describe, expect, it } from "vitest";
import {
  changed,
  collectionOf,
  deliveryOf,
  foundAt,
  millimeters,
  transportSheet,
} from "../../testing/hand-over-reports.ts";
import { compareHandOver } from "../hand-over/index.ts";
import { comparedInWords } from "../hand-over-compared/index.ts";
import { handOverReading } from "./index.ts";

type Others = Parameters<typeof changed>;
const reading = (...others: Others) =>
  handOverReading(collectionOf(changed(...others)), "collection", transportSheet);

describe("what one hand-over report says", () => {
  it("figures, light and surface, and nothing to note on a sound car", () => {
    const { odometer, ...rest } = reading();
    expect(odometer.replace(/\s/gu, " ")).toBe("61,240 mi");
    expect(rest).toEqual({
      fuel: "a quarter",
      keys: "2",
      seenIn: ["daylight", "clean and dry"],
      noted: [],
      unseen: [],
    });
  });

  it("everything that is not as it should be, with its note, and a note of what is", () => {
    const findings = changed(
      ["body.faults", "hood", foundAt("body.faults", { kind: "dent", extent: millimeters(80) })],
      ["road.moves", "brakes", { kind: "working", value: "no" }],
      ["contents.with-it", "floor-mats", { kind: "presence", value: "absent" }],
      ["road.leaks", "", { kind: "choice", option: "drip" }],
    ).map((each) =>
      each.item === "identity.key-count" ? { ...each, note: "one of them for the trunk" } : each,
    );
    const { noted } = handOverReading(collectionOf(findings), "collection", transportSheet);
    expect(noted.map(({ place, words, note }) => [place, words.replace(/\s/gu, " "), note])).toEqual([
      ["keys handed over", "2", "one of them for the trunk"],
      ["goes along, floor mats", "absent", null],
      ["can it be moved, brakes", "does not work", null],
      ["drips under the car", "drops", null],
      ["panel damage, hood", "dent, 80 mm", null],
    ]);
  });

  it("names an item of which nothing was seen once, and counts its places", () => {
    const { unseen } = reading(["visit.body-surface", "", { kind: "choice", option: "wet" }]);
    expect(unseen).toMatchObject([
      {
        at: "collection",
        reason: "wet",
        places: ["panel damage", "glass damage", "damage to outer parts", "wheel and tire damage"],
      },
    ]);
  });

  it("a figure nobody read is not read", () => {
    expect(reading(["identity.odometer", "", null]).odometer).toBe("not read");
  });
});

const count = (value: number) => ({ kind: "reading" as const, unit: "1" as const, values: [{ value }] });

it("asks for no picture of a key that is missing, and for one of a dent", () => {
  const reports = {
    collection: collectionOf(changed(["identity.key-count", "", count(2)])),
    delivery: deliveryOf(
      changed(
        ["identity.key-count", "", count(1)],
        ["body.faults", "hood", foundAt("body.faults", { kind: "dent", extent: millimeters(80) })],
      ),
    ),
  };
  const comparison = compareHandOver(reports.collection, reports.delivery, transportSheet);
  const { discrepancies } = comparedInWords(comparison, reports, transportSheet1);
  const said = discrepancies.map(({ kind, pictured }) => `${kind} ${pictured}`);
  expect(said.toSorted()).toEqual(["missing false", "new true"]);
});

it("parts what both papers can tell from what they leave open", () => {
  const reports = {
    collection: collectionOf(changed(["road.leaks", "", { kind: "choice", option: "weep" }])),
    delivery: deliveryOf(
      changed(
        ["road.leaks", "", { kind: "choice", option: "drip" }],
        ["body.faults", "hood", foundAt("body.faults", { kind: "dent", extent: millimeters(80) })],
      ),
    ),
  };
  const comparison = compareHandOver(reports.collection, reports.delivery, transportSheet);
  const { discrepancies, open, others } = comparedInWords(comparison, reports, transportSheet1);
  expect([discrepancies, open, others].map((lines) => lines.map(({ place }) => place))).toEqual([
    ["panel damage, hood"],
    ["drips under the car"],
    [],
  ]);
});
