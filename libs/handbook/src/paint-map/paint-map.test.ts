import { describe, expect, it } from "vitest";
import { estimate } from "@evenhand/measurement/estimate";
import { exactly } from "../interval/index.ts";
import { originalPaint } from "../original-paint/index.ts";
import { paintBand, paintMap, panelTexts, probedPanels } from "./index.ts";
import type { PanelPaint } from "./index.ts";

const panel = (name: string, value: number, more: Partial<PanelPaint> = {}): PanelPaint => ({
  panel: name,
  thickness: exactly(value),
  material: "steel",
  ...more,
});
const car = (...values: number[]) => values.map((value, index) => panel(`p${index}`, value));

describe("paintBand", () => {
  it.each([
    [74.9, "thinner than a factory finish"],
    [75, "factory finish or thin refinish"],
    [200, "factory finish or thin refinish"],
    [200.1, "refinish"],
    [400, "refinish"],
    [400.1, "heavy build"],
    [700, "heavy build"],
    [700.1, "filler likely"],
    [1000, "filler likely"],
    [1000.1, "filler or body lead"],
  ])("%f µm: %s", (thickness, band) => {
    expect(paintBand(thickness)).toBe(band);
  });

  it("goes by the firm's bands", () => {
    expect(paintBand(250, { "paint.factory": 260 })).toBe("factory finish or thin refinish");
  });
});

describe("probedPanels", () => {
  it("leaves out leaded seams and what a probe cannot read", () => {
    const panels = [
      panel("a", 1),
      panel("b", 1, { leadedSeam: true }),
      panel("c", 1, { material: "other" }),
      panel("d", 1, { material: "aluminum" }),
      panel("e", 1, { leadedSeam: false }),
    ];
    expect(probedPanels(panels).map(({ panel: name }) => name)).toEqual(["a", "d", "e"]);
  });
});

describe("paintMap", () => {
  it("needs four panels", () => {
    expect(paintMap({ panels: car(100, 100, 100) }).reason).toBe("too-few");
    expect(paintMap({ panels: car(100, 100, 100, 100) }).reason).toBe("even-over-car");
  });

  it.each([
    [175, "even-over-car"],
    [175.1, "panels-stand-out"],
    [25, "even-over-car"],
    [24.9, "panels-stand-out"],
  ])("with a median of 100 a panel at %f: %s", (value, reason) => {
    expect(paintMap({ panels: car(100, 100, 100, 100, value) }).reason).toBe(reason);
  });

  it("reaches as far as 30 % of a thick car's median, and as its own scatter", () => {
    expect(paintMap({ panels: car(300, 300, 300, 300, 390) }).reason).toBe("even-over-car");
    expect(paintMap({ panels: car(300, 300, 300, 300, 391) }).reason).toBe("panels-stand-out");
    const scattered = paintMap({ panels: car(60, 80, 100, 120, 140, 198) });
    expect(scattered.figures.median?.value).toBe(110);
    expect(scattered.figures.reach?.value).toBeCloseTo(3.5 * 1.482602218505602 * 30, 9);
    expect(scattered.reason).toBe("even-over-car");
  });

  it("counts the thickest spot, and names the thickest panels first", () => {
    const panels = [
      ...car(100, 100, 100, 100),
      panel("door", 110, { thickest: exactly(300) }),
      panel("hood", 400),
    ];
    expect(paintMap({ panels }).alternatives).toEqual([
      "hood 400 µm, refinish",
      "door 110 µm (300 µm at its thickest), refinish",
    ]);
    expect(
      paintMap({ panels: [...car(100, 100, 100, 100), panel("roof", 100, { thickest: exactly(701) })] }),
    ).toMatchObject({
      reason: "filler-likely",
      alternatives: ["roof 100 µm (701 µm at its thickest), filler likely"],
    });
    expect(paintMap({ panels: car(600, 600, 600, 600, 700) }).reason).toBe("thick");
  });

  it("names what is over a refinish, and says nothing of filler while a reading may be under it", () => {
    expect(
      paintMap({
        panels: [...car(650, 650, 650, 650), { ...panel("door", 690), thickness: estimate(690, 10) }],
      }).reason,
    ).toBe("thick");
  });
});

describe("panelTexts", () => {
  it("gives the mean, the thickest spot where thicker, and the band", () => {
    const panels = [
      panel("hood", 110.4),
      panel("roof", 110, { thickest: exactly(90) }),
      panel("door", 110, { thickest: exactly(420) }),
    ];
    expect(panelTexts(panels, {})).toEqual([
      "hood 110 µm, factory finish or thin refinish",
      "roof 110 µm, factory finish or thin refinish",
      "door 110 µm (420 µm at its thickest), heavy build",
    ]);
  });
});

describe("originalPaint", () => {
  it.each([
    [74.9, "thin"],
    [75, "no-contradiction"],
    [200, "no-contradiction"],
    [200.1, "refinished"],
  ])("%f µm: %s", (value, reason) => {
    expect(originalPaint({ panels: car(120, value) }).reason).toBe(reason);
  });

  it("counts the thickest spot and names it", () => {
    const result = originalPaint({
      panels: [panel("hood", 120), panel("roof", 110, { thickest: exactly(190) })],
    });
    expect(result).toMatchObject({
      reason: "no-contradiction",
      words: { thickestPanel: "roof" },
      figures: { thickest: { value: 190 } },
    });
    expect(originalPaint({ panels: [panel("roof", 110, { thickest: exactly(201) })] }).reason).toBe(
      "refinished",
    );
  });

  it("judges as many together as it is told, or as it has", () => {
    const one = (value: number, among?: number) =>
      originalPaint({ panels: [{ ...panel("hood", 0), thickness: estimate(value, 10) }], among }).reason;
    expect([one(226.5), one(226.5, 2), one(228.5, 2)]).toEqual(["refinished", "range-covers", "refinished"]);
    const two = originalPaint({
      panels: [{ ...panel("hood", 0), thickness: estimate(226.5, 10) }, panel("roof", 120)],
    });
    expect(two.reason).toBe("range-covers");
  });

  it("leaves out what a probe cannot read", () => {
    expect(originalPaint({ panels: [panel("hood", 900, { material: "other" })] }).reason).toBe("too-few");
  });
});
