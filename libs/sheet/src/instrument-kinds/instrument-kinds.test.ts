import { expect, test } from "vitest";
import { sheetVersion1 } from "../sheet-version-1/index.ts";
import { instrumentKinds } from "./index.ts";

const kinds = instrumentKinds(sheetVersion1);

test("names each instrument the sheet measures with once, with the units its items are read in", () => {
  const names = kinds.map(({ name }) => name);
  expect(new Set(names).size).toBe(names.length);
  expect(kinds).toContainEqual({
    name: "tread depth gauge",
    units: ["1/32in", "mm", "in"],
    dimensions: ["length"],
  });
});

test("offers nothing that nobody brings along", () => {
  const names = kinds.map(({ name }) => name);
  expect(names.filter((name) => name.startsWith("the ") || name === "counting")).toEqual([]);
});

test("knows what each measures by its units; a rule is read in lengths and in shares of one", () => {
  expect(kinds.filter(({ dimensions, units }) => dimensions.length === 0 || units.length === 0)).toEqual([]);
  expect(kinds.find(({ name }) => name === "steel rule")?.dimensions).toEqual(["length", "ratio"]);
});
