import { captionCues } from "@evenhand/captions/caption-cues";
import type { Remark } from "@evenhand/captions/draft-statement";
import { readCaptions } from "@evenhand/captions/read-captions";
import { compileLexicon } from "@evenhand/lexicon/compile-lexicon";
import { lexiconVersion1 } from "@evenhand/lexicon/lexicon-version-1";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import type { VehicleForm } from "@evenhand/shared/report";
import { benchRow } from "../../row.ts";
import type { BenchOptions, BenchRow } from "../../row.ts";
import { walkarounds } from "./expected.ts";
import type { Third, Walkaround } from "./expected.ts";
import { score } from "./score.ts";

const GOALS = { precision: 0.95, recall: 0.9, firmness: 0.95 };
/** Year in which the walkarounds of the fixtures are spoken. */
const YEAR = 2026;
/** Six times as much talk may take so many times six times as long. */
const LINEAR = 1.3;

const compiled = compileLexicon(lexiconVersion1, sheetVersion1);

const draftOf = (captions: string, form: VehicleForm): readonly Remark[] => {
  const read = readCaptions(captions, { sheet: sheetVersion1, compiled, form, year: YEAR });
  if (!read.ok) throw new Error(read.reason);
  return read.remarks;
};

const percent = (part: number, whole: number): string =>
  `${((100 * part) / Math.max(1, whole)).toFixed(1)} %`;

type Sum = { proposed: number; expected: number; right: number; firm: number };

const measureThird = (third: Third, print: (text: string) => void): Sum => {
  const sum: Sum = { proposed: 0, expected: 0, right: 0, firm: 0 };
  for (const walkaround of walkarounds(third)) {
    const one = score(walkaround, draftOf(walkaround.captions, walkaround.vehicle.form));
    const figures = [
      percent(one.right, one.proposed),
      percent(one.right, one.expected),
      percent(one.firm, one.right),
    ];
    print([`  ${walkaround.name}`.padEnd(36), ...figures.map((figure) => figure.padStart(9))].join(""));
    sum.proposed += one.proposed;
    sum.expected += one.expected;
    sum.right += one.right;
    sum.firm += one.firm;
  }
  return sum;
};

const rowsOf = (third: Third, { proposed, expected, right, firm }: Sum): BenchRow[] => {
  const against = `${expected} claims, written down by hand`;
  const row = (work: string, value: number, goal: number): BenchRow =>
    benchRow({ work: `${work}, ${third} walkarounds`, against, value, goal, better: "higher" });
  return [
    row("precision of claims", right / proposed, GOALS.precision),
    row("recall of claims", right / expected, GOALS.recall),
    row("firmness right, of claims found", firm / right, GOALS.firmness),
  ];
};

const HOURS = 6;
const stamp = (seconds: number): string =>
  `${Math.floor(seconds / 3600)}:${String(Math.floor(seconds / 60) % 60).padStart(2, "0")}:${String(seconds % 60).padStart(2, "0")}`;

/** Talk of so many hours: the lines of a walkaround again and again. */
const talkOf = ({ captions }: Walkaround, hours: number): string => {
  const file = captionCues(captions);
  const texts = file.ok ? file.cues.map(({ text }) => text.replaceAll("\n", " ")) : [];
  const count = hours * 720;
  return Array.from(
    { length: count },
    (_, index) => `${stamp(index * 5)} ${texts[index % texts.length] ?? ""}`,
  ).join("\n");
};

const timeOf = (captions: string, form: VehicleForm): number => {
  const begun = performance.now();
  draftOf(captions, form);
  return performance.now() - begun;
};

const linearRow = (): BenchRow[] => {
  const [walkaround] = walkarounds("tuned");
  if (walkaround === undefined) return [];
  const { form } = walkaround.vehicle;
  const [one, six] = [talkOf(walkaround, 1), talkOf(walkaround, HOURS)];
  timeOf(one, form);
  const times = [one, six].map((talk) => Math.min(...[0, 1, 2].map(() => timeOf(talk, form))));
  const value = (times[1] ?? 0) / (HOURS * (times[0] ?? 1));
  return [
    benchRow({
      work: "read captions of six hours",
      against: "six times one hour",
      value,
      goal: LINEAR,
      better: "lower",
    }),
  ];
};

/** How much of what a walkaround claims is found, and how much of what is found was claimed; and that long talk takes no longer a minute. */
export const spokenRows = ({ print }: BenchOptions): BenchRow[] => {
  print(["".padEnd(36), "precision".padStart(9), "recall".padStart(9), "firmness".padStart(9)].join(""));
  const measured = (["tuned", "kept-out"] as const).flatMap((third) => {
    print(third);
    return rowsOf(third, measureThird(third, print));
  });
  return [...measured, ...linearRow()];
};
