import { describe, expect, it } from "vitest";
import { sheetVersion1 } from "../sheet-version-1/index.ts";
import { cautionsOf } from "./index.ts";

const idsOf = (...items: string[]) => cautionsOf(sheetVersion1, items).map(({ id }) => id);

describe("cautionsOf", () => {
  it("gives each caution once, in the sheet's order, whatever the order of the items", () => {
    const both = idsOf("driveline.lines", "brakes.hoses");
    expect(both).toEqual(idsOf("brakes.hoses", "driveline.lines"));
    expect(new Set(both).size).toBe(both.length);
    expect(both).toEqual(expect.arrayContaining(["lift-points", "raised-car", "fuel-leak"]));
  });

  it("gives none for papers, and none for what the sheet does not have", () => {
    expect(idsOf("identity.title-brand", "nothing.here")).toEqual([]);
  });
});
