import { outcomeWords } from "@evenhand/comparison/sentence";
import { worklist } from "@evenhand/comparison/worklist";
import type { Entry } from "@evenhand/shared/comparison";
import { outcomeSign } from "@evenhand/shared/outcome";
import type { Report } from "@evenhand/shared/report";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import type { Terminal } from "../terminal/index.ts";
import { columns } from "../terminal/layout.ts";
import { catalog } from "../words/catalog.ts";
import { sheetWords } from "../words/sheet-words.ts";

const outcomeWidth = 14;

/** What the second side can read or look at again so that what is open closes, most pressing first, as lines. */
export const worklistLines = (
  entries: readonly Entry[],
  a: Report,
  b: Report,
  sheet: CompiledSheet,
  { width, style }: Terminal,
): string[] => {
  const words = sheetWords(sheet.sheet);
  const rows = worklist(entries, a, b, sheet);
  const place = Math.floor((width - outcomeWidth - 4) * 0.45);
  const lines = rows.flatMap(({ entry: index, work, readings }) => {
    const entry = entries[index];
    if (entry === undefined) return [];
    const where = [words.item(entry.item), words.position(words.findItem(entry.item), entry.position)];
    return columns([
      { text: `${outcomeSign[entry.outcome]} ${outcomeWords(entry.outcome)}`, width: outcomeWidth },
      { text: where.filter((part) => part !== "").join(", "), width: place },
      { text: catalog.work[work](readings ?? 0), width: width - outcomeWidth - place - 4 },
    ]);
  });
  const minutes = rows.reduce((sum, row) => sum + row.minutes, 0);
  return [style.strong(catalog.worklist(rows.length, minutes)), "", ...lines];
};
