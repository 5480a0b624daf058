import { worklist } from "@evenhand/comparison/worklist";
import type { Entry } from "@evenhand/shared/comparison";
import type { Report } from "@evenhand/shared/report";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { cautionsOf } from "@evenhand/sheet/cautions-of";
import { outcomeText, outcomeWidth } from "../terminal/index.ts";
import type { Terminal } from "../terminal/index.ts";
import { columns, wrap } from "../terminal/layout.ts";
import { catalog } from "../words/catalog.ts";
import { sheetWords } from "@evenhand/wording/sheet-words";

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
    return columns([
      { text: outcomeText(entry.outcome), width: outcomeWidth },
      { text: words.place(entry.item, entry.position), width: place },
      { text: catalog.work[work](readings ?? 0), width: width - outcomeWidth - place - 4 },
    ]);
  });
  const items = rows.flatMap(({ entry }) => entries[entry]?.item ?? []);
  const cautions = cautionsOf(sheet.sheet, items).flatMap(({ text }) => wrap(`- ${text}`, width));
  const minutes = rows.reduce((sum, row) => sum + row.minutes, 0);
  return [
    style.strong(catalog.worklist(rows.length, minutes)),
    "",
    ...lines,
    ...(cautions.length === 0 ? [] : ["", style.strong(catalog.cautions), ...cautions]),
  ];
};
