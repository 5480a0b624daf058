import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { functionLines } from "./function-lines.ts";

const web = join(import.meta.dirname, "..", "..", "apps", "web", "src");

/** How many functions of the web application are so long. These numbers only go down: lower them when you have split one. */
const most = { over60: 0, over30: 6 };

const functions = readdirSync(web, { recursive: true, encoding: "utf8" })
  .filter((file) => /\.tsx?$/.test(file) && !/\.test\.tsx?$/.test(file))
  .flatMap((file) =>
    functionLines(file, readFileSync(join(web, file), "utf8")).map((one) => ({ ...one, file })),
  );

test("no more functions of the web application are long than were", () => {
  expect(functions.length).toBeGreaterThan(1000);
  const over = (lines: number) => functions.filter((one) => one.lines > lines);
  const [over60, over30] = [over(60), over(30)];
  expect(over60.length).toBeLessThanOrEqual(most.over60);
  expect(over30.length).toBeLessThanOrEqual(most.over30);
});

test("nine functions of ten have at most 30 lines", () => {
  const sorted = functions.map(({ lines }) => lines).toSorted((a, b) => a - b);
  expect(sorted[Math.floor(sorted.length * 0.9)]).toBeLessThanOrEqual(30);
});

test("a function is as long as from its first line to its last", () => {
  const text = ["const one = () => {", "  const inner = () => 1;", "  return inner;", "};"].join("\n");
  expect(functionLines("a.ts", text)).toEqual([
    { name: "one", lines: 4 },
    { name: "inner", lines: 1 },
  ]);
});
