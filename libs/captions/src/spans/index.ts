/** A stretch of tokens: `from` up to `to`. */
export type Span = { readonly from: number; readonly to: number };

/**
 * Whether one stretch lies over another and is the longer.
 *
 * @example
 * isOver({ from: 0, to: 3 }, { from: 1, to: 2 }); // true
 */
export const isOver = (one: Span, { from, to }: Span): boolean =>
  one.from <= from && one.to >= to && one.to - one.from > to - from;
