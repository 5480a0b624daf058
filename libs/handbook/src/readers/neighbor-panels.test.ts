import { describe, expect, it } from "vitest";
import { neighborPanels } from "./neighbor-panels.ts";

describe("neighborPanels", () => {
  it("pairs panels that meet, and none that is not there", () => {
    expect(neighborPanels(["hood", "left-front-fender", "trunk-lid"])).toEqual([
      ["hood", "left-front-fender"],
    ]);
    expect(neighborPanels(["hood", "trunk-lid", "roof"])).toEqual([]);
  });

  it("mirrors the left on the right", () => {
    expect(neighborPanels(["right-front-door", "right-quarter", "tailgate"])).toEqual([
      ["right-front-door", "right-quarter"],
      ["right-quarter", "tailgate"],
    ]);
  });

  it("puts a rear door between front door and quarter, where there is one", () => {
    expect(neighborPanels(["left-front-door", "left-quarter"])).toEqual([
      ["left-front-door", "left-quarter"],
    ]);
    expect(neighborPanels(["left-front-door", "left-rear-door", "left-quarter", "left-rocker"])).toEqual([
      ["left-front-door", "left-rear-door"],
      ["left-rear-door", "left-quarter"],
      ["left-front-door", "left-rocker"],
      ["left-rear-door", "left-rocker"],
    ]);
  });

  it("joins both sides in the middle", () => {
    expect(neighborPanels(["hood", "nose-panel", "cowl", "trunk-lid", "tailgate", "tail-panel"])).toEqual([
      ["hood", "nose-panel"],
      ["hood", "cowl"],
      ["trunk-lid", "tail-panel"],
      ["tailgate", "tail-panel"],
    ]);
  });
});
