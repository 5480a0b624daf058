import type { FirmLimits, LimitUse, RuleResult } from "@evenhand/shared/cross-check";
import { dateText, takenText } from "../day/index.ts";
import type { DateSet } from "../day/index.ts";
import { judgeSpan } from "../interval/index.ts";
import type { Span } from "../interval/index.ts";
import { dateCorrectRecord } from "./record.ts";
import { resultMessages } from "../result-words/index.ts";

export type DateCorrectInput = {
  readonly part: DateSet;
  readonly built: DateSet;
  /** The part was made in small numbers, and so lay longer before it was fitted. */
  readonly lowVolume?: boolean;
  /** The part's code holds no year: its days are those of the car's model year. */
  readonly yearless?: boolean;
};

/** Days from part to build, least and most, for every pair of ranges. */
const gapsOf = (part: DateSet, built: DateSet): Span[] =>
  part.flatMap((from) => built.map((to) => ({ low: to.first - from.last, high: to.last - from.first })));

const within = (gap: Span, days: number): boolean => judgeSpan(gap, { low: 0, high: days }) === "holds";

/** A gap in words, whichever way it lies. */
const gapText = ({ low, high }: Span): string => {
  const [least, most] = low < 0 ? [-high, -low] : [low, high];
  const days = least === most ? least : resultMessages.say("between", { first: least, last: most });
  return resultMessages.say(low < 0 ? "days-after" : "days-before", { days });
};

const holding = (gaps: readonly Span[], [usual, plausible]: readonly LimitUse[]) => {
  if (gaps.every((gap) => within(gap, usual?.value ?? 0))) return "usual";
  return gaps.every((gap) => within(gap, plausible?.value ?? 0)) ? "plausible" : "low-volume";
};

const breaking = (gaps: readonly Span[]) => {
  if (gaps.every((gap) => gap.high < 0)) return "after-build";
  return gaps.every((gap) => gap.low >= 0) ? "too-early" : "fits-nowhere";
};

/**
 * Date of a part against the scheduled build date of the car, over everything both can mean. It never says that
 * a part is original to the car, only whether its date speaks against it.
 *
 * Source: common practice, no source.
 *
 * @example
 * dateCorrect({ part: [{ first: 0, last: 0 }], built: [{ first: 45, last: 45 }] }).reason // "usual"
 */
export const dateCorrect = (input: DateCorrectInput, firm: FirmLimits = {}): RuleResult => {
  const { part, built, lowVolume = false, yearless } = input;
  const limits = (
    ["date-correct.usual-days", "date-correct.plausible-days", "date-correct.low-volume-days"] as const
  ).map((id) => dateCorrectRecord.limit(id, firm));
  const [, plausible = 0, longest = 0] = limits.map(({ value }) => value);
  const gaps = gapsOf(part, built);
  if (gaps.length === 0) return dateCorrectRecord.answer("too-few", { limits });
  const days = {
    low: Math.min(...gaps.map(({ low }) => low)),
    high: Math.max(...gaps.map(({ high }) => high)),
    unit: "d",
  };
  const detail = {
    words: { part: takenText(part, yearless), built: dateText(built) },
    ranges: { days },
    limits,
  };
  if (gaps.every((gap) => within(gap, lowVolume ? longest : plausible))) {
    return dateCorrectRecord.answer(holding(gaps, limits), detail);
  }
  if (gaps.every((gap) => judgeSpan(gap, { low: 0, high: longest }) === "breaks")) {
    return dateCorrectRecord.answer(breaking(gaps), detail);
  }
  return dateCorrectRecord.answer(
    gaps.every((gap) => within(gap, longest)) ? "low-volume-only" : "some-readings",
    {
      ...detail,
      alternatives: gaps.map(gapText),
    },
  );
};
