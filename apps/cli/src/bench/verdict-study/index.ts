import { clopperPearsonInterval } from "@evenhand/measurement/proportion-interval";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { benchRow } from "../row.ts";
import type { BenchOptions, BenchRow } from "../row.ts";
import { honest } from "./people.ts";
import { confirmableItems, simulate } from "./simulate.ts";
import type { Scenario, Tally } from "./simulate.ts";
import { cellEquality, engine, fixedTolerance } from "./verdicts.ts";
import type { Verdict } from "./verdicts.ts";

const SEED = 19_790_101;
const CARS = 1_000;

const scenarios: readonly Scenario[] = [
  { name: "as declared", dealer: honest, inspector: honest },
  {
    name: "noise 1.5 × declared",
    dealer: { ...honest, noise: 1.5 },
    inspector: { ...honest, noise: 1.5 },
  },
  { name: "the dealer shades by δ/4", dealer: { ...honest, shade: 0.25 }, inspector: honest },
  {
    name: "the inspector at a wrong spot, σ = δ/2",
    dealer: honest,
    inspector: { ...honest, elsewhere: 0.5 },
  },
];

/** Share of a verdict at a true difference of so many δ. */
export const shareOf = ({ byDistance, trials }: Tally, deltas: number, verdict: Verdict): number =>
  (byDistance[deltas]?.[verdict] ?? 0) / trials;

/** The one-sided upper 95 % limit of that share (Clopper and Pearson). */
export const upperLimit = ({ byDistance, trials }: Tally, deltas: number, verdict: Verdict): number =>
  clopperPearsonInterval(byDistance[deltas]?.[verdict] ?? 0, trials, 0.9).high;

const percent = (share: number): string => `${(100 * share).toFixed(share < 0.1 ? 2 : 1)} %`;

const columns: readonly (readonly [head: string, deltas: number, verdict: Verdict])[] = [
  ["equal: agree", 0, "agree"],
  ["equal: consistent", 0, "consistent"],
  ["equal: doubtful", 0, "doubtful"],
  ["equal: differ", 0, "differ"],
  ["δ apart: agree", 1, "agree"],
  ["2δ apart: agree", 2, "agree"],
  ["2δ apart: differ", 2, "differ"],
];

const tableRow = (scenario: string, tally: Tally): string =>
  `| ${[scenario, tally.judge, ...columns.map(([, deltas, verdict]) => percent(shareOf(tally, deltas, verdict)))].join(" | ")} |`;

/** The verdict table in Markdown, with the seed it was drawn from. */
export const verdictTable = (
  results: readonly (readonly [Scenario, readonly Tally[]])[],
  items: number,
): string =>
  [
    `${items} reading items of the sheet with their ordinary instruments, ${CARS} cars for each and for each true difference, seed ${SEED}.`,
    "",
    `| people | judge | ${columns.map(([head]) => head).join(" | ")} |`,
    `| --- | --- | ${columns.map(() => "---:").join(" | ")} |`,
    ...results.flatMap(([{ name }, tallies]) => tallies.map((tally) => tableRow(name, tally))),
  ].join("\n");

const goals = (tally: Tally): BenchRow[] => {
  const against = `known truth, ${tally.trials} simulated pairs`;
  return [
    benchRow({
      work: "verdict agree at equal truth",
      against,
      value: shareOf(tally, 0, "agree"),
      goal: 0.8,
      better: "higher",
    }),
    benchRow({
      work: "verdict differ at a true difference of 2δ",
      against,
      value: shareOf(tally, 2, "differ"),
      goal: 0.9,
      better: "higher",
    }),
    benchRow({
      work: "verdict differ at equal truth",
      against,
      value: shareOf(tally, 0, "differ"),
      goal: 0.01,
      better: "lower",
    }),
    benchRow({
      work: "verdict agree at a true difference of δ, upper 95 % limit",
      against,
      value: upperLimit(tally, 1, "agree"),
      goal: 0.03,
      better: "lower",
    }),
  ];
};

/**
 * How good the verdicts are: cars of known truth read by two people of known noise, over the sheet's own reading items;
 * also with what the model does not know, and through two rivals on the same readings.
 */
export const rows = ({ print }: BenchOptions): BenchRow[] => {
  const items = confirmableItems(sheetVersion1);
  const judges = [engine, cellEquality, fixedTolerance];
  const results = scenarios.map(
    (scenario) => [scenario, simulate(items, scenario, judges, CARS, SEED)] as const,
  );
  print(verdictTable(results, items.length));
  const asDeclared = results[0]?.[1][0];
  return asDeclared === undefined ? [] : goals(asDeclared);
};
