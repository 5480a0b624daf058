import { analyze } from "@evenhand/comparison/analyze";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import type { Report } from "@evenhand/shared/report";
import { readPricing } from "../costs/index.ts";
import { problemLines } from "../read-report.ts";
import { readFiles } from "./read-files.ts";
import { done, unusable } from "../shell.ts";
import type { Shell } from "../shell.ts";
import { present } from "../show/present.ts";
import { usage } from "../usage.ts";
import { whoSaysWhat, whoSaysWhatLines } from "../who-says-what/index.ts";
import { worklistLines } from "../worklist/index.ts";
import { readArguments } from "./arguments.ts";
import type { Arguments } from "./arguments.ts";

const compareTwo = (
  a: Report,
  b: Report,
  { json, worklist, all, html, costs, asking }: Arguments,
  shell: Shell,
): number => {
  const priced = readPricing(costs, asking);
  if (!priced.ok) {
    shell.error(priced.reason);
    return unusable;
  }
  const sheet = compileSheet(sheetVersion1);
  const comparison = analyze(a, b, sheet);
  if (!json && !worklist) return present({ comparison, a, b, all, html, pricing: priced.pricing }, shell);
  const lines = () => worklistLines(comparison.entries, a, b, sheet, shell.terminal);
  shell.out(json ? JSON.stringify(comparison) : lines().join("\n"));
  return done;
};

const compareMany = (reports: readonly Report[], { json }: Arguments, shell: Shell): number => {
  const table = whoSaysWhat(reports, sheetVersion1);
  const lines = () => whoSaysWhatLines(table, reports, sheetVersion1, shell.terminal);
  shell.out(json ? JSON.stringify(table) : lines().join("\n"));
  return done;
};

const messageOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));

/** `compare A B …`: 0 where they were compared, 2 where something cannot be used; then every problem of every file is listed. */
export const compareCommand = (args: readonly string[], shell: Shell): number => {
  let wanted: Arguments;
  try {
    wanted = readArguments(args);
  } catch (error) {
    shell.error(`${messageOf(error)}\n\n${usage.compare}`);
    return unusable;
  }
  const read = readFiles(wanted.files, shell);
  const reports = read.flatMap((one) => (one.ok ? [one.report] : []));
  const [a, b] = reports;
  if (reports.length < read.length || a === undefined || b === undefined) {
    for (const one of read)
      if (!one.ok) shell.error(problemLines(one.path, one.problems, sheetVersion1).join("\n"));
    return unusable;
  }
  if (reports.length === 2) return compareTwo(a, b, wanted, shell);
  try {
    return compareMany(reports, wanted, shell);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    shell.error(error.message);
    return unusable;
  }
};
