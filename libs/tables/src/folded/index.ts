/**
 * Words as they are looked up, however a person spaced and capitalized them.
 *
 * @example folded("  Not   Tested ") // "not tested"
 */
export const folded = (text: string): string => text.trim().toLowerCase().replaceAll(/\s+/g, " ");
