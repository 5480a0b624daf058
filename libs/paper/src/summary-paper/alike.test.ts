import { currentSheet } from "@evenhand/record/report-document";
import { sheetWords } from "@evenhand/wording/sheet-words";
import { describe, expect, it } from "vitest";
import { alike, placesOf } from "./alike.ts";

const words = sheetWords(currentSheet);
const at = (item: string, position: string) => ({ item, position });

describe("what is alike", () => {
  it("stands together in the order of its first, and each thing in one group", () => {
    const things = ["b1", "a1", "b2", "c1", "a2"];
    expect(alike(things, (thing) => [thing.charAt(0)])).toEqual([["b1", "b2"], ["a1", "a2"], ["c1"]]);
    expect(alike([], () => [])).toEqual([]);
  });

  it("tells a missing mark from an empty one, and marks from their neighbors", () => {
    const marks: [string | null, string][] = [
      [null, "a"],
      ["", "a"],
      ["a", ""],
    ];
    expect(alike(marks, (one) => one)).toHaveLength(3);
  });
});

describe("places of one item", () => {
  it("are the item once and where on it, each once", () => {
    const [left, right] = [at("tires.tread-depth", "left-front"), at("tires.tread-depth", "right-rear")];
    expect(placesOf([left, right], words)).toBe("tread depth (left front, right rear)");
    expect(placesOf([left, right, left], words)).toBe("tread depth (left front, right rear)");
    expect(placesOf([left, left], words)).toBe(words.place("tires.tread-depth", "left-front"));
  });
});
