import { benchRow } from "../row.ts";
import type { BenchRow } from "../row.ts";
import { plantFalse } from "./false-statements.ts";
import { differsOf, KINDS, tallyKinds } from "./kinds.ts";
import type { KindTally } from "./kinds.ts";
import { JUDGES } from "./judges.ts";
import { lies, liesFound } from "./lies.ts";
import { asDeclared, pairs } from "./people.ts";
import { studyRecord } from "./record.ts";
import { studySecondLook } from "./second-look.ts";
import { percent } from "./rows-of-readings.ts";
import { honest } from "./study.ts";
import { coverageOfWhole } from "./whole-report.ts";

type Print = (text: string) => void;

const perCar = (count: number, { cars }: KindTally): string => (count / cars).toFixed(1);

const printJudges = (name: string, tally: KindTally, print: Print): void => {
  for (const judge of JUDGES) {
    const { all, notSo } = differsOf(tally, judge);
    print(
      `  ${name}, ${judge}: ${perCar(all, tally)} lines a car differ, ${perCar(all - notSo, tally)} of them against a true statement`,
    );
  }
};

const preciseRows = (tally: KindTally, print: Print): BenchRow[] =>
  KINDS.map((kind) => {
    const { all, notSo, planted, missed } = differsOf(tally, "this engine", kind);
    const value = all === 0 ? 1 : notSo / all;
    const stated = planted + missed;
    print(
      `  ${kind}: ${perCar(all, tally)} differ a car, ${percent(value)} of them not so; ${percent(stated === 0 ? 1 : planted / stated)} of the planted found`,
    );
    return benchRow({
      work: `a differ is a false statement: ${kind}`,
      against: "3 % of statements false",
      value,
      goal: 0.8,
      better: "higher",
    });
  });

/** Every kind of answer: what two careful people come to, and what a differ is worth where some statements are false. */
export const kindRows = (cars: number, print: Print): BenchRow[] => {
  const careful = tallyKinds(asDeclared, cars, honest);
  printJudges("nobody lies", careful, print);
  const lying = tallyKinds(asDeclared, cars, plantFalse(0.03));
  printJudges("3 % false", lying, print);
  const { all, notSo } = differsOf(careful, "this engine");
  return [
    benchRow({
      work: "false differ on a car of two careful people",
      against: "every kind of answer",
      value: (all - notSo) / careful.cars,
      goal: 5,
      better: "lower",
    }),
    benchRow({
      work: "all differ on such a car, the dealer's own slips among them",
      against: "every kind of answer",
      value: all / careful.cars,
      goal: 5,
      better: "lower",
    }),
    ...preciseRows(lying, print),
    benchRow({
      work: "honest pairs accused by a rule",
      against: "1.5 % of codes misread",
      value: careful.accused / careful.cars,
      goal: 0.03,
      better: "lower",
    }),
  ];
};

/** Lies of each kind, told by somebody otherwise careful to somebody careful. */
export const lieRows = (cars: number, print: Print): BenchRow[] => {
  print("lies, each in a car of its own:");
  return lies.map((lie) =>
    benchRow({
      work: `lie found: ${lie.name}`,
      against: `${cars} cars`,
      value: liesFound(lie, asDeclared, cars),
      goal: 0.9,
      better: "higher",
    }),
  );
};

/** A dealer's record over thirty cars. */
export const recordRows = (cars: number, print: Print): BenchRow[] => {
  const record = studyRecord(asDeclared, 2 * cars);
  print(
    `by the share of cars without a fall the honest dealer stands above in ${percent(record.honestAboveByCars)}`,
  );
  const against = "30 cars a dealer";
  return [
    benchRow({
      work: "record: honest who states all above one who hides a tenth and states little",
      against,
      value: record.honestAbove,
      goal: 0.95,
      better: "higher",
    }),
    benchRow({
      work: "record: 90 % interval covers, off by",
      against,
      value: Math.abs(record.covers - 0.9),
      goal: 0.02,
      better: "lower",
    }),
    benchRow({
      work: "record: the same of the dealer who hides",
      against,
      value: Math.abs(record.coversWorst - 0.9),
      goal: 0.02,
      better: "lower",
    }),
  ];
};

/** What a second look mends where nobody states anything false. */
export const secondLookRows = (cars: number, print: Print): BenchRow[] =>
  ["two careful people", "two ordinary people"].map((people) => {
    const pair = pairs.find(({ name }) => name.startsWith(people)) ?? asDeclared;
    const { named, ...study } = studySecondLook(pair, cars);
    print(
      `${people}, ${named.toFixed(0)} places looked at again: doubtful lines ${study.doubtfulOnce.toFixed(1)} a car, then ${study.doubtfulTwice.toFixed(1)}`,
    );
    return benchRow({
      work: `differ on a true statement after a second look, ${people}`,
      against: `${study.falseOnce.toFixed(1)} a car after one look`,
      value: study.falseTwice,
      goal: study.falseOnce / 2,
      better: "lower",
    });
  });

/** Intervals over a whole report, of people whose errors are shared within an item. */
export const wholeRows = (cars: number, print: Print): BenchRow[] => {
  const pair = pairs.find(({ name }) => name === "two ordinary people") ?? asDeclared;
  const covered = coverageOfWhole(pair, 4 * cars);
  print(
    `95 % intervals cover: step ${percent(covered.step)}, shift ${percent(covered.shift)}, coefficient ${percent(covered.coefficient)}`,
  );
  return (["step", "shift", "coefficient"] as const).map((what) =>
    benchRow({
      work: `whole report: 95 % interval of the ${what} covers, off by`,
      against: "errors shared within an item",
      value: Math.abs(covered[what] - 0.95),
      goal: 0.02,
      better: "lower",
    }),
  );
};
