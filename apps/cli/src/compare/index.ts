import { parseArgs } from "node:util";
import { analyze } from "@evenhand/comparison/analyze";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { problemLines, readReport } from "../read-report.ts";
import { done, unusable } from "../shell.ts";
import type { Shell } from "../shell.ts";
import { present } from "../show/present.ts";
import { usage } from "../usage.ts";

type Arguments = {
  readonly files: readonly [string, string];
  readonly json: boolean;
  readonly html?: string;
};

const readArguments = (args: readonly string[]): Arguments => {
  const { values, positionals } = parseArgs({
    args: [...args],
    options: { json: { type: "boolean", default: false }, html: { type: "string" } },
    allowPositionals: true,
  });
  const [a, b, ...more] = positionals;
  if (a === undefined || b === undefined || more.length > 0) throw new TypeError("Name two report files.");
  if (values.json && values.html !== undefined) throw new TypeError("Choose --json or --html, not both.");
  return { files: [a, b], ...values };
};

/** `compare A B`: 0 where they were compared, 2 where something cannot be used; then every problem of both files is listed. */
export const compareCommand = (args: readonly string[], shell: Shell): number => {
  let wanted: Arguments;
  try {
    wanted = readArguments(args);
  } catch (error) {
    shell.error(`${error instanceof Error ? error.message : String(error)}\n\n${usage.compare}`);
    return unusable;
  }
  const [a, b] = wanted.files.map((path) => readReport(path, sheetVersion1));
  if (a?.ok !== true || b?.ok !== true) {
    for (const read of [a, b]) {
      if (read?.ok === false) shell.error(problemLines(read.path, read.problems).join("\n"));
    }
    return unusable;
  }
  const comparison = analyze(a.report, b.report, compileSheet(sheetVersion1));
  if (wanted.json) {
    shell.out(JSON.stringify(comparison));
    return done;
  }
  return present({ comparison, a: a.report, b: b.report, html: wanted.html }, shell);
};
