import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { compareCommand } from "../compare/index.ts";
import type { Shell } from "../shell.ts";
import { plainStyle } from "../terminal/style.ts";
import { readCommand } from "./index.ts";

const at = (path: string): string => fileURLToPath(new URL(`../../../../fixtures/${path}`, import.meta.url));
const sheet = at("sheets/tuned/pass-fail/sheet.xlsx");
const statement = at("demo/reports/orrin-statement.json");

const run = (command: (args: readonly string[], shell: Shell) => number, ...args: string[]) => {
  const [out, error]: [string[], string[]] = [[], []];
  const terminal = { width: 100, style: plainStyle };
  const code = command(args, { out: (text) => out.push(text), error: (text) => error.push(text), terminal });
  return { code, out: out.join("\n"), error: error.join("\n") };
};

test("a sheet is printed row by row, with what each becomes", () => {
  const { code, out, error } = run(readCommand, sheet, "--table");
  expect(code).toBe(0);
  expect(out).toMatch(/7 +Brake lights .*left stop lamp: does not work +sure/);
  expect(error).toContain("30 rows: ");
});

test("beside a report of the same car a sheet becomes a whole report", () => {
  const { code, out } = run(readCommand, sheet, "--beside", statement);
  expect(code).toBe(0);
  expect(JSON.parse(out)).toMatchObject({ format: "evenhand-report", kind: "inspection" });
});

test("without one it says what is missing", () => {
  const { out, error } = run(readCommand, sheet);
  expect(JSON.parse(out).findings.length).toBeGreaterThan(20);
  expect(error).toContain("vehicle, author and visit");
});

test("compared with a report, a sheet is said to be a draft", () => {
  const { code, out, error } = run(compareCommand, statement, sheet);
  expect(code).toBe(0);
  expect(out).not.toBe("");
  expect(error).toContain("is a draft");
  expect(error).toContain("nobody has confirmed");
});

test("two sheets say nothing of the car, and are refused with what would work", () => {
  expect(run(compareCommand, sheet, sheet)).toMatchObject({
    code: 2,
    error: expect.stringContaining("name a report file"),
  });
});

test("what is no sheet is refused by what it is", () => {
  expect(run(readCommand, at("sheets/README.md"), "--other").code).toBe(2);
  expect(run(readCommand, at("nothing.csv"))).toMatchObject({
    code: 2,
    error: expect.stringContaining("cannot be read"),
  });
});
