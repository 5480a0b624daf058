import { describe, expect, it } from "vitest";
import { ROAD, START } from "../../testing/appointments.ts";
import { type RoadFacts, roadShortfalls } from "./index.ts";

const gate = (seen: boolean, safetyOpen: boolean) => [
  { item: "brakes.hoses", position: "left-front", seen, safetyOpen },
];

describe("before the road", () => {
  it("lets drive when nothing is wanting", () => expect(roadShortfalls(ROAD, START)).toEqual([]));

  it.each<[string, Partial<RoadFacts>, unknown]>([
    ["no consent", { consent: null }, { code: "consent-missing" }],
    ["consent not signed yet", { consent: { by: "o", signedAt: START + 1 } }, { code: "consent-missing" }],
    ["no insurance", { insurance: null }, { code: "insurance-missing" }],
    [
      "insurance that ends now",
      { insurance: { reference: "P", validUntil: START } },
      { code: "insurance-ended", validUntil: START },
    ],
    ["no plates", { plates: null }, { code: "plates-missing" }],
    [
      "plates that ended",
      { plates: { reference: "P", validUntil: START - 1 } },
      { code: "plates-ended", validUntil: START - 1 },
    ],
    ["nobody to bear damage", { damageBorneBy: null }, { code: "damage-unsettled" }],
    ["no gate at all", { gate: [] }, { code: "gate-not-seen", items: [] }],
    [
      "a gate item not seen",
      { gate: gate(false, false) },
      { code: "gate-not-seen", items: ["brakes.hoses"] },
    ],
    [
      "what closes the gate, at its place",
      { gate: gate(true, true) },
      { code: "safety-item-open", places: [{ item: "brakes.hoses", position: "left-front" }] },
    ],
    [
      "the inspector's own doubt, whatever was found",
      { doubts: ["The rear axle sits askew."] },
      { code: "own-doubt", words: ["The rear axle sits askew."] },
    ],
    [
      "a gate item of which one place was not seen, once",
      { gate: [...gate(true, false), ...gate(false, false), ...gate(false, false)] },
      { code: "gate-not-seen", items: ["brakes.hoses"] },
    ],
  ])("holds the car back for %s", (_, more, shortfall) => {
    expect(roadShortfalls({ ...ROAD, ...more }, START)).toEqual([shortfall]);
  });

  it("names everything at once", () => {
    const nothing = {
      consent: null,
      insurance: null,
      plates: null,
      damageBorneBy: null,
      gate: gate(false, true),
      doubts: ["A noise nobody could place."],
    };
    expect(roadShortfalls(nothing, START).length).toBe(7);
  });
});
