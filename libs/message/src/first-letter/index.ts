/**
 * Words that begin a sentence or stand alone.
 *
 * @example capital("tread depth") // "Tread depth"
 */
export const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/**
 * Words that stood alone, inside a sentence.
 *
 * @example lowered("Tread depth") // "tread depth"
 */
export const lowered = (words: string): string => words.charAt(0).toLowerCase() + words.slice(1);
