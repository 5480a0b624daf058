import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import type { VehicleForm } from "@evenhand/shared/report";
import { expect, test } from "vitest";
import { placesFor } from "../../entities/sheet/places";
import { sheetIndex } from "../../entities/sheet/sheet-index";
import { chooseItem, itemsFound, placesOf } from "./place-choice";

const coupe: VehicleForm = {
  body: "coupe",
  doors: 2,
  cylinders: 8,
  construction: "unit-body",
  gearbox: "automatic",
  driven: "rear",
  fuelSystem: "carburetor",
  systemVolts: 12,
  brakes: { front: "disc", rear: "drum" },
  leftHandDrive: true,
};
const places = placesFor(sheetIndex(sheetVersion1), coupe);
const idsFound = (typed: string, chosen = ""): readonly string[] =>
  itemsFound(places, typed, chosen).map(({ id }) => id);

test("an item is found by any word for it, each word typed being one, and once for all its positions", () => {
  expect(idsFound(" Tyre  AGE ")).toEqual(["wheels.tire-age"]);
  expect(idsFound("tyre spoon")).toEqual([]);
});

test("while nothing is typed the chosen item stands alone", () => {
  expect(idsFound(" ", "wheels.tread-depth")).toEqual(["wheels.tread-depth"]);
  expect(idsFound("")).toEqual([]);
});

test("an item is chosen at the first of its positions", () => {
  const [first, ...others] = placesOf(places, "wheels.tread-depth");
  expect(others.length).toBeGreaterThan(2);
  expect(chooseItem(places, "wheels.tread-depth")).toEqual({
    item: "wheels.tread-depth",
    position: first?.position,
  });
});
