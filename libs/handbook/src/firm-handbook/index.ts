import type { FirmHandbook, MakerEntry, ReportHandbook } from "@evenhand/shared/cross-check";
import type { FieldProblem } from "@evenhand/shared/problem";
import type { Report, Vehicle } from "@evenhand/shared/report";
import { firmLimitProblems } from "../limits/index.ts";
import type { LimitProblem } from "../limits/index.ts";

type Car = Pick<Vehicle, "make" | "model" | "modelYear">;

const alike = (one: string, other: string): boolean =>
  one.trim().toLowerCase() === other.trim().toLowerCase();

const speaksOf = ({ make, model, fromYear, toYear }: MakerEntry, car: Car): boolean =>
  alike(make, car.make) &&
  (model === undefined || alike(model, car.model)) &&
  (fromYear ?? car.modelYear) <= car.modelYear &&
  car.modelYear <= (toYear ?? car.modelYear);

/** An entry for the model goes before one for the make; among these, one for some years before one for all. */
const closeness = ({ model, fromYear, toYear }: MakerEntry): number =>
  (model === undefined ? 0 : 2) + (fromYear === undefined && toYear === undefined ? 0 : 1);

/**
 * What a firm entered that speaks of a car: the entry closest to it, the later one of two as close.
 *
 * @example
 * findMaker([{ make: "Uthwick", source: "manual", data: { timing: 6 } }], { make: "uthwick", model: "Larksong", modelYear: 1979 })
 * // { source: "manual", … }
 */
export const findMaker = (makers: readonly MakerEntry[], car: Car): MakerEntry | undefined =>
  makers
    .filter((entry) => speaksOf(entry, car))
    .reduce<MakerEntry | undefined>(
      (best, entry) => (best !== undefined && closeness(best) > closeness(entry) ? best : entry),
      undefined,
    );

/**
 * The part of a firm's handbook that goes into a report on a car, or nothing where it says nothing of it.
 *
 * @example reportHandbook({ limits: {}, makers: [] }, { make: "Uthwick", model: "Larksong", modelYear: 1979 }) // undefined
 */
export const reportHandbook = ({ limits, makers }: FirmHandbook, car: Car): ReportHandbook | undefined => {
  const maker = findMaker(makers, car);
  if (maker === undefined && Object.keys(limits).length === 0) return undefined;
  return maker === undefined ? { limits } : { limits, maker: { source: maker.source, data: maker.data } };
};

/** What is wrong with the figures a report file brings along, each in words. */
export const reportHandbookProblems = ({ handbook }: Pick<Report, "handbook">): FieldProblem[] =>
  firmLimitProblems(handbook?.limits ?? {}).map(({ id, reason }) => ({
    at: `/handbook/limits/${id}`,
    reason: PROBLEM_WORDS[reason],
  }));

export type FirmHandbookProblem = {
  /** JSON pointer. */
  readonly at: string;
  readonly reason: LimitProblem["reason"] | "years-turned-round" | "twice";
};

/** Each problem in words. */
export const PROBLEM_WORDS: Readonly<Record<FirmHandbookProblem["reason"], string>> = {
  "unknown-limit": "the handbook has no such figure",
  "not-the-firms-to-set": "only figures of common practice are the firm's to set",
  "out-of-range": "it lies outside what this figure may be set to",
  "years-turned-round": "the last year lies before the first",
  twice: "these cars are entered already",
};

const sameCars = (one: MakerEntry, other: MakerEntry): boolean =>
  alike(one.make, other.make) &&
  alike(one.model ?? "", other.model ?? "") &&
  one.fromYear === other.fromYear &&
  one.toYear === other.toYear;

/**
 * Everything that is wrong with a firm's handbook: limits that are not its to set or out of range, years that end before they
 * begin, the same cars entered twice.
 *
 * @example firmHandbookProblems({ limits: { "in-use.tread": 1 }, makers: [] })
 * // [{ at: "/limits/in-use.tread", reason: "not-the-firms-to-set" }]
 */
export const firmHandbookProblems = ({ limits, makers }: FirmHandbook): FirmHandbookProblem[] => [
  ...firmLimitProblems(limits).map(({ id, reason }) => ({ at: `/limits/${id}`, reason })),
  ...makers.flatMap((entry, index): FirmHandbookProblem[] => {
    const { fromYear, toYear } = entry;
    if (fromYear !== undefined && toYear !== undefined && toYear < fromYear)
      return [{ at: `/makers/${index}/toYear`, reason: "years-turned-round" }];
    return makers.slice(0, index).some((other) => sameCars(other, entry))
      ? [{ at: `/makers/${index}`, reason: "twice" }]
      : [];
  }),
];
