import type { BenchOptions, BenchRow } from "../row.ts";
import { sheetRows } from "./sheets/index.ts";
import { spokenRows } from "./spoken/index.ts";

/** How well what people already have is read. */
export const rows = (options: BenchOptions): BenchRow[] => [...sheetRows(options), ...spokenRows(options)];
