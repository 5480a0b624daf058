import type { Figure, FigureRange, LimitUse } from "@evenhand/shared/cross-check";

/** What a result carries beside its reason. */
export type ResultDetail = {
  readonly figures?: Record<string, Figure>;
  readonly ranges?: Record<string, FigureRange>;
  readonly words?: Record<string, string>;
  readonly alternatives?: string[];
  readonly limits?: LimitUse[];
};

/** A figure with its unit, `1` where it has none. */
export const figure = (value: number, unit = "1", standardUncertainty?: number): Figure =>
  standardUncertainty === undefined || standardUncertainty === 0
    ? { value, unit }
    : { value, unit, standardUncertainty };
