import { listed } from "@evenhand/message/listed";
import type { RuleResult } from "@evenhand/shared/cross-check";
import { rangeText, takenText } from "../day/index.ts";
import type { DateSet, DayRange } from "../day/index.ts";
import { dateOrderRecord } from "./record.ts";
import { valueOf } from "../result-words/index.ts";

export type DateOrderInput = {
  readonly cast?: DateSet;
  readonly assembled?: DateSet;
  readonly built?: DateSet;
  /** The code of the casting holds no year: its days are those of the car's model year. */
  readonly yearless?: boolean;
};

type Step = { readonly name: string; readonly dates: DateSet };
type Choice = { readonly name: string; readonly range: DayRange };

/** Every way of choosing one range from each set. */
const choicesOf = (steps: readonly Step[]): Choice[][] =>
  steps.reduce<Choice[][]>(
    (lists, { name, dates }) => lists.flatMap((list) => dates.map((range) => [...list, { name, range }])),
    [[]],
  );

/** Whether days in rising order can be chosen from the ranges (the earliest possible always can be). */
const canRise = (choice: readonly Choice[]): boolean => {
  let earliest = Number.NEGATIVE_INFINITY;
  return choice.every(({ range }) => {
    earliest = Math.max(earliest, range.first);
    return earliest <= range.last;
  });
};

/** Whether every choice of days from the ranges rises. */
const mustRise = (choice: readonly Choice[]): boolean =>
  choice.every(({ range }, index) =>
    choice.slice(index + 1).every((later) => range.last <= later.range.first),
  );

/**
 * Order of dates: cast on or before assembled, assembled on or before built, over everything the codes can mean.
 * The ways that remain possible are given as alternatives.
 *
 * Source: common practice, no source.
 *
 * @example dateOrder({ cast: [{ first: 10, last: 10 }], built: [{ first: 5, last: 5 }] }).reason // "out-of-order"
 */
export const dateOrder = ({ cast, assembled, built, yearless }: DateOrderInput): RuleResult => {
  const steps = Object.entries({ cast, assembled, built }).flatMap(([name, dates]): Step[] =>
    dates === undefined || dates.length === 0 ? [] : [{ name, dates }],
  );
  const textOf = ({ name, dates: set }: Step): string => takenText(set, yearless === true && name === "cast");
  const words = Object.fromEntries(steps.map((step) => [step.name, textOf(step)]));
  const dates = {
    words: {
      ...words,
      dates: listed(
        steps.map((step) => valueOf(step.name, textOf(step))),
        "semicolon",
      ),
    },
  };
  if (steps.length < 2) return dateOrderRecord.answer("too-few", dates);
  const choices = choicesOf(steps);
  const possible = choices.filter(canRise);
  if (possible.length === 0) return dateOrderRecord.answer("out-of-order", dates);
  if (choices.every(mustRise)) return dateOrderRecord.answer("in-order", dates);
  const alternatives = possible.map((choice) =>
    listed(
      choice.map(({ name, range }) => valueOf(name, rangeText(range))),
      "and",
    ),
  );
  return dateOrderRecord.answer("some-readings", { ...dates, alternatives });
};
