import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { Outcome, outcomeSign } from "@evenhand/shared/outcome";
import { afterAll, beforeAll, expect, test } from "vitest";
import { filesOf } from "../../../../fixtures/golden/pairs.ts";
import type { Shell } from "../shell.ts";
import { showCommand } from "../show/index.ts";
import { plainStyle } from "../terminal/style.ts";
import { compareCommand } from "./index.ts";

const fixture = (path: string): string =>
  fileURLToPath(new URL(`../../../../fixtures/${path}`, import.meta.url));
const { a, b } = filesOf("sovrano");
const pair = [fileURLToPath(a), fileURLToPath(b)];
const tenMistakes = fixture("sheet/ten-mistakes.json");

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "evenhand-cli-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

type Said = { readonly code: number; readonly out: string; readonly error: string };

/** Runs a command in this process, on a terminal of this width. */
const said = (
  command: (args: readonly string[], shell: Shell) => number,
  args: readonly string[],
  width = 100,
): Said => {
  const lines: { out: string[]; error: string[] } = { out: [], error: [] };
  const code = command(args, {
    out: (text) => lines.out.push(text),
    error: (text) => lines.error.push(text),
    terminal: { width, style: plainStyle },
  });
  return { code, out: lines.out.join("\n"), error: lines.error.join("\n") };
};

const every = [...pair, "--all"];

test.each([60, 80, 100, 160])("the table fits a terminal of %i columns", (width) => {
  const { code, out } = said(compareCommand, every, width);
  expect(code).toBe(0);
  expect(out.split("\n").filter((line) => line.length > width)).toEqual([]);
});

test.each(["sovrano", "windrow", "larksong"] as const)(
  "the %s is answered in 30 lines of 100 columns",
  (name) => {
    const files = filesOf(name);
    const { code, out } = said(compareCommand, [fileURLToPath(files.a), fileURLToPath(files.b)]);
    const lines = out.split("\n");
    expect(code).toBe(0);
    expect(lines.length).toBeLessThanOrEqual(30);
    expect(lines.filter((line) => line.length > 100)).toEqual([]);
    expect(lines.at(-1)).toMatch(/^No certificate, valuation, legal advice or contract/);
  },
);

test.each([60, 80, 160])("the answer fits a terminal of %i columns", (width) => {
  const { out } = said(compareCommand, pair, width);
  expect(out.split("\n").filter((line) => line.length > width)).toEqual([]);
});

test("the answer says what stops the money, what is wrong in its order, in whose words, and what to ask", () => {
  const { out } = said(compareCommand, pair);
  expect(out).toMatch(/^What stops the money: lien: recorded, release promised/m);
  expect(out).toMatch(/^Not known, and could stop the money \(1\): flood line$/m);
  expect(out).toMatch(/^ 2 danger .*\n +Do not drive it until it is put right\. “.+/m);
  expect(out.search(/^ 1 halt/m)).toBeLessThan(out.search(/^ 2 danger/m));
  expect(out).toMatch(/^Ask the dealer:\n {2}1\. Is anything owed on the car/m);
  expect(out.match(/^ {2}\d\. .+[?….]$/gm)).toHaveLength(5);
});

const costs = ["--costs", fixture("demo/cost-table.json")];

test("the cost to put right stands beside the price, by matter, and says whose figures it is from", () => {
  const { code, out } = said(compareCommand, [...pair, ...costs, "--asking", "31500"]);
  expect(code).toBe(0);
  const lines = out.split("\n");
  expect(lines.length).toBeLessThanOrEqual(30);
  const cost = out
    .slice(out.indexOf("Cost to put right:"), out.indexOf("Ask the dealer:"))
    .replaceAll(/\s+/g, " ");
  expect(cost).toMatch(
    /^Cost to put right: \$(\d\d),000 to \$(\d\d),000, likely \$(\d\d),000; asked for the car: \$31,500\. Largest: /,
  );
  expect(cost.match(/, about \$[\d,]+/g)).toHaveLength(3);
  expect(cost).toContain("By “Invented prices of the demonstration”.");
});

test("where no price is known it is said, and without a table nothing is added up", () => {
  const { out } = said(compareCommand, [...pair, ...costs], 300);
  expect(out).toContain("; what is asked for the car was not said (--asking).");
  expect(said(compareCommand, pair).out).toContain(
    "Cost to put right: not worked out: name your own table with --costs FILE.",
  );
});

test.each([
  [["--asking", "31500"], /^--asking goes with --costs FILE/],
  [[...costs, "--asking", "a lot"], /^--asking is an amount such as 31500, not a lot/],
  [["--costs", tenMistakes], /It is no table of costs: \//],
  [["--costs", "nowhere.json"], /nowhere\.json: The file cannot be read/],
  [[...costs, "--json"], /^--costs is for the answer/],
])("%j is refused, saying why", (args, why) => {
  const { code, error, out } = said(compareCommand, [...pair, ...args]);
  expect([code, out]).toEqual([2, ""]);
  expect(error).toMatch(why);
});

test("the page has the cost too, with that of each matter", () => {
  const page = join(folder, "priced.html");
  expect(said(compareCommand, [...pair, ...costs, "--asking", "31500", "--html", page]).code).toBe(0);
  const text = readFileSync(page, "utf8");
  expect(text).toMatch(/\$\d\d,000 to \$\d\d,000, likely \$\d\d,000; asked for the car: \$31,500\./);
  expect(text.match(/To put right: about \$/g)?.length).toBeGreaterThan(8);
});

test("the table says every outcome with its sign and word, and the totals", () => {
  const { out } = said(compareCommand, every);
  for (const outcome of Outcome.options) expect(out).toContain(`${outcomeSign[outcome]} ${outcome}`);
  expect(out).toContain("13. WHEELS AND TIRES");
  expect(out).toContain("TOTALS");
  expect(out).toMatch(/no certificate of roadworthiness, no valuation/);
});

test("a file with ten different mistakes lists ten, each with where and why, and both files are read", () => {
  const { code, error, out } = said(compareCommand, [tenMistakes, tenMistakes]);
  expect(code).toBe(2);
  expect(out).toBe("");
  expect(error.match(/: 10 problems/g)).toHaveLength(2);
  const numbered = error.split("\n").filter((line) => /^ {2}\d+\. \S+.*: \S/.test(line));
  expect(numbered).toHaveLength(20);
  expect(new Set(numbered).size).toBe(10);
});

/** The inspection with a handbook of its firm's own, as a file. */
const withHandbook = (handbook: object): string => {
  const file = join(folder, "with-handbook.json");
  writeFileSync(file, JSON.stringify({ ...JSON.parse(readFileSync(pair[1] ?? "", "utf8")), handbook }));
  return file;
};

test("own figures of the firm that inspected are said: how many, where used, and where the make's are from", () => {
  const maker = { source: "Workshop manual of 1966", data: { timing: 6 } };
  const limits = { "tire-age.caution-years": 3 };
  const { code, out } = said(compareCommand, [pair[0] ?? "", withHandbook({ limits, maker }), "--all"], 400);
  expect(code).toBe(0);
  expect(out).toMatch(/1 limit is .*'s own\. Figures of the make, entered by .*: Workshop manual of 1966\./);
  expect(out).toContain("Judged by the firm's own figure: caution from this age, 3 years.");
});

test("figures that are not a firm's to set are refused with the file, each named", () => {
  const limits = { "in-use.tread": 1, "tire-age.caution-years": 99 };
  const { code, error } = said(compareCommand, [pair[0] ?? "", withHandbook({ limits })]);
  expect(code).toBe(2);
  expect(error).toMatch(/\/handbook\/limits\/in-use\.tread: only figures of common practice/);
  expect(error).toMatch(/\/handbook\/limits\/tire-age\.caution-years: it lies outside/);
});

test("a missing file, a file that is not JSON and JSON that is no report are each named", () => {
  const broken = join(folder, "broken.json");
  writeFileSync(broken, "{ not json");
  const { code, error } = said(compareCommand, [join(folder, "missing.json"), broken]);
  expect(code).toBe(2);
  expect(error).toMatch(/missing\.json: 1 problem\n.*cannot be read/);
  expect(error).toMatch(/broken\.json: 1 problem\n.*is not JSON/);
  expect(said(compareCommand, [fixture("golden/sovrano.json"), pair[1] ?? ""]).error).toMatch(
    /not an Evenhand report/,
  );
});

test.each([
  [[]],
  [["one.json"]],
  [["a", "b", "c", "--html", "d"]],
  [["a", "b", "--json", "--html", "c"]],
  [["a", "b", "--what"]],
])("wrong arguments %j are answered with the usage", (args) => {
  const { code, error } = said(compareCommand, args);
  expect(code).toBe(2);
  expect(error).toMatch(
    /compare A\.json B\.json \[--all \| --json \| --html FILE \| --worklist\] \[--costs FILE/,
  );
});

test("the page stands alone: no script, nothing fetched, every pressing entry on it", () => {
  const page = join(folder, "page.html");
  expect(said(compareCommand, [...pair, "--html", page]).code).toBe(0);
  const text = readFileSync(page, "utf8");
  expect(text).not.toMatch(/<script|<link|<img|<iframe|@import|url\(|\son\w+=|src=/i);
  expect(text).toContain("default-src 'none'");
  expect(text).toContain("tie-rod ends");
  expect(text.indexOf("What is wrong, worst first")).toBeLessThan(text.indexOf('class="tally"'));
  expect(text.indexOf('class="halt"')).toBeLessThan(text.indexOf('class="danger"'));
  expect(text.match(/class="spine"/g)?.length).toBeGreaterThan(200);
});

test("a page that cannot be written is said", () => {
  const { code, error } = said(compareCommand, [
    ...pair,
    "--html",
    join(folder, "no", "such", "folder.html"),
  ]);
  expect(code).toBe(2);
  expect(error).toMatch(/page cannot be written/);
});

test("text of a report is never markup on the page", () => {
  const hostile = join(folder, "hostile.json");
  const page = join(folder, "hostile.html");
  writeFileSync(hostile, readFileSync(a, "utf8").replaceAll("Numbers car", "<img src=x onerror=alert(1)>"));
  expect(said(compareCommand, [hostile, pair[1] ?? "", "--html", page]).code).toBe(0);
  expect(readFileSync(page, "utf8")).toContain("&lt;img src=x onerror=alert(1)&gt;");
});

test("a comparison made before is shown as it was made", () => {
  const stored = join(folder, "stored.json");
  const made = said(compareCommand, [...pair, "--json"]).out;
  writeFileSync(stored, made);
  expect(said(showCommand, [stored, ...pair]).out).toBe(said(compareCommand, pair).out);
  expect(said(showCommand, [stored, ...every]).out).toBe(said(compareCommand, every).out);
  expect(said(showCommand, [pair[0] ?? "", ...pair])).toMatchObject({ code: 2 });
  expect(said(showCommand, [stored])).toMatchObject({ code: 2 });
});

/** The statement again, as what the dealer found on buying the car, with its first finding left out. */
const earlier = (): string => {
  const report = JSON.parse(readFileSync(pair[0] ?? "", "utf8"));
  const file = join(folder, "acquisition.json");
  const visit = { ...report.visit, started: "2026-01-05T15:00:00Z", ended: "2026-01-05T17:00:00Z" };
  writeFileSync(
    file,
    JSON.stringify({ ...report, kind: "acquisition", visit, findings: report.findings.slice(1) }),
  );
  return file;
};

test("three reports become a table of who says what: a firm is one party however many it wrote", () => {
  const { code, out } = said(compareCommand, [earlier(), ...pair]);
  expect(code).toBe(0);
  expect(out).toMatch(/^3 reports on one car by 2 parties/);
  expect(out).toMatch(/disputed \d+ · in doubt \d+ · agreed \d+ · one party \d+/);
  expect(out).toContain("Nobody is outvoted");
  expect(out.split("\n").filter((line) => line.length > 100)).toEqual([]);
  const table = JSON.parse(said(compareCommand, [earlier(), ...pair, "--json"]).out);
  expect(table.parties.map(({ reports }: { reports: number[] }) => reports)).toEqual([[0, 1], [2]]);
  const disputed = table.rows.filter(({ state }: { state: string }) => state === "disputed");
  expect(out).toContain(`disputed ${disputed.length} ·`);
  expect(disputed.length).toBeGreaterThan(20);
});

test("reports of different cars are no table", () => {
  const other = fixture("demo/reports/windrow-statement.json");
  const { code, error } = said(compareCommand, [...pair, other]);
  expect(code).toBe(2);
  expect(error).toMatch(/^The reports are of 2 cars: /);
});

test("the worklist says for each open line what would settle it: what could hurt somebody first, then what is in doubt", () => {
  const { code, out } = said(compareCommand, [...pair, "--worklist"]);
  expect(code).toBe(0);
  const [title = "", , ...lines] = out.split("\n");
  expect(title).toMatch(/^What would settle what is open: \d+ lines, about \d+ minutes$/);
  const open = lines.filter((line) => /^[?~] /.test(line)).map((line) => line.slice(0, 45).trim());
  const dangerous = open.filter((line) => /king pin|lift points/.test(line));
  expect(open.slice(0, dangerous.length)).toEqual(dangerous);
  expect(open.map(([sign]) => sign).join("")).toMatch(/^~{3}\?/);
  expect(out).toMatch(/\d+ readings? in all with what it was read with|with an ordinary instrument/);
  expect(lines.filter((line) => line.length > 100)).toEqual([]);
});

test("the worklist ends with the cautions of the work in it, in the sheet's words", () => {
  const { out } = said(compareCommand, [...pair, "--worklist"]);
  const [, cautions = ""] = out.split("Before any of it, as on the sheet");
  const inOneLine = cautions.replaceAll(/\s+/g, " ");
  expect(inOneLine).toContain("Never go under a car that a jack alone holds up");
  expect(inOneLine).toContain("Nobody sits in a raised car");
});

test.each([
  [["--json", "--worklist"], "Choose one of --json, --worklist, --all and --html."],
  [["third.json", "--worklist"], "--all, --html and --worklist are for two reports."],
])("%j is refused with what works", (more, words) => {
  const { code, error } = said(compareCommand, [...pair, ...more]);
  expect([code, error.split("\n")[0]]).toEqual([2, words]);
  expect(error).toContain("compare A.json B.json");
});
