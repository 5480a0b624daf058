import type { Finding } from "@evenhand/shared/finding";
import { expect, test } from "vitest";
import { changedPlaces } from "./index.ts";

const horn = (value: "yes" | "no", more: Partial<Finding> = {}): Finding => ({
  item: "electrics.horn",
  position: "",
  answer: { kind: "working", value },
  firmness: "asserted",
  basis: "seen",
  ...more,
});
const place = { item: "electrics.horn", position: "" };

test.each([
  ["changed", [horn("yes")], [horn("no")]],
  ["taken out", [horn("yes")], []],
  ["new", [], [horn("yes")]],
  ["said with a word more", [horn("yes")], [horn("yes", { note: "After a knock." })]],
])("what was %s is named by its place, once", (_, was, now) => {
  expect(changedPlaces(was, now)).toEqual([place]);
});

test("what stands as it stood is not named, in whatever order it is written", () => {
  const { item, ...rest } = horn("yes");
  expect(changedPlaces([horn("yes")], [{ ...rest, item }])).toEqual([]);
});
