import { analyze } from "@evenhand/comparison/analyze";
import { compare } from "@evenhand/comparison/compare";
import { matters } from "@evenhand/matters/matters";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { benchRow } from "../row.ts";
import type { BenchOptions, BenchRow } from "../row.ts";
import { quartiles } from "./quartiles.ts";
import { sampleReports } from "./reports.ts";
import { warmUp } from "./warm-up.ts";

const SEED = 20_260_512;
const FINDINGS = 400;
const RUNS = 400;

const ratios = (print: BenchOptions["print"]): BenchRow[] => {
  const sheet = compileSheet(sheetVersion1);
  const { a, b } = sampleReports(sheetVersion1, FINDINGS, SEED);
  const texts = [JSON.stringify(a), JSON.stringify(b)];
  const parse = (): unknown[] => texts.map((text): unknown => JSON.parse(text));
  const comparison = () => compare(a, b, sheet);
  const analysis = () => matters(analyze(a, b, sheet), { a, b, sheet });
  const warmingUp = warmUp((runs) => quartiles([parse, comparison, analysis], runs));
  // Each beside the parsing it is held against: what a third work leaves behind for the next one to clear up is not theirs.
  const [parsing = Number.NaN, comparing = Number.NaN] = quartiles([parse, comparison], RUNS);
  const [parsingAgain = Number.NaN, analyzing = Number.NaN] = quartiles([parse, analysis], RUNS);
  const bytes = Math.round(texts.join("").length / (2 * FINDINGS));
  print(
    `two reports of ${FINDINGS} findings, ${bytes} bytes a finding, seed ${SEED}, after ${warmingUp} runs until none grew faster: ` +
      `JSON.parse ${parsing.toFixed(3)} ms and comparison ${comparing.toFixed(3)} ms in turn; ` +
      `JSON.parse ${parsingAgain.toFixed(3)} ms and whole analysis ${analyzing.toFixed(3)} ms in turn (lower quartiles of ${RUNS} runs)`,
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
      work: "whole analysis of the same, with its matters",
      against,
      value: analyzing / parsingAgain,
      goal: 3,
      better: "lower",
    }),
  ];
};

/** Comparison and whole analysis against `JSON.parse` of the same two reports. */
export const rows = ({ print }: BenchOptions): BenchRow[] => ratios(print);
