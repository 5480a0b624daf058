import { analyze } from "@evenhand/comparison/analyze";
import { seededRandom } from "@evenhand/measurement/random";
import type { Share } from "@evenhand/record/car-share";
import { dealerFigures } from "@evenhand/record/dealer-figures";
import type { Decided, InspectedCar } from "@evenhand/record/dealer-figures";
import { lineKey } from "@evenhand/record/line-key";
import { statementCounts } from "@evenhand/record/statement-counts";
import type { SectionCounts, StatementCounts } from "@evenhand/record/statement-counts";
import { SECOND_LOOK_DECIDES } from "./assumptions.ts";
import { drawsFrom } from "./draws.ts";
import type { Draws } from "./draws.ts";
import { falseOn, isFalse } from "./false-statements.ts";
import type { Pair } from "./people.ts";
import { entryKey, SEED, sheet, studied } from "./study.ts";
import type { Plant, Studied } from "./study.ts";
import { isBadOption } from "./true-car.ts";
import type { Known, Truth } from "./truth.ts";

/** How a dealer states cars: how much of what is bad is hidden, and how much is stated at all. */
export type Habit = { readonly hides: number; readonly states: number };

const HONEST: Habit = { hides: 0, states: 1 };
const SILENT: Habit = { hides: 0.1, states: 0.3 };

const isBad = ({ item, truth }: Known): boolean => {
  switch (truth.kind) {
    case "faults":
      return truth.found.length > 0;
    case "word":
      if (item.answer === "working") return truth.word !== "yes";
      return item.answer === "choice" && isBadOption(item, truth.word);
    default:
      return false;
  }
};

const hide =
  ({ hides }: Habit): Plant =>
  (car, draws) => {
    const claims = new Map<string, Truth>();
    for (const known of car.known) {
      if (!isBad(known) || !draws.chance(hides)) continue;
      const lie = falseOn(known, draws);
      if (lie !== undefined) claims.set(known.key, lie.said);
    }
    return { car, claims };
  };

/** One number for a whole car: the study asks of no section. */
const merged = (counts: StatementCounts): StatementCounts => {
  const sections = Object.values(counts);
  const sum = (of: (section: SectionCounts) => number): number =>
    sections.reduce((total, section) => total + of(section), 0);
  return {
    whole: {
      places: sum(({ places }) => places),
      stated: sum(({ stated }) => stated),
      confirmed: sum(({ confirmed }) => confirmed),
      notContradicted: sum(({ notContradicted }) => notContradicted),
      falls: sections.flatMap(({ falls }) => falls),
      statedWorse: sum(({ statedWorse }) => statedWorse),
    },
  };
};

/** What a second look or a dispute makes of the lines that differ: the truth, mostly; the rest stays open. */
const decidedOf = (one: Studied, draws: Draws): Map<string, Decided> => {
  const places = new Map(one.story.car.known.map((known) => [known.key, known]));
  const decided = new Map<string, Decided>();
  for (const entry of one.comparison.entries) {
    const known = places.get(entryKey(entry));
    const answer = one.a.findings[entry.finding.a ?? -1]?.answer;
    if (entry.standing !== "differs" || known === undefined || answer === undefined) continue;
    if (draws.chance(SECOND_LOOK_DECIDES))
      decided.set(lineKey(entry), isFalse(known, answer) ? "fell" : "stood");
  }
  return decided;
};

const carOf = (pair: Pair, number: number, habit: Habit, draws: Draws): InspectedCar => {
  const whole = studied(pair, number, hide(habit));
  const a = { ...whole.a, findings: whole.a.findings.filter(() => draws.chance(habit.states)) };
  const comparison = habit.states === 1 ? whole.comparison : analyze(a, whole.b, sheet);
  const one: Studied = { ...whole, a, comparison };
  return {
    dealer: "one",
    counts: merged(statementCounts(comparison, sheet)),
    decided: decidedOf(one, draws),
  };
};

const poolOf = (pair: Pair, cars: number, habit: Habit): InspectedCar[] => {
  const draws = drawsFrom(seededRandom(SEED + 17));
  return Array.from({ length: cars }, (_, number) => carOf(pair, number, habit, draws));
};

const RECORD_CARS = 30;
const DRAWS = 1_000;

const sample = (pool: readonly InspectedCar[], { pick }: Draws): InspectedCar[] =>
  Array.from({ length: RECORD_CARS }, () => pick(pool));

/** The record as the service reckons it. */
const fallenIn = (cars: readonly InspectedCar[]): Share => {
  const row = dealerFigures(cars).find(({ section }) => section === null);
  if (row?.state !== "known") throw new RangeError("a record is known from twenty cars on");
  return row.fallen;
};

export type RecordStudy = {
  /** Draws of 30 cars each in which the honest dealer who states all stands above. */
  readonly honestAbove: number;
  /** How often the 90 % interval of an honest dealer's record holds the true share, and that of the one who hides. */
  readonly covers: number;
  readonly coversWorst: number;
  /** The same draws by the share of cars without a line that differs, which rewards silence. */
  readonly honestAboveByCars: number;
};

const unblemished = (cars: readonly InspectedCar[]): number =>
  cars.filter(({ counts }) => counts["whole"]?.falls.length === 0).length / cars.length;

const coverage = (pool: readonly InspectedCar[], draws: Draws): number => {
  const truth = fallenIn(pool).estimate;
  let covered = 0;
  for (let draw = 0; draw < DRAWS; draw += 1) {
    const { low, high } = fallenIn(sample(pool, draws));
    if (low <= truth && truth <= high) covered += 1;
  }
  return covered / DRAWS;
};

/** Two dealers of thirty cars each, drawn over and over from so many simulated cars. */
export const studyRecord = (pair: Pair, cars: number): RecordStudy => {
  const [honest, silent] = [poolOf(pair, cars, HONEST), poolOf(pair, cars, SILENT)];
  const draws = drawsFrom(seededRandom(SEED + 18));
  let above = 0;
  let aboveByCars = 0;
  for (let draw = 0; draw < DRAWS; draw += 1) {
    const [one, other] = [sample(honest, draws), sample(silent, draws)];
    if (fallenIn(one).estimate < fallenIn(other).estimate) above += 1;
    if (unblemished(one) > unblemished(other)) aboveByCars += 1;
  }
  return {
    honestAbove: above / DRAWS,
    honestAboveByCars: aboveByCars / DRAWS,
    covers: coverage(honest, draws),
    coversWorst: coverage(silent, draws),
  };
};
