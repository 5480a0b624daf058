/** What kind of scale the values stand on (Stevens 1946). */
export type Level = "nominal" | "ordinal" | "interval" | "ratio";

type Metric = (a: number, b: number) => number;

const square = (value: number): number => value * value;

/** Ordinal distance: how many values lie from one to the other, each end counted half. */
const ordinalMetric = (values: readonly number[], totals: readonly number[]): Metric => {
  const middles = new Map<number, number>();
  let before = 0;
  for (const [index, value] of values.entries()) {
    const total = totals[index] ?? 0;
    middles.set(value, before + total / 2);
    before += total;
  }
  return (a, b) => square((middles.get(a) ?? 0) - (middles.get(b) ?? 0));
};

/**
 * Squared difference of two values on their scale (Krippendorff 2011, section C).
 *
 * @param values the distinct values, rising
 * @param totals how often each occurs; only the ordinal metric asks
 */
export const differenceMetric = (
  level: Level,
  values: readonly number[],
  totals: readonly number[],
): Metric => {
  const metrics: Record<Level, Metric> = {
    nominal: (a, b) => (a === b ? 0 : 1),
    ordinal: ordinalMetric(values, totals),
    interval: (a, b) => square(a - b),
    ratio: (a, b) => (a === b ? 0 : square((a - b) / (a + b))),
  };
  return metrics[level];
};
