import type { FirmLimits, RuleResult } from "@evenhand/shared/cross-check";
import type { Estimate } from "@evenhand/measurement/estimate";
import { judge } from "../interval/index.ts";
import type { Zone } from "../interval/index.ts";
import { centerOf, LEAST_PANELS, panelTexts, probedPanels, readingsOf } from "../paint-map/index.ts";
import type { PaintMapInput, PanelPaint } from "../paint-map/index.ts";
import { figure } from "../rule-result/index.ts";
import { originalPaintRecord } from "./record.ts";

export type OriginalPaintInput = PaintMapInput & {
  /** How many readings are judged together, where each is set against its own claim. */
  readonly among?: number;
  /** Every panel measured on the car, these included: a panel that stands over them was painted again. */
  readonly car?: readonly PanelPaint[];
};

/**
 * Paint called original, against the thickness of every panel. A panel thicker than a factory finish speaks
 * against the claim; none does not prove it, since a thin refinish reads the same.
 *
 * Source: common practice, no source.
 *
 * @example originalPaint({ panels: [{ panel: "hood", thickness: exactly(310), material: "steel" }] }).reason // "refinished"
 */
export const originalPaint = (input: OriginalPaintInput, firm: FirmLimits = {}): RuleResult => {
  const [thin, factory] = [
    originalPaintRecord.limit("paint.thin", firm),
    originalPaintRecord.limit("paint.factory", firm),
  ];
  const probed = probedPanels(input.panels);
  const readings: { readonly panel: PanelPaint; readonly reading: Estimate }[] = [];
  for (const panel of probed) for (const reading of readingsOf(panel)) readings.push({ panel, reading });
  const thickest = readings.toSorted((a, b) => b.reading.value - a.reading.value)[0];
  const contrast = originalPaintRecord.limit("paint.contrast", firm);
  const limits = [thin, factory];
  if (thickest === undefined) return originalPaintRecord.answer("too-few", { limits });
  const { value, standardUncertainty } = thickest.reading;
  const detail = {
    limits,
    figures: { thickest: figure(value, "um", standardUncertainty) },
    words: { thickestPanel: thickest.panel.panel },
  };
  const among = input.among ?? readings.length;
  const out = (zone: Zone) =>
    probed.filter((panel) => readingsOf(panel).some((reading) => judge(reading, zone, among) === "breaks"));
  const refinished = out({ high: factory.value });
  if (refinished.length > 0) {
    return originalPaintRecord.answer("refinished", {
      ...detail,
      alternatives: panelTexts(refinished, firm),
    });
  }
  const others = probedPanels(input.car ?? []);
  if (others.length >= LEAST_PANELS) {
    const { median: found, scatter } = centerOf(others, firm);
    // Thinner than any finish from a factory is no center of one: a gauge not set on metal, or a figure dropped.
    const median = Math.max(found, thin.value);
    // The gauge's own error cancels between panels, so that far less than a map's reach tells one from the others.
    // Chance is asked for once: the panels' scatter has the gauge's in it, so that it is no margin on top of an interval.
    const high = median + contrast.value;
    const over = probed.filter(
      ({ thickness, contrast: own = thickness }) =>
        own.value > median + scatter && judge(own, { high }, among) === "breaks",
    );
    if (over.length > 0)
      return originalPaintRecord.answer("over-the-others", {
        ...detail,
        limits: [...limits, contrast],
        figures: { ...detail.figures, median: figure(median, "um") },
        alternatives: panelTexts(over, firm),
      });
  }
  const thinned = out({ low: thin.value });
  if (thinned.length > 0) {
    return originalPaintRecord.answer("thin", { ...detail, alternatives: panelTexts(thinned, firm) });
  }
  const zone = { low: thin.value, high: factory.value };
  const within = readings.every(({ reading }) => judge(reading, zone, among) === "holds");
  return originalPaintRecord.answer(within ? "no-contradiction" : "range-covers", detail);
};
