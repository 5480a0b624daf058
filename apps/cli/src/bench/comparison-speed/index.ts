import { analyze } from "@evenhand/comparison/analyze";
import { compare } from "@evenhand/comparison/compare";
import { matters } from "@evenhand/matters/matters";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { benchRow } from "../row.ts";
import type { BenchOptions, BenchRow } from "../row.ts";
import { median, medianRatio, processorMeter, timeBlocks } from "./blocks.ts";
import type { Meter } from "./blocks.ts";
import { sampleReports } from "./reports.ts";
import { warmUp } from "./warm-up.ts";

const SEED = 20_260_512;
const FINDINGS = 400;
const BLOCKS = 30;
const RUNS = 100;

/** A work beside the parsing it is held against, both warmed up alike. */
const beside = (parse: () => unknown, work: () => unknown, meter: Meter) => {
  const works = [parse, work];
  const warmingUp = warmUp((runs) => timeBlocks(works, { blocks: 1, runs }, meter)[0] ?? []);
  const blocks = timeBlocks(works, { blocks: BLOCKS, runs: RUNS }, meter);
  const [parsing = Number.NaN, working = Number.NaN] = works.map((_, index) =>
    median(blocks.map((times) => times[index] ?? Number.NaN)),
  );
  return { ratio: medianRatio(blocks), parsing, working, warmingUp };
};

const told = (name: string, { parsing, working, warmingUp }: ReturnType<typeof beside>): string =>
  `JSON.parse ${parsing.toFixed(3)} ms and ${name} ${working.toFixed(3)} ms a run, after ${warmingUp} runs of each until neither grew faster`;

/** Comparison and whole analysis against `JSON.parse` of the same two reports. */
export const rows = ({ print }: BenchOptions): BenchRow[] => {
  const sheet = compileSheet(sheetVersion1);
  const { a, b } = sampleReports(sheetVersion1, FINDINGS, SEED);
  const texts = [JSON.stringify(a), JSON.stringify(b)];
  const bytes = Math.round(texts.join("").length / (2 * FINDINGS));
  const parse = (): unknown[] => texts.map((text): unknown => JSON.parse(text));
  const meter = processorMeter();
  const comparison = beside(parse, () => compare(a, b, sheet), meter);
  const analysis = beside(parse, () => matters(analyze(a, b, sheet), { a, b, sheet }), meter);
  print(
    `two reports of ${FINDINGS} findings, ${bytes} bytes a finding, seed ${SEED}; processor time of the thread, ${BLOCKS} blocks ` +
      `of ${RUNS} runs by turns, each clearing up what it leaves; middle ones: ${told("comparison", comparison)}; ` +
      told("whole analysis", analysis),
  );
  const against = "JSON.parse of the same two reports";
  return [
    benchRow({
      work: `compare two reports of ${FINDINGS} findings`,
      against,
      value: comparison.ratio,
      goal: 0.7,
      better: "lower",
    }),
    benchRow({
      work: "whole analysis of the same, with its matters",
      against,
      value: analysis.ratio,
      goal: 3,
      better: "lower",
    }),
  ];
};
