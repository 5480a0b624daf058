import type { Item } from "@evenhand/shared/sheet";
import { STAGES } from "@evenhand/shared/sheet";
import { describe, expect, it } from "vitest";
import { sheetVersion1 as sheet } from "./index.ts";

const idsOf = (items: readonly Item[]): string[] => items.map(({ id }) => id);
const isAsked =
  (what: RegExp) =>
  ({ how }: Item): boolean =>
    what.test(how);
const lacks =
  (...cautions: string[]) =>
  (item: Item): boolean =>
    cautions.some((caution) => !item.cautions.includes(caution));
const before = (item: Item, stage: Item["stage"]): boolean =>
  STAGES.indexOf(item.stage) < STAGES.indexOf(stage);

/** What a caution forbids, and how an instruction would ask for it. */
describe("no instruction asks for what a caution forbids", () => {
  it.each<[string, (item: Item) => boolean, RegExp]>([
    [
      "raised-car: a pedal or brake worked in a raised car, but by a jack set beforehand or a helper on the ground",
      ({ cautions }) => cautions.includes("raised-car"),
      /^(?!.*pedal jack set before lifting).*\b(brake (held )?on|hold the (brake|pedal)|press the pedal)\b(?!.*drive-on lift)/,
    ],
    [
      "raised-car: an engine that runs above somebody",
      ({ needs }) => needs.includes("lift"),
      /\b(start|running|idle|rev)\b(?! where)/,
    ],
    [
      "limited-slip: a raised wheel driven",
      ({ cautions }) => cautions.includes("limited-slip"),
      /\bin gear\b|under power|with the engine(?<!Never with the engine)/,
    ],
    ["lining-dust: linings blown or brushed", ({ section }) => section === "brakes", /\b(blow|brush)\b/],
    [
      "lead-paint and asbestos: paint or undercoat sanded, scraped or heated",
      ({ section }) => section === "body" || section === "underbody",
      /\b(sand|scrape|heat)\b/,
    ],
    [
      "hot-coolant: a hot system opened",
      ({ cautions }) => cautions.includes("hot-coolant"),
      /\b(open|cap off)\b(?<!Cold, cap off)(?<!opened cold)/,
    ],
    [
      "refrigerant: fittings opened",
      ({ cautions }) => cautions.includes("refrigerant"),
      /\bopen\b|gauges? on/,
    ],
    [
      "full-throttle: the pedal to the floor",
      ({ stage }) => stage === "road",
      /\b(full|wide-open) throttle\b/,
    ],
    [
      "leave-closed: airbags and coils opened",
      ({ cautions }) => cautions.includes("leave-closed"),
      /\b(remove|compress|take apart)\b/,
    ],
  ])("%s", (_, concerns, forbidden) => {
    const about = sheet.items.filter(concerns);
    expect(about.length).toBeGreaterThan(0);
    expect(idsOf(about.filter(isAsked(forbidden)))).toEqual([]);
  });

  it("runs no engine before the cold start", () => {
    const cold = sheet.items.filter((item) => before(item, "cold-start"));
    const running =
      /(?<!with the )\bengine (off and )?on\b|then listen|\bidling\b|\bstart the engine\b|engine running/i;
    expect(idsOf(cold.filter(isAsked(running)))).toEqual([]);
  });

  it("drives nothing before the gate, and asks for the gate wherever it speaks of a slope", () => {
    const early = sheet.items.filter((item) => before(item, "road"));
    expect(
      idsOf(early.filter(isAsked(/\b(on the road|drive (it|the car)|at walking pace|downhill)\b/i))),
    ).toEqual([]);
    const sloped = sheet.items.filter(isAsked(/\bon a slope\b/));
    expect(sloped.length).toBeGreaterThan(0);
    expect(sloped.filter((item) => item.stage !== "road" || !/only after the gate/.test(item.how))).toEqual(
      [],
    );
  });

  it("touches nothing hot that was run before: under the car only what can be touched is tapped", () => {
    expect(sheet.items.find(({ id }) => id === "driveline.exhaust")?.how).toContain("once it can be touched");
  });
});

describe("every need carries its cautions", () => {
  it.each<[string, (item: Item) => boolean, readonly string[]]>([
    [
      "the lift",
      ({ needs }) => needs.includes("lift"),
      ["lift-points", "jack-alone", "second-person", "raised-car", "eye-protection"],
    ],
    [
      "the road",
      ({ needs }) => needs.includes("road"),
      ["road-consent", "second-person", "aged-tires", "first-braking"],
    ],
    ["a hot engine", ({ needs }) => needs.includes("hot-engine"), ["hot-parts"]],
    ["dismantling", ({ needs }) => needs.includes("dismantling"), ["owners-word", "closed-again"]],
    ["permission", ({ needs }) => needs.includes("permission"), ["owners-word"]],
    [
      "a running engine",
      ({ stage }) => ["cold-start", "running", "hot"].includes(stage),
      ["chocks", "carbon-monoxide", "fans-and-belts"],
    ],
    ["a lid that may fall", ({ place }) => place === "engine-bay" || place === "trunk", ["prop-hood"]],
    [
      "a wheel or fan turned by hand",
      isAsked(/\bturn(ed)? (the |one )?(raised )?(wheels?|fan|one)?,? ?by hand/i),
      ["chocks"],
    ],
    ["a car rolled by hand", isAsked(/\broll(ed)? (forward|the loaded car)/), ["slope"]],
    ["what is said of the road", isAsked(/^On the road\b/), ["road-consent"]],
  ])("%s", (_, needsIt, cautions) => {
    const items = sheet.items.filter(needsIt);
    expect(items.length).toBeGreaterThan(0);
    expect(idsOf(items.filter(lacks(...cautions)))).toEqual([]);
  });

  it("asks only what can be seen standing or on papers at the road's stage without needing the road", () => {
    const still = sheet.items.filter(({ stage, needs }) => stage === "road" && !needs.includes("road"));
    expect(idsOf(still)).toEqual(["road.gear-ratio"]);
  });

  it("uses every caution somewhere, at a task or at the gate of a stage", () => {
    const used = new Set(sheet.items.flatMap(({ cautions }) => cautions));
    expect(sheet.cautions.filter(({ id, stages }) => !used.has(id) && stages === undefined)).toEqual([]);
  });
});

describe("figures of practice are worded as such", () => {
  it("in every instruction: only a regulation's figure is required, allowed or the most", () => {
    const worded = sheet.items.filter(
      isAsked(/\b(required|allowed|permitted|must be (at least|under|over))\b/),
    );
    const regulated = new Set([
      "interior.steering-wheel-diameter",
      "interior.carpet",
      "underbody.floor-pans",
    ]);
    expect(idsOf(worded.filter(({ id, how }) => !regulated.has(id) && !/49 CFR/.test(how)))).toEqual([]);
  });
});
