import type { Line } from "../join/line.ts";

/** What is named in a headline; the rest is counted. */
const NAMED = 3;

/** The first lines, one an item and then others, so that a headline does not name one thing three times. */
export const named = (lines: readonly Line[]): Line[] => {
  const first = new Map<string, Line>();
  for (const line of lines) {
    if (first.size === NAMED) break;
    if (!first.has(line.entry.item)) first.set(line.entry.item, line);
  }
  const chosen = new Set(first.values());
  for (const line of lines) {
    if (chosen.size === NAMED) break;
    chosen.add(line);
  }
  return [...chosen];
};
