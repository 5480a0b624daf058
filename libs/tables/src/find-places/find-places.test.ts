import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { expect, test } from "vitest";
import { labelOf } from "../label/index.ts";
import { placesOf } from "./index.ts";

const at = (id: string, text: string) => {
  const item = sheetVersion1.items.find((one) => one.id === id);
  if (item === undefined) throw new RangeError(id);
  return placesOf(sheetVersion1, item, [labelOf(text)], {});
};

test.each([
  ["wheels.pressure", "LF tire", ["left-front"], "said"],
  ["wheels.pressure", "front tires", ["left-front", "right-front"], "some"],
  ["wheels.pressure", "spare tire", ["spare"], "said"],
  ["wheels.pressure", "all four tires", ["left-front", "left-rear", "right-rear", "right-front"], "said"],
  ["body.faults", "bonnet", ["hood"], "said"],
  ["body.faults", "N/S wing", ["left-front-fender"], "said"],
  ["body.faults", "L door", ["left-front-door"], "said"],
  ["gaps.width-top", "bonnet shut line N/S", ["hood-left-fender"], "said"],
  ["interior.seats", "driver's seat", ["left-front"], "said"],
  ["engine.compression", "cylinder 4", ["cylinder-4"], "said"],
])("%s of “%s” is at %j", (id, text, positions, how) => {
  expect(at(id, text)).toEqual({ positions, how });
});
