const PLAIN = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d{1,3})?$/;
const GROUPED = /^[+-]?\d{1,3}(?:,\d{3})+(?:\.\d+)?$/;

/**
 * A number as an American types it, thousands grouped or not; `NaN` where it is none.
 *
 * @example numberTyped("30,000") // 30000
 */
export const numberTyped = (typed: string): number => {
  const text = typed.trim().replace("−", "-");
  const value = PLAIN.test(text) || GROUPED.test(text) ? Number(text.replaceAll(",", "")) : Number.NaN;
  return Number.isFinite(value) ? value : Number.NaN;
};

/** For a field: nothing where nothing is stored. */
export const numberText = (value: number | undefined): string => (value === undefined ? "" : String(value));
