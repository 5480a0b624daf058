import { describe, expect, it } from "vitest";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { ZONES, neighborsOf, zoneOf } from "./index.ts";

describe("zoneOf", () => {
  it.each([
    ["underbody.inner-rockers", "left", "left"],
    ["underbody.lift-points", "left-front", "left"],
    ["underbody.rails", "right-front", "right-front"],
    ["underbody.spring-hangers", "left", "left-rear"],
    ["underbody.diagonals", "left-front-right-rear", "whole"],
    ["underbody.wheelbase", "right", "whole"],
    ["underbody.cross-members", "rear", "rear"],
    ["underbody.cross-members", "front", "front"],
    ["underbody.cross-members", "middle", "whole"],
    ["underbody.rails", "left-rear", "left-rear"],
    ["underbody.inner-rockers", "right", "right"],
    ["underbody.spring-hangers", "right", "right-rear"],
    ["body.paint-thickness", "hood", "front"],
    ["gaps.width-top", "hood-right-fender", "right-front"],
    ["gaps.width-bottom", "left-front-door-quarter", "left"],
    ["trunk.floor", "", "rear"],
  ])("%s %s lies %s", (item, position, zone) => {
    expect(zoneOf(item, position)).toBe(zone);
  });

  it("places every panel and every gap somewhere on the car", () => {
    const panels = sheetVersion1.positionSets.filter(({ id }) =>
      ["panels", "gaps", "lower-panels"].includes(id),
    );
    const unplaced = panels
      .flatMap(({ positions }) => positions)
      .filter(({ id }) => zoneOf("body.paint-thickness", id) === "whole");
    expect(unplaced.map(({ id }) => id)).toEqual([]);
  });

  it("has no neighbor it does not know", () => {
    expect(ZONES.flatMap(neighborsOf).filter((zone) => !ZONES.includes(zone))).toEqual([]);
  });
});
