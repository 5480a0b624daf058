import { describe, expect, it } from "vitest";
import { panelColor, threeWayFactor } from "./index.ts";

const panel = (name: string, L: number, standardUncertainty = 0) => ({
  panel: name,
  color: { L, a: 10, b: 10 },
  standardUncertainty,
});

describe("threeWayFactor", () => {
  it.each([
    [0.5, 1.5381722544550522],
    [0.95, 2.795483482915108],
    [0.99, 3.368214175218727],
    [0.999, 4.033142],
  ])("holds %f within %f", (probability, factor) => {
    expect(threeWayFactor(probability)).toBeCloseTo(factor, 6);
  });
});

const span = (pairs: number) => {
  const others = Array.from({ length: pairs }, (_, index) => panel(`p${index}`, 50, 0.4));
  const neighbors = others.map(({ panel: name }) => ["hood", name] as const);
  return panelColor({ panels: [panel("hood", 50, 0.3), ...others], neighbors }).ranges?.deltaE;
};

describe("panelColor", () => {
  it("names the pairs that are noticed, the farthest first", () => {
    const panels = [
      panel("hood", 50),
      panel("cowl", 54),
      panel("left fender", 58),
      panel("right fender", 50.5),
    ];
    const neighbors = [
      ["hood", "cowl"],
      ["hood", "left fender"],
      ["hood", "right fender"],
      ["hood", "roof"],
    ] as const;
    const result = panelColor({ panels, neighbors });
    expect(result).toMatchObject({ reason: "noticeable", words: { panels: "hood and left fender" } });
    expect(result.alternatives).toEqual(["hood and left fender: 7.7", "hood and cowl: 4.0"]);
  });

  it("passes at exactly the limit", () => {
    const apart =
      panelColor({ panels: [panel("hood", 50), panel("cowl", 52)], neighbors: [["hood", "cowl"]] }).figures
        .deltaE?.value ?? 0;
    const with2 = (limit: number) =>
      panelColor(
        { panels: [panel("hood", 50), panel("cowl", 52)], neighbors: [["hood", "cowl"]] },
        { "panel-color.noticeable": limit },
      ).reason;
    expect([with2(apart), with2(apart - 1e-9)]).toEqual(["not-noticed", "noticeable"]);
  });

  it("passes only where every pair does", () => {
    const panels = [panel("hood", 50, 0.05), panel("cowl", 50.5, 0.05), panel("roof", 52.4, 0.5)];
    const judge = (...others: string[]) =>
      panelColor({ panels, neighbors: others.map((other) => ["hood", other] as const) }).reason;
    expect([judge("cowl"), judge("roof"), judge("cowl", "roof")]).toEqual([
      "not-noticed",
      "range-covers",
      "range-covers",
    ]);
  });

  it("reaches as far as scatter in three directions can, near gray, for every pair", () => {
    expect(span(1)?.high).toBeCloseTo(1.5 * 3.3682142 * 0.5, 6);
    expect(span(1)?.low).toBe(0);
    expect(span(4)?.high).toBeCloseTo(1.5 * threeWayFactor(0.9975) * 0.5, 9);
  });

  it("has nothing to say of panels that do not meet", () => {
    expect(
      panelColor({ panels: [panel("hood", 50), panel("roof", 80)], neighbors: [["hood", "cowl"]] }).reason,
    ).toBe("too-few");
  });
});
