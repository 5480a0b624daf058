/**
 * Words of the code's own as a list for `IN (…)` or `ARRAY[…]`. Never for what somebody sent: that goes as a value.
 *
 * @example literals(["held", "requested"]) // "'held', 'requested'"
 */
export const literals = (words: readonly string[]): string => words.map((word) => `'${word}'`).join(", ");
