/** What people write short in a list of findings. No source: the trade's own habits. */
const SHORT: readonly (readonly [short: RegExp, whole: string])[] = [
  [/\bn\/w\b/gi, "not working"],
  [/\bw(?:kg|rkg|\/ing)\b\.?/gi, "working"],
  [/\bv\.?\s?gd\b\.?/gi, "very good"],
  [/\bgd\b\.?/gi, "good"],
  [/\bv\.\s+(?=[a-z])/gi, "very "],
  [/\bsl\.\s*(?=[a-z])/gi, "slight "],
  [/\blt\.?\s+(?=surf|corr|rust|wear)/gi, "light "],
  [/\bsurf\.\s*/gi, "surface "],
  [/\bcorr\.\s*/gi, "corrosion "],
  [/\binst\.$/gi, "instant"],
  [/\bexc\.\s*/gi, "except "],
  [/\bb\/s\b/gi, "both sides"],
  [/\bsaggy\b/gi, "sagging"],
];

/**
 * Findings written short, in whole words.
 *
 * @example withoutShorthand("sl. wander, horn n/w") // "slight wander, horn not working"
 */
export const withoutShorthand = (text: string): string =>
  SHORT.reduce((whole, [short, words]) => whole.replaceAll(short, words), text);
