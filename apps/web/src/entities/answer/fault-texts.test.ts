import { expect, test } from "vitest";
import { extentTexts, withExtentText, withoutFault } from "./fault-texts.ts";

test("only extents are taken from what cannot be read", () => {
  expect(extentTexts({ texts: { "extent.1": "x", "condition.height": "y" } })).toEqual({ "extent.1": "x" });
});

test("a text is set and goes when it is corrected", () => {
  expect(withExtentText({ "extent.0": "x" }, 1, "y")).toEqual({ "extent.0": "x", "extent.1": "y" });
  expect(withExtentText({ "extent.0": "x" }, 0, undefined)).toEqual({});
});

test("a removed fault takes its text with it, and those after it move up", () => {
  expect(withoutFault({ "extent.0": "a", "extent.1": "b", "extent.2": "c" }, 1)).toEqual({
    "extent.0": "a",
    "extent.1": "c",
  });
});
