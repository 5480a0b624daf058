import { expect, test } from "vitest";
import { compileSheet } from "../compile-sheet/index.ts";
import { sheetVersion1 } from "../sheet-version-1/index.ts";
import { ASKED_PICTURES, missingPictures } from "./index.ts";

const sheet = compileSheet(sheetVersion1);

test("every picture asked for is of an item of the sheet, once", () => {
  const items = ASKED_PICTURES.map(({ item }) => item);
  expect(items.filter((item) => !sheet.items.has(item))).toEqual([]);
  expect(new Set(items).size).toBe(items.length);
});

test("of nothing sent everything is missing, each in words", () => {
  const missing = missingPictures(sheet, []);
  expect(missing.map(({ item }) => item)).toEqual(ASKED_PICTURES.map(({ item }) => item));
  expect(missing[0]?.words).toBe("A photograph, near and sharp: VIN or chassis number");
  expect(missing.at(-1)?.words).toMatch(/^A film with its sound.*cold start/);
});

test("what is there is missing no more; a photograph of the cold start is not its film", () => {
  const there = [
    { item: "identity.vin", isFilm: false },
    { item: "underbody.rails", isFilm: true },
    { item: "road.cold-start", isFilm: false },
  ];
  const items = missingPictures(sheet, there).map(({ item }) => item);
  expect(items).not.toContain("identity.vin");
  expect(items).not.toContain("underbody.rails");
  expect(items).toContain("road.cold-start");
  expect(missingPictures(sheet, [{ item: "road.cold-start", isFilm: true }]).at(-1)?.item).not.toBe(
    "road.cold-start",
  );
});
