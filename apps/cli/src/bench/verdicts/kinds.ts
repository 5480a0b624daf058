import type { Answer } from "@evenhand/shared/answer";
import type { Entry } from "@evenhand/shared/comparison";
import { gradePlace, isFalse } from "./false-statements.ts";
import type { JudgeName } from "./judges.ts";
import { JUDGES, verdictsOf } from "./judges.ts";
import type { Pair } from "./people.ts";
import { eachCar, entryKey, sheet, studied } from "./study.ts";
import type { Plant, Studied } from "./study.ts";
import type { Known } from "./truth.ts";

/** Lines that differ, by judge and kind of answer: all, those whose statement is not so, and those whose statement is a planted lie. */
export type Differs = { all: number; notSo: number; planted: number; missed: number };
export type KindTally = {
  readonly cars: number;
  readonly by: ReadonlyMap<string, Differs>;
  /** Cars of which a rule says that a claim of the statement cannot be true. */
  readonly accused: number;
};

export const KINDS = ["reading", "grade", "working", "presence", "choice", "code", "faults"] as const;

const tallyKey = (judge: JudgeName, kind: string): string => `${judge}|${kind}`;
const NONE: Differs = { all: 0, notSo: 0, planted: 0, missed: 0 };

/** Of one kind of answer, or of all. */
export const differsOf = (tally: KindTally, judge: JudgeName, kind?: string): Differs => {
  const kinds = kind === undefined ? [...KINDS, "color"] : [kind];
  return kinds.reduce((sum, one) => {
    const counts = tally.by.get(tallyKey(judge, one)) ?? NONE;
    return {
      all: sum.all + counts.all,
      notSo: sum.notSo + counts.notSo,
      planted: sum.planted + counts.planted,
      missed: sum.missed + counts.missed,
    };
  }, NONE);
};

/** What people do with answers that are no readings: the same, or not; a step of a grade is let pass by bands. */
const rivalDiffers = (judge: JudgeName, a: Answer, b: Answer): boolean => {
  if (judge === "fixed bands" && a.kind === "grade" && b.kind === "grade")
    return Math.abs(gradePlace(a.value) - gradePlace(b.value)) > 1;
  return JSON.stringify(a) !== JSON.stringify(b);
};

const isApart = (entry: Entry): boolean => entry.outcome === "differ";

/** Whether a judge says that the place differs. The engine may say so on one of several lines of it. */
const differsAt = (judge: JudgeName, entries: readonly Entry[], one: Studied): boolean => {
  if (judge === "this engine") return entries.some(isApart);
  const [entry] = entries;
  const a = one.a.findings[entry?.finding.a ?? -1]?.answer;
  const b = one.b.findings[entry?.finding.b ?? -1]?.answer;
  if (entry === undefined || a === undefined || b === undefined) return false;
  if (a.kind === "not-seen" || b.kind === "not-seen") return false;
  const spec = sheet.items.get(entry.item)?.item.reading;
  if (spec === undefined) return rivalDiffers(judge, a, b);
  return verdictsOf(entry, one, spec).some(([name, verdict]) => name === judge && verdict === "differ");
};

type Place = { readonly known: Known; readonly entries: readonly Entry[] };

const placesOf = (one: Studied): Place[] => {
  const lines = Map.groupBy(one.comparison.entries, entryKey);
  return one.story.car.known.flatMap((known) => {
    const entries = lines.get(known.key);
    return entries === undefined ? [] : [{ known, entries }];
  });
};

const tallyPlace = ({ known, entries }: Place, one: Studied, by: Map<string, Differs>): void => {
  const stated = one.a.findings[entries[0]?.finding.a ?? -1]?.answer;
  const planted = one.story.claims.has(known.key);
  for (const judge of JUDGES) {
    const differs = differsAt(judge, entries, one);
    if (!differs && !planted) continue;
    const key = tallyKey(judge, known.item.answer);
    const counts = by.get(key) ?? { ...NONE };
    const notSo = planted || (stated !== undefined && isFalse(known, stated));
    if (differs) counts.all += 1;
    else counts.missed += 1;
    if (differs && notSo) counts.notSo += 1;
    if (differs && planted) counts.planted += 1;
    by.set(key, counts);
  }
};

/** A rule says that what was claimed cannot be. */
export const isAccused = ({ comparison }: Pick<Studied, "comparison">): boolean =>
  comparison.crossChecks.some(
    ({ verdict, strength, decides }) =>
      verdict === "breaks" && strength === "contradicts" && decides.some(({ side }) => side === "a"),
  );

/** Whole reports of so many cars, every kind of answer, by every judge. */
export const tallyKinds = (pair: Pair, cars: number, plant: Plant): KindTally => {
  const by = new Map<string, Differs>();
  let accused = 0;
  eachCar(
    cars,
    (number) => studied(pair, number, plant),
    (one) => {
      for (const place of placesOf(one)) tallyPlace(place, one, by);
      if (isAccused(one)) accused += 1;
    },
  );
  return { cars, by, accused };
};
