import { dsvFormat } from "d3-dsv";

const commas = dsvFormat(",");

/**
 * Rows as comma-separated text (RFC 4180), with the mark by which spreadsheets know UTF-8.
 *
 * @example writeCsv([["a", "b,c"]]) // "\u{feff}a,\"b,c\"\r\n"
 */
export const writeCsv = (rows: readonly (readonly string[])[]): string =>
  `\u{feff}${rows.map((row) => `${commas.formatRow([...row])}\r\n`).join("")}`;
