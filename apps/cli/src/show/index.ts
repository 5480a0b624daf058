import { parseArgs } from "node:util";
import { Comparison } from "@evenhand/shared/comparison";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { readPricing } from "../costs/index.ts";
import { readJson } from "../read-json.ts";
import { problemLines, readReport } from "../read-report.ts";
import { unusable } from "../shell.ts";
import type { Shell } from "../shell.ts";
import { usage } from "../usage.ts";
import { present } from "./present.ts";

const readComparison = (path: string): Comparison | string => {
  const file = readJson(path);
  if (!file.ok) return file.reason;
  const read = Comparison.safeParse(file.json);
  return read.success ? read.data : `The file is no comparison: ${read.error.issues[0]?.message ?? ""}`;
};

/** `show COMPARISON A B`: a stored comparison is shown as it is, never worked out anew. */
export const showCommand = (args: readonly string[], shell: Shell): number => {
  const { values, positionals } = parseArgs({
    args: [...args],
    options: {
      html: { type: "string" },
      all: { type: "boolean", default: false },
      costs: { type: "string" },
      asking: { type: "string" },
    },
    allowPositionals: true,
  });
  const [comparisonPath, ...paths] = positionals;
  if (comparisonPath === undefined || paths.length !== 2) {
    shell.error(usage.show);
    return unusable;
  }
  const comparison = readComparison(comparisonPath);
  const [a, b] = paths.map((path) => readReport(path, sheetVersion1));
  if (typeof comparison === "string") shell.error(`${comparisonPath}: ${comparison}`);
  for (const read of [a, b]) {
    if (read?.ok === false) shell.error(problemLines(read.path, read.problems, sheetVersion1).join("\n"));
  }
  if (typeof comparison === "string" || a?.ok !== true || b?.ok !== true) return unusable;
  const read = readPricing(values.costs, values.asking);
  if (!read.ok) {
    shell.error(read.reason);
    return unusable;
  }
  const { pricing } = read;
  return present(
    { comparison, a: a.report, b: b.report, all: values.all, html: values.html, pricing },
    shell,
  );
};
