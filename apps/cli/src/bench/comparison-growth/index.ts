import { compare } from "@evenhand/comparison/compare";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { quartiles } from "../comparison-speed/quartiles.ts";
import { placeCount, sampleReports } from "../comparison-speed/reports.ts";
import { benchRow } from "../row.ts";
import type { BenchOptions, BenchRow } from "../row.ts";
import { sheetOfSize } from "./sheet-of-size.ts";

const SEED = 20_260_512;
/** Places on the sheet for each finding of a report. */
const FILL = 1.5;

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

/** How the time of a comparison grows with the number of findings. */
export const rows = ({ print }: BenchOptions): BenchRow[] => [linearity(print)];
