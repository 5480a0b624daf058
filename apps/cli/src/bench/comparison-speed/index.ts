import { analyze } from "@evenhand/comparison/analyze";
import { compare } from "@evenhand/comparison/compare";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { benchRow } from "../row.ts";
import type { BenchOptions, BenchRow } from "../row.ts";
import { sheetOfSize } from "./sheet-of-size.ts";
import { placeCount, sampleReports } from "./reports.ts";

const SEED = 20_260_512;
const FINDINGS = 400;
/** Places on the sheet for each finding of a report. */
const FILL = 1.5;

/**
 * The time a quarter of the runs stay under. Runs take turns, so that a slow stretch of the machine meets all works
 * alike; on a machine others use, the median would measure the others.
 */
const quartiles = (works: readonly (() => unknown)[], runs: number): number[] => {
  const times = works.map((): number[] => []);
  for (let run = 0; run < runs; run += 1) {
    for (const [index, work] of works.entries()) {
      const start = performance.now();
      work();
      times[index]?.push(performance.now() - start);
    }
  }
  return times.map((list) => list.sort((a, b) => a - b)[Math.floor(list.length / 4)] ?? Number.NaN);
};

const ratios = (print: BenchOptions["print"]): BenchRow[] => {
  const sheet = compileSheet(sheetVersion1);
  const { a, b } = sampleReports(sheetVersion1, FINDINGS, SEED);
  const texts = [JSON.stringify(a), JSON.stringify(b)];
  const parse = (): unknown[] => texts.map((text): unknown => JSON.parse(text));
  const works = [parse, () => compare(a, b, sheet), () => analyze(a, b, sheet)];
  quartiles(works, 200);
  const [parsing = Number.NaN, comparing = Number.NaN, analyzing = Number.NaN] = quartiles(works, 400);
  const bytes = Math.round(texts.join("").length / (2 * FINDINGS));
  print(
    `two reports of ${FINDINGS} findings, ${bytes} bytes a finding, seed ${SEED}: JSON.parse ${parsing.toFixed(3)} ms, ` +
      `comparison ${comparing.toFixed(3)} ms, whole analysis ${analyzing.toFixed(3)} ms (lower quartiles)`,
  );
  const against = "JSON.parse of the same two reports";
  return [
    benchRow({
      work: `compare two reports of ${FINDINGS} findings`,
      against,
      value: comparing / parsing,
      goal: 0.7,
      better: "lower",
    }),
    benchRow({
      work: "whole analysis of the same",
      against,
      value: analyzing / parsing,
      goal: 3,
      better: "lower",
    }),
  ];
};

/**
 * The power of the number of findings by which the time grows from 100 to 100,000, `JSON.parse` of the same reports
 * being taken for linear: 1 is linear, 2 quadratic. Memory that no longer fits the caches, and its collection, slow both.
 */
const linearity = (print: BenchOptions["print"]): BenchRow => {
  const placesAnItem = placeCount(sheetVersion1) / sheetVersion1.items.length;
  const perFinding = [100, 1_000, 10_000, 100_000].map((findings) => {
    const large = sheetOfSize(sheetVersion1, Math.ceil((FILL * findings) / placesAnItem));
    const { a, b } = sampleReports(large, findings, SEED);
    const sheet = compileSheet(large);
    const texts = [JSON.stringify(a), JSON.stringify(b)];
    const works = [() => compare(a, b, sheet), () => texts.map((text): unknown => JSON.parse(text))];
    const runs = Math.max(5, 40_000 / findings);
    quartiles(works, runs);
    const [comparing = Number.NaN, parsing = Number.NaN] = quartiles(works, runs);
    const micros = (time: number): string => ((1000 * time) / findings).toFixed(2);
    print(
      `${findings} findings a report: compare ${micros(comparing)}, JSON.parse ${micros(parsing)} µs a finding`,
    );
    return { comparing: comparing / findings, parsing: parsing / findings };
  });
  const [first, last] = [perFinding[0], perFinding.at(-1)];
  const growth = (work: "comparing" | "parsing"): number =>
    (last?.[work] ?? Number.NaN) / (first?.[work] ?? Number.NaN);
  return benchRow({
    work: "compare, power of the number of findings by which its time grows, 100 to 100,000",
    against: "JSON.parse of the same, taken for 1",
    value: 1 + Math.log10(growth("comparing") / growth("parsing")) / 3,
    goal: 1.25,
    better: "lower",
  });
};

/** Comparison and whole analysis against `JSON.parse` of the same two reports, and how the time grows with findings. */
export const rows = ({ print }: BenchOptions): BenchRow[] => [...ratios(print), linearity(print)];
