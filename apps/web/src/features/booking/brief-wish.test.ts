import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { expect, test } from "vitest";
import { coreOf, isSame, minutesOf, wishedOf } from "./brief-wish.ts";

const none: ReadonlySet<string> = new Set();
// At a first look some of the lamps; at half a day all of them, and never the compression.
const items = sheetVersion1.items.filter(({ id }) => id === "electrics.lamps" || id === "engine.compression");
const ids = (some: readonly { readonly item: string }[]): readonly string[] => some.map(({ item }) => item);

test("what a depth takes in only in part can be chosen whole, with the minutes of the whole", () => {
  const few = wishedOf(items, "first-look", none);
  expect(ids(few.core)).toEqual(["electrics.lamps"]);
  expect(ids(few.pickable).toSorted()).toEqual(["electrics.lamps", "engine.compression"]);
  const all = wishedOf(items, "first-look", new Set(["electrics.lamps"]));
  expect(ids(all.included)).toEqual(["electrics.lamps"]);
  expect(minutesOf(all.included)).toBeGreaterThan(minutesOf(few.included));
  expect(all.further).toEqual(["electrics.lamps"]);
});

test("what a deeper look takes in whole is no longer chosen beside it", () => {
  const deeper = wishedOf(items, "half-day", new Set(["electrics.lamps", "engine.compression"]));
  expect(ids(deeper.pickable)).toEqual(["engine.compression"]);
  expect(deeper.further).toEqual(["engine.compression"]);
});

test("a brief is the same in any order, and another one when an item is looked at for longer", () => {
  const half = wishedOf(items, "half-day", new Set(["engine.compression"])).included;
  expect(isSame(half, half.toReversed())).toBe(true);
  expect(isSame(coreOf(items, "first-look"), coreOf(items, "half-day"))).toBe(false);
  expect(isSame(half, [])).toBe(false);
});
