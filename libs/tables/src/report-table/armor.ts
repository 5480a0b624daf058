/**
 * What spreadsheets take for the start of a formula, or drop before they look (OWASP, "CSV Injection"; full-width forms beside them), and
 * the apostrophe itself, so that taking one off brings back what was there.
 */
const DANGEROUS = /^['=+\-@\t\r\n\u{ff1d}\u{ff0b}\u{ff0d}\u{ff20}|%\s]/u;

/**
 * A text that no spreadsheet computes: an apostrophe before what could start a formula.
 *
 * @example armored("=1+1") // "'=1+1'"
 */
export const armored = (text: string): string =>
  DANGEROUS.test(text) || /\s$/.test(text) ? `'${text}'` : text;

/**
 * The text before it was armored.
 *
 * @example bared("'=1+1'") // "=1+1"
 */
export const bared = (text: string): string =>
  text.length >= 2 && text.startsWith("'") && text.endsWith("'") ? text.slice(1, -1) : text;
