import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { Comparison } from "@evenhand/shared/comparison";
import type { Entry } from "@evenhand/shared/comparison";
import { Report } from "@evenhand/shared/report";
import { describe, expect, test } from "vitest";
import { goldenOf, refusedBecause } from "../../../../fixtures/golden/golden.ts";
import type { Golden } from "../../../../fixtures/golden/golden.ts";
import { filesOf, pairs } from "../../../../fixtures/golden/pairs.ts";
import { plainStyle } from "../terminal/style.ts";
import { compareCommand } from "./index.ts";

const main = fileURLToPath(new URL("../main.ts", import.meta.url));
const golden = (pair: string): Golden =>
  JSON.parse(readFileSync(new URL(`../../../../fixtures/golden/${pair}.json`, import.meta.url), "utf8"));

const argumentsFor = (a: URL, b: URL) => [fileURLToPath(a), fileURLToPath(b), "--json"];

/** What the command prints, in this process. */
const printed = (a: URL, b: URL): string => {
  const lines: string[] = [];
  const code = compareCommand(argumentsFor(a, b), {
    out: (text) => lines.push(text),
    error: (text) => lines.push(text),
    terminal: { width: 100, style: plainStyle },
  });
  expect([code, code === 0 ? "" : lines.join("\n")]).toEqual([0, ""]);
  return lines.join("\n");
};

const compared = (a: URL, b: URL): Comparison => Comparison.parse(JSON.parse(printed(a, b)));

test("what comes out otherwise of the same reports is kept under a new version of the rules alone", () => {
  const kept = golden("windrow");
  const otherwise = { ...kept, broken: {} };
  expect(refusedBecause(kept, kept)).toBeUndefined();
  expect(refusedBecause(kept, otherwise)).toMatch(/give the rules a new version/);
  expect(refusedBecause(kept, { ...otherwise, engine: "another" })).toBeUndefined();
  expect(refusedBecause(kept, { ...otherwise, reports: "other" })).toBeUndefined();
});

test("as a program of its own the command prints the same to the byte", { timeout: 60_000 }, () => {
  const { a, b } = filesOf("sovrano");
  const args = [main, "compare", ...argumentsFor(a, b)];
  const out = execFileSync(process.execPath, args, { encoding: "utf8", maxBuffer: 2 ** 26 });
  expect(out === `${printed(a, b)}\n`).toBe(true);
});

const placeOf = ({ item, position }: Entry): string => `${item}@${position}`;

const reportOf = (file: URL): Report => Report.parse(JSON.parse(readFileSync(file, "utf8")));

const isSeen = (report: Report, index: number | null): boolean =>
  index !== null && report.findings[index]?.answer.kind !== "not-seen";

/** What accuses one way only: rules over claims, what only the found side fails, what moves from day to day, "not known". */
const ONE_WAY =
  /^(opposite-calls|opposite-calls-unsure|changed-between-days|changed-bad-between-days|own-visit|not-known-.*)$/;

const isOneWay = ({ marks, reason, limits = [], coverageOnly, outcome }: Entry): boolean =>
  marks.includes("by-figures") ||
  ONE_WAY.test(reason) ||
  coverageOnly === true ||
  outcome === "unstated" ||
  limits.some((limit) => limit.a !== null && limit.b !== null && limit.a.plain !== limit.b.plain);

/** Whole answers of places that both reports saw and speak of. */
const bothAnswered = ({ entries }: Comparison, a: Report, b: Report): Map<string, Entry> =>
  new Map(
    entries
      .filter(({ atom, finding }) => atom.of === "answer" && isSeen(a, finding.a) && isSeen(b, finding.b))
      .map((entry) => [placeOf(entry), entry]),
  );

const mirrored = {
  "stated-better": "found-better",
  "found-better": "stated-better",
  neither: "neither",
} as const;

const differenceOf = ({ figures }: Entry): number | undefined =>
  figures?.of === "reading" ? figures.difference : undefined;

describe.each(pairs)("the pair %s", (pair) => {
  const { a, b } = filesOf(pair);

  test("gives the golden result", { timeout: 60_000 }, () => {
    expect(goldenOf(compared(a, b), { a, b })).toEqual(golden(pair));
  });

  test("mirrors when the two files are swapped", { timeout: 60_000 }, () => {
    const [stated, found] = [reportOf(a), reportOf(b)];
    const backward = bothAnswered(compared(b, a), found, stated);
    const both = bothAnswered(compared(a, b), stated, found);
    expect(both.size).toBeGreaterThan(150);
    for (const [place, entry] of both) {
      const other = backward.get(place);
      if (isOneWay(entry) || (other !== undefined && isOneWay(other))) continue;
      expect([place, other?.outcome]).toEqual([place, entry.outcome]);
      expect([place, other?.direction]).toEqual([place, mirrored[entry.direction]]);
      const difference = other === undefined ? undefined : differenceOf(other);
      expect([place, difference === undefined ? undefined : 0 - difference]).toEqual([
        place,
        differenceOf(entry),
      ]);
    }
  });
});
