import type { FirmLimits, RuleResult } from "@evenhand/shared/cross-check";
import { judge } from "../interval/index.ts";
import { limitUse } from "../limits/index.ts";
import { panelTexts, probedPanels } from "../paint-map/index.ts";
import type { PaintMapInput } from "../paint-map/index.ts";
import { figure, ruleResult } from "../rule-result/index.ts";

export type OriginalPaintInput = PaintMapInput & {
  /** How many panels are called original and judged together, where each is set against its own claim. */
  readonly among?: number;
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
  const [thin, factory] = [limitUse("paint.thin", firm), limitUse("paint.factory", firm)];
  const probed = probedPanels(input.panels).toSorted((a, b) => b.thickness.value - a.thickness.value);
  const among = input.among ?? probed.length;
  const limits = [thin, factory];
  const [thickest] = probed;
  if (thickest === undefined) return ruleResult("original-paint", "too-few", { limits });
  const detail = {
    limits,
    figures: {
      thickest: figure(thickest.thickness.value, "um", thickest.thickness.standardUncertainty),
      panels: figure(probed.length),
    },
    words: { thickestPanel: thickest.panel },
  };
  const verdicts = probed.map((panel) => ({
    panel,
    over: judge(panel.thickness, { high: factory.value }, among),
    under: judge(panel.thickness, { low: thin.value }, among),
  }));
  const refinished = verdicts.filter(({ over }) => over === "breaks").map(({ panel }) => panel);
  if (refinished.length > 0) {
    return ruleResult("original-paint", "refinished", {
      ...detail,
      alternatives: panelTexts(refinished, firm),
    });
  }
  const thinned = verdicts.filter(({ under }) => under === "breaks").map(({ panel }) => panel);
  if (thinned.length > 0)
    return ruleResult("original-paint", "thin", { ...detail, alternatives: panelTexts(thinned, firm) });
  const clear = verdicts.every(({ over, under }) => over === "holds" && under === "holds");
  return ruleResult("original-paint", clear ? "no-contradiction" : "range-covers", detail);
};
