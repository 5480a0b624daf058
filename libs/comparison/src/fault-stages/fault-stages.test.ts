import { expect, it } from "vitest";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { coversKind, familyOf } from "./index.ts";

const stages = { kinds: new Map(sheetVersion1.faultKinds.map((kind) => [kind.id, kind])) };

it.each([
  ["corrosion", "corrosion", true],
  ["corrosion", "perforation", true],
  ["corrosion", "blister", true],
  ["perforation", "perforation", true],
  ["perforation", "corrosion", false],
  ["perforation", "blister", false],
  ["dent", "ding", true],
  ["dent", "scratch", false],
  ["gouge", "gouge", true],
  ["gouge", "dent", false],
])("who denies %s denies %s: %s", (denied, kind, covered) => {
  expect(coversKind(denied, kind, stages)).toBe(covered);
});

it("takes a kind the sheet does not have for a thing of its own", () => {
  expect(familyOf("gouge", stages)).toBe("gouge");
  expect(familyOf("ding", stages)).toBe(familyOf("dent", stages));
});
