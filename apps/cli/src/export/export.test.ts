import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, expect, test } from "vitest";
import { Report } from "@evenhand/shared/report";
import { readCommand } from "../read/index.ts";
import type { Shell } from "../shell.ts";
import { plainStyle } from "../terminal/style.ts";
import { exportCommand } from "./index.ts";

const folder = mkdtempSync(join(tmpdir(), "evenhand-export-"));
afterAll(() => rmSync(folder, { recursive: true }));

const path = fileURLToPath(
  new URL("../../../../fixtures/demo/reports/orrin-inspection.json", import.meta.url),
);
const run = (command: (args: readonly string[], shell: Shell) => number, ...args: string[]) => {
  const out: string[] = [];
  const write = (text: string): void => void out.push(text);
  const code = command(args, { out: write, error: write, terminal: { width: 100, style: plainStyle } });
  return { code, out: out.join("\n") };
};

test.each(["csv", "xlsx"])("a report exported as %s is read back as the same report", (kind) => {
  const file = join(folder, `report.${kind}`);
  expect(run(exportCommand, path, file).code).toBe(0);
  const back = run(readCommand, file);
  expect(back.code).toBe(0);
  expect(JSON.parse(back.out)).toEqual(Report.parse(JSON.parse(readFileSync(path, "utf8"))));
});

test("a name that says no kind of table is answered with how it is used", () => {
  expect(run(exportCommand, path, join(folder, "report.doc"))).toMatchObject({
    code: 2,
    out: expect.stringContaining("export REPORT.json"),
  });
});
