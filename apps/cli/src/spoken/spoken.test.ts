import { fileURLToPath } from "node:url";
import { checkReport } from "@evenhand/sheet/check-report";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { expect, test } from "vitest";
import { compareCommand } from "../compare/index.ts";
import type { Shell } from "../shell.ts";
import { plainStyle } from "../terminal/style.ts";
import { readCommand } from "../read/index.ts";

const root = new URL("../../../../", import.meta.url);
const pathOf = (file: string): string => fileURLToPath(new URL(file, root));

const captions = pathOf("fixtures/spoken/tuned/05-sedan-list-reader/captions.srt");
const inspection = pathOf("fixtures/demo/reports/larksong-inspection.json");

const run = (command: (args: readonly string[], shell: Shell) => number, args: readonly string[]) => {
  const [out, error]: [string[], string[]] = [[], []];
  const shell: Shell = {
    out: (text) => out.push(text),
    error: (text) => error.push(text),
    terminal: { width: 120, style: plainStyle },
  };
  return { code: command(args, shell), out: out.join("\n"), error: error.join("\n") };
};

test("captions become a report by the contract, of the car that is given", () => {
  const { code, out, error } = run(readCommand, [captions, "--beside", inspection]);
  expect(code).toBe(0);
  const check = checkReport(JSON.parse(out), sheetVersion1);
  expect(check).toMatchObject({ ok: true, report: { kind: "statement", vehicle: { make: "Uthwick" } } });
  expect(error).toContain("draft");
});

test("of a car nobody entered the form is guessed, and that is said", () => {
  const { out, error } = run(readCommand, [captions]);
  expect(checkReport(JSON.parse(out), sheetVersion1).ok).toBe(true);
  expect(error).toContain("--beside REPORT.json");
});

test("the table gives second, place, answer, firmness and words, and what was never mentioned", () => {
  const { out } = run(readCommand, [captions, "--beside", inspection, "--table"]);
  expect(out).toContain("Never mentioned, gravest first");
  expect(out).toMatch(/frame rails, left +no corrosion/u);
});

test("what cannot be read is refused with what would work", () => {
  expect(run(readCommand, [pathOf("fixtures/spoken/nothing.vtt")])).toMatchObject({ code: 2 });
  expect(run(readCommand, [])).toMatchObject({ code: 2, error: expect.stringContaining("Name one file.") });
});

test("captions are compared in place of a report, and are said to be a draft", () => {
  const { code, out, error } = run(compareCommand, [captions, inspection]);
  expect(code).toBe(0);
  expect(error).toContain("is a draft");
  expect(out).toContain("What is wrong, worst first");
});
