import { expect, test } from "vitest";
import { sheetIndex } from "../../entities/sheet/sheet-index";
import { transportSheet1 } from "@evenhand/sheet/transport-sheet-1";
import { findingsOf, placeKey } from "./findings";

const { items } = sheetIndex(transportSheet1);

test("where something was found, what was not noted is said not to be there", () => {
  const found = [{ kind: "dent", extent: { value: 80, unit: "mm" as const } }];
  const said = {
    [placeKey("body.faults", "hood")]: { kind: "faults" as const, found, denied: [] },
    [placeKey("road.leaks", "")]: { kind: "choice" as const, option: "none" },
  };
  const notes = { [placeKey("road.leaks", "")]: " dry under it " };
  expect(findingsOf({ said, notes }, items)).toEqual([
    {
      item: "body.faults",
      position: "hood",
      answer: {
        kind: "faults",
        found,
        denied: ["ding", "scratch", "chip", "crack", "bend", "stain", "missing-piece"],
      },
    },
    { item: "road.leaks", position: "", answer: { kind: "choice", option: "none" }, note: "dry under it" },
  ]);
});
