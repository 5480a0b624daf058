import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sheetVersion1 as sheet } from "../sheet-version-1/index.ts";
import { findItems, normalize } from "./index.ts";

const idsOf = (query: string) => findItems(sheet, query).map(({ id }) => id);

describe("normalize", () => {
  it("keeps letters and digits, lower and plain", () => {
    expect(normalize("  Jäck-Points / A/C 12V ")).toBe("jack points a c 12v");
    expect(normalize("—")).toBe("");
  });
});

describe("findItems", () => {
  it.each([
    ["tread depth", "wheels.tread-depth"],
    ["TREAD", "wheels.tread-depth"],
    ["Rev counter", "electrics.tachometer"],
    ["tach", "electrics.tachometer"],
    ["matching numbers", "identity.originality"],
    ["VIN", "identity.vin"],
    ["petrol gauge", "electrics.fuel-gauge"],
    ["headlining", "interior.headliner"],
    ["handbrake holds", "brakes.parking-brake"],
    ["spare tyre", "trunk.spare"],
    ["gas tank", "driveline.tank-outside"],
    ["leak down", "engine.leak-down"],
    ["leakdown", "engine.leak-down"],
    ["Hood springs", "doors.lid-supports"],
    ["track-rod ends", "steering.tie-rod-ends"],
    ["paint meter", "body.paint-thickness"],
    ["sway bar", "steering.anti-roll-bar"],
    ["engine.compression", "engine.compression"],
  ])("finds by %j first %s", (query, id) => {
    expect(idsOf(query)[0]).toBe(id);
  });

  it.each([
    ["its American name", "tread depth"],
    ["a synonym", "tread remaining"],
    ["its section", "depth wheels"],
    ["a position", "tread spare"],
    ["a synonym of a position", "tread driver"],
    ["its id", "wheels.tread-depth"],
  ])("finds it alone on a sheet by %s", (_, query) => {
    const items = sheet.items.filter(({ id }) => id === "wheels.tread-depth");
    expect(findItems({ ...sheet, items }, query).map(({ id }) => id)).toEqual(["wheels.tread-depth"]);
    expect(findItems({ ...sheet, items }, `${query} zebra`)).toEqual([]);
  });

  it("finds by the British name of an item and of its section", () => {
    const { items, sections } = sheet;
    const own = items.find(({ section, words }) => section === "trunk" && words.british !== undefined);
    const alone = { ...sheet, sections, items: items.filter((item) => item === own) };
    expect(findItems(alone, own?.words.british ?? "")).toEqual([own]);
    expect(findItems(alone, `boot ${own?.words.american}`)).toEqual([own]);
  });

  it("puts the name itself before names that begin so, those before names that hold the words", () => {
    const found = idsOf("seats");
    expect(found[0]).toBe("interior.seats");
    const smoke = idsOf("smoke");
    expect(smoke.slice(0, 2)).toEqual(["engine.smoke-cold", "engine.smoke-warm"]);
    expect(idsOf("pressure oil")).toEqual(
      expect.arrayContaining(["electrics.oil-gauge", "engine.oil-pressure-idle"]),
    );
    expect(idsOf("oil pressure").indexOf("engine.oil-pressure-idle")).toBeLessThan(
      idsOf("oil pressure").indexOf("electrics.oil-gauge"),
    );
  });

  it("finds items at a position, after those of that name", () => {
    expect(idsOf("bonnet")).toContain("body.paint-thickness");
    expect(idsOf("bonnet")).toContain("gaps.width-top");
    expect(idsOf("wing faults")).toContain("body.faults");
    expect(idsOf("windscreen crack")).toContain("brightwork.glass-faults");
  });

  it("needs every word typed", () => {
    expect(idsOf("tread zebra")).toEqual([]);
    expect(idsOf("zebra")).toEqual([]);
  });

  it("finds nothing by nothing", () => {
    expect(idsOf("")).toEqual([]);
    expect(idsOf(" - ")).toEqual([]);
  });

  it("finds every item by each of its names, in any case", () => {
    for (const item of sheet.items) {
      for (const name of [
        item.words.american,
        item.words.british ?? item.words.american,
        ...item.words.synonyms,
      ]) {
        expect(idsOf(name.toUpperCase())).toContain(item.id);
      }
    }
  });

  it("never finds more by typing more", () => {
    const letters = fc.string({ unit: fc.constantFrom(..."aeiorstl n".split("")), maxLength: 6 });
    fc.assert(
      fc.property(letters, letters, (start, more) => {
        const before = new Set(idsOf(start));
        fc.pre(normalize(start) !== "");
        expect(idsOf(start + more).every((id) => before.has(id))).toBe(true);
      }),
      { numRuns: 1000 },
    );
  }, 60_000);
});
