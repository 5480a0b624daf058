import { benchRow } from "../row.ts";
import type { BenchRow } from "../row.ts";
import type { Verdict } from "./judges.ts";
import { JUDGES } from "./judges.ts";
import { asDeclared, pairs } from "./people.ts";
import { acrossAlarm, allOf, itemShares, plantDistances, shareOf, tallyReadings } from "./readings.ts";
import type { Counts } from "./readings.ts";

type Print = (text: string) => void;

export const percent = (share: number): string => `${(100 * share).toFixed(share < 0.1 ? 1 : 0)} %`;

const AGREE: readonly Verdict[] = ["agree", "agree-marked"];
const DIFFER: readonly Verdict[] = ["differ", "differ-marked"];
const MOST_AT_DELTA = 0.03;
/** As far off as no honest pair is: here every item has to be able to differ. */
const FAR = 12;

/** Each reading item by itself: agree at a true difference of δ, the worst by name; and those that can never differ. */
export const itemRows = (cars: number, print: Print): BenchRow[] => {
  const at = tallyReadings(asDeclared, 8 * cars, plantDistances(0.34, [1]));
  const shares = itemShares(at, 1, AGREE, MOST_AT_DELTA);
  const far = itemShares(tallyReadings(asDeclared, cars, plantDistances(0.5, [FAR])), FAR, DIFFER, 0);
  const across = acrossAlarm(at);
  const never = far.filter(({ share }) => share === 0).map(({ item }) => item);
  print("agree at a true difference of δ, the worst items:");
  for (const { item, share, of, surelyOver } of shares.slice(0, 8))
    print(`  ${percent(share).padStart(6)} of ${of}  ${item}${surelyOver ? "  surely over 3 %" : ""}`);
  print(`reading items that never differ at ${FAR} δ: ${never.length === 0 ? "none" : never.join(", ")}`);
  const against = `${shares.length} reading items in use, as declared`;
  return [
    benchRow({
      work: "agree at a true difference of δ, all reading items",
      against,
      value: shareOf(allOf(at, "this engine", 1), ...AGREE),
      goal: MOST_AT_DELTA,
      better: "lower",
    }),
    benchRow({
      work: "reading items surely over 3 % (99 %)",
      against,
      value: shares.filter(({ surelyOver }) => surelyOver).length,
      goal: 0,
      better: "lower",
    }),
    benchRow({
      work: "opposite sides of an alarm called agree",
      against: `${across.of} readings, the stated one good and the found one bad`,
      value: Math.round(across.of * shareOf(across, ...AGREE)),
      goal: 0,
      better: "lower",
    }),
    benchRow({
      work: "reading items that can never differ",
      against: `${far.length} items, ${FAR} δ apart`,
      value: never.length,
      goal: 0,
      better: "lower",
    }),
  ];
};

const columns: readonly (readonly [head: string, distance: number, verdicts: readonly Verdict[]])[] = [
  ["equal: agree", 0, ["agree"]],
  ["agree, marked", 0, ["agree-marked"]],
  ["equal: differ", 0, DIFFER],
  ["δ: agree", 1, ["agree"]],
  ["agree, marked", 1, ["agree-marked"]],
  ["2 δ: differ", 2, DIFFER],
];

const tableRow = (people: string, judge: string, at: (distance: number) => Counts): string =>
  `| ${[people, judge, ...columns.map(([, distance, verdicts]) => percent(shareOf(at(distance), ...verdicts)))].join(" | ")} |`;

const GUARDED = new Set(["noise 1.5 × declared", "a wrong spot, σ = δ/2", "a generous inspector, δ/4"]);

/** What people do that is not as declared, the marks counted; and what the marks cost people who are as they declared. */
export const peopleRows = (cars: number, print: Print): BenchRow[] => {
  print(`| people | judge | ${columns.map(([head]) => head).join(" | ")} |`);
  print(`| --- | --- | ${columns.map(() => "---:").join(" | ")} |`);
  return pairs.flatMap((pair): BenchRow[] => {
    const tally = tallyReadings(pair, 2 * cars, plantDistances(0.25, [1, 2]));
    for (const judge of pair === asDeclared ? JUDGES : (["this engine", "fixed bands"] as const))
      print(tableRow(pair.name, judge, (distance) => allOf(tally, judge, distance)));
    const row = (work: string, distance: number, verdict: Verdict, goal: number): BenchRow =>
      benchRow({
        work,
        against: pair.name,
        value: shareOf(allOf(tally, "this engine", distance), verdict),
        goal,
        better: "lower",
      });
    if (pair === asDeclared) return [row("agrees at equal truth that a mark costs", 0, "agree-marked", 0.02)];
    return GUARDED.has(pair.name) ? [row("agree at δ without a mark", 1, "agree", 0.05)] : [];
  });
};
