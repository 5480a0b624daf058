import { describe, expect, it } from "vitest";
import { findRule } from "@evenhand/handbook/rules";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { folds, kindAt, kindOf, kindOfRule, kindOrder, kinds, unknowns } from "./index.ts";

const itemOf = (member: string): string => member.split("@")[0] ?? "";

describe("kinds of matter", () => {
  it("are about forty, each named once", () => {
    const ids = [...kinds, ...unknowns, ...folds].map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.length).toBeGreaterThan(35);
    expect(ids.length).toBeLessThan(55);
  });

  it("name items, positions and sections of the sheet, each once", () => {
    const members = kinds.flatMap((kind) => kind.members);
    const items = new Map(sheetVersion1.items.map((item) => [item.id, item]));
    const sections = new Set(sheetVersion1.sections.map(({ id }) => id));
    expect(members.filter((member) => !items.has(itemOf(member)) && !sections.has(member))).toEqual([]);
    const sets = new Map(
      sheetVersion1.positionSets.map((set) => [set.id, set.positions.map(({ id }) => id)]),
    );
    const places = members.filter((member) => member.includes("@"));
    const wrong = places.filter((member) => {
      const set = sets.get(items.get(itemOf(member))?.positions ?? "");
      return set?.includes(member.split("@")[1] ?? "") !== true;
    });
    expect(wrong).toEqual([]);
    expect(new Set(members).size).toBe(members.length);
  });

  it("take every item of the sheet, by name or by its section", () => {
    const members = new Set(kinds.flatMap((kind) => kind.members));
    const left = sheetVersion1.items.filter(({ id, section }) => !members.has(id) && !members.has(section));
    expect(left.map(({ id }) => id)).toEqual([]);
  });

  it("name rules of the handbook, each once", () => {
    const rules = kinds.flatMap((kind) => kind.rules);
    expect(rules.filter((rule) => findRule(rule) === undefined)).toEqual([]);
    expect(new Set(rules).size).toBe(rules.length);
    expect(kindOfRule("odometer")?.id).toBe("miles");
    expect(kindOfRule("no-such-rule")).toBeUndefined();
  });

  it("goes by the place before the item, and by the item before its section", () => {
    expect(
      [
        ["driveline.lines", "fuel-line"],
        ["driveline.lines", "brake-line-front"],
        ["driveline.limited-slip", ""],
        ["interior.pedals", "brake"],
        ["elsewhere.unheard-of", ""],
      ].map(([item = "", position = ""]) => kindAt(item, position).id),
    ).toEqual(["fuel", "brakes", "driveline", "miles", "equipment"]);
  });

  it("stand in an order, and are found by id", () => {
    expect(kindOrder("title")).toBeLessThan(kindOrder("structure"));
    expect(kindOrder("structure")).toBeLessThan(kindOrder("tires"));
    expect(kindOf("brakes").name).toBe("brakes");
    expect(() => kindOf("nothing")).toThrow(RangeError);
  });
});
