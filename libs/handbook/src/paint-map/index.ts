import type { FirmLimits, RuleResult, Verdict } from "@evenhand/shared/cross-check";
import type { Estimate } from "@evenhand/measurement/estimate";
import { mad, NORMAL_CONSISTENCY } from "@evenhand/measurement/mad";
import { median } from "@evenhand/measurement/median";
import { judge, judgeSpan, spanOf, worstVerdict } from "../interval/index.ts";
import { figure } from "../rule-result/index.ts";
import { paintMapRecord } from "./record.ts";
import { resultMessages } from "../result-words/index.ts";

/** Paint over one panel, µm, each metal by the probe made for it. */
export type PanelPaint = {
  readonly panel: string;
  readonly thickness: Estimate;
  /** The same for setting beside other panels: what one gauge shares over all of them is left out. */
  readonly contrast?: Estimate;
  /** The thickest spot, where it was noted apart. */
  readonly thickest?: Estimate;
  readonly material: "steel" | "aluminum" | "other";
  /** The readings lie on a seam filled with lead at the works; it is left out. */
  readonly leadedSeam?: boolean;
};

export type PaintMapInput = { readonly panels: readonly PanelPaint[] };

const BANDS = ["paint.thin", "paint.factory", "paint.refinish", "paint.heavy", "paint.filler"] as const;
const BAND_NAMES = [
  "thinner than a factory finish",
  "factory finish or thin refinish",
  "refinish",
  "heavy build",
  "filler likely",
  "filler or body lead",
] as const;

/** Where each band ends, from the thinnest on. */
const edgesOf = (firm: FirmLimits): readonly number[] =>
  BANDS.map((id) => paintMapRecord.limit(id, firm).value);

const bandAmong = (thickness: number, edges: readonly number[]): (typeof BAND_NAMES)[number] => {
  // The lowest band is open at its top: 75 µm is a factory finish; the others are closed.
  const index = edges.filter((edge, place) => (place === 0 ? thickness >= edge : thickness > edge)).length;
  return BAND_NAMES[index] ?? "filler or body lead";
};

/**
 * The band a thickness falls in, in words; it never says that paint is original.
 *
 * @example paintBand(310) // "refinish"
 */
export const paintBand = (thickness: number, firm: FirmLimits = {}): (typeof BAND_NAMES)[number] =>
  bandAmong(thickness, edgesOf(firm));

/** Panels of metal a probe can read, seams of lead left out. */
export const probedPanels = (panels: readonly PanelPaint[]): PanelPaint[] =>
  panels.filter(({ material, leadedSeam }) => material !== "other" && leadedSeam !== true);

/** Fewer panels have no robust center. */
export const LEAST_PANELS = 4;

/** `scatter`: how far chance takes a panel from the median; `reach`: as far, and no less than what matters on a map. */
type Center = { readonly median: number; readonly scatter: number; readonly reach: number };

/** The car's own center, and how far from it a panel must lie to stand out. */
export const centerOf = (panels: readonly PanelPaint[], firm: FirmLimits): Center => {
  const values = panels.map(({ thickness }) => thickness.value);
  const center = median(values);
  const scatter = paintMapRecord.limit("paint.stand-out", firm).value * NORMAL_CONSISTENCY * mad(values);
  const reach = Math.max(
    scatter,
    paintMapRecord.limit("paint.matters", firm).value,
    paintMapRecord.limit("paint.matters-share", firm).value * center,
  );
  return { median: center, scatter, reach };
};

/** The thicker of a panel's mean and its thickest spot. */
const greatest = ({ thickness, thickest }: PanelPaint): number =>
  Math.max(thickness.value, thickest?.value ?? 0);

/** Each panel with its mean, its thickest spot where that is thicker, and the band of the thicker, in words. */
export const panelTexts = (panels: readonly PanelPaint[], firm: FirmLimits): string[] => {
  const edges = edgesOf(firm);
  return panels.map((panel) => {
    const [thickness, thickest] = [Math.round(panel.thickness.value), Math.round(greatest(panel))];
    const values = { panel: panel.panel, thickness, band: bandAmong(greatest(panel), edges) };
    return thickest > thickness
      ? resultMessages.say("paint-with-thickest", { ...values, thickest })
      : resultMessages.say("paint", values);
  });
};

/** What is read of a panel: its mean, and its thickest spot where that was noted. */
export const readingsOf = ({ thickness, thickest }: PanelPaint): Estimate[] =>
  thickest === undefined ? [thickness] : [thickness, thickest];

/** A panel against the car's others: the gauge's own error cancels, since it is the same gauge on all of them. */
const contrastOf = (panel: PanelPaint, center: number, reach: number, among: number): Verdict => {
  const { thickness, contrast = thickness, thickest } = panel;
  const zone = { low: center - reach, high: center + reach };
  return worstVerdict(
    [contrast, ...(thickest === undefined ? [] : [thickest])].map((one) => judge(one, zone, among)),
  );
};

/**
 * Paint map of the car: its median, and the panels and spots that stand out from it or that only filler explains.
 * A panel stands out when it lies farther off than 3.5 robust standard deviations of the panels and than what
 * matters. Metals are read by their own probes and share one center. Anything over a refinish is named on any car, however
 * few panels were measured and however thick the rest is.
 *
 * Source: common practice, no source.
 *
 * @returns panels that stand out as alternatives, the thickest first
 * @example with five panels about 120 µm and a door at 420 µm: reason "panels-stand-out"
 */
export const paintMap = ({ panels }: PaintMapInput, firm: FirmLimits = {}): RuleResult => {
  const probed = probedPanels(panels).toSorted((a, b) => greatest(b) - greatest(a));
  const [refinishAt, heavyAt] = [
    paintMapRecord.limit("paint.refinish", firm),
    paintMapRecord.limit("paint.heavy", firm),
  ];
  const limits = [
    ...(["paint.stand-out", "paint.matters", "paint.matters-share"] as const).map((id) =>
      paintMapRecord.limit(id, firm),
    ),
    refinishAt,
    heavyAt,
  ];
  const [refinish, heavy] = [refinishAt.value, heavyAt.value];
  const among = Math.max(1, probed.length);
  const spans = probed.map((panel) => readingsOf(panel).map((reading) => spanOf(reading, among)));
  const comesTo = (verdict: Verdict, high: number) => (_panel: PanelPaint, place: number) =>
    (spans[place] ?? []).some((span) => judgeSpan(span, { high }) === verdict);
  const over = (high: number): readonly PanelPaint[] => probed.filter(comesTo("breaks", high));
  const [thick, filled] = [over(refinish), over(heavy)];
  const few = probed.length < LEAST_PANELS;
  const { median: center, reach } = few ? { median: 0, reach: 0 } : centerOf(probed, firm);
  const contrasts = few
    ? []
    : probed.map((panel) => ({ panel, verdict: contrastOf(panel, center, reach, among) }));
  const out = contrasts.filter(({ verdict }) => verdict === "breaks").map(({ panel }) => panel);
  const detail = {
    limits,
    figures: {
      panels: figure(probed.length),
      ...(few ? {} : { median: figure(center, "um"), reach: figure(reach, "um") }),
    },
  };
  const named = probed.filter((panel) => thick.includes(panel) || out.includes(panel));
  if (named.length > 0) {
    const reason = filled.length > 0 ? "filler-likely" : out.length > 0 ? "panels-stand-out" : "thick";
    return paintMapRecord.answer(reason, { ...detail, alternatives: panelTexts(named, firm) });
  }
  if (few) return paintMapRecord.answer("too-few", detail);
  const unclear =
    contrasts.some(({ verdict }) => verdict === "cannot-tell") ||
    probed.some(comesTo("cannot-tell", refinish));
  return paintMapRecord.answer(unclear ? "range-covers" : "even-over-car", detail);
};
