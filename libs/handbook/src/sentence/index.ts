import { listed } from "@evenhand/message/listed";
import { capital } from "@evenhand/message/first-letter";
import { formatMessage, LEFT_OUT, placesOf } from "@evenhand/message/format-message";
import type { LimitUse, RuleResult } from "@evenhand/shared/cross-check";
import { figureText, rangeFigureText, timeWord } from "../figure-text/index.ts";
import type { LimitRecords } from "../limit-record/index.ts";
import type { Outcome } from "../rule-record/index.ts";
import { findRule } from "../rules/index.ts";
import { messages } from "./messages.ts";
import { resultMessages } from "../result-words/index.ts";

/** A figure of practice is worded as one: nobody requires or allows it. */
const limitText = (limit: LimitUse): string => {
  const figure = `${figureText(limit)}${timeWord(limit.unit)}`;
  return limit.origin === "common-practice" ? messages.say("of-practice", { figure }) : figure;
};

/** The band between two limits: the unit once, and practice where either is. */
const bandText = (lower: LimitUse, upper: LimitUse): string => {
  const figure = resultMessages.say("between", {
    first: figureText({ value: lower.value, unit: "1" }),
    last: figureText(upper),
  });
  const isPractice = [lower, upper].some(({ origin }) => origin === "common-practice");
  return isPractice ? messages.say("of-practice", { figure }) : figure;
};

/** A limit's id as messages name it: `LowestShare` of `compression.lowest-share`. */
export const placeOfLimit = (id: string): string =>
  id
    .slice(id.indexOf(".") + 1)
    .split("-")
    .map(capital)
    .join("");

const LIMIT = "limit";
const BAND = /To(?=[A-Z])/;

/** A limit's figure, or the band between two (`limitLowToHigh`), by whose figures it is. */
const findLimitText = ({ limits = [] }: RuleResult, place: string): string | undefined => {
  const find = (name: string): LimitUse | undefined => limits.find(({ id }) => placeOfLimit(id) === name);
  const name = place.slice(LIMIT.length);
  const only = find(name);
  if (only !== undefined) return limitText(only);
  const [low = "", high = ""] = name.split(BAND);
  const [lower, upper] = [find(low), find(high)];
  return lower === undefined || upper === undefined ? undefined : bandText(lower, upper);
};

/** What fills a place: a range before the figure of the same name, since it says more. */
const findText = (result: RuleResult, place: string): string | undefined => {
  if (place === "alternatives" || place === "anyAlternative") {
    const { alternatives = [] } = result;
    if (alternatives.length === 0) return undefined;
    return listed(alternatives, place === "alternatives" ? "semicolon" : "comma-or");
  }
  const range = result.ranges?.[place];
  if (range !== undefined) return rangeFigureText(range);
  const own = result.figures[place];
  if (own !== undefined) return figureText(own);
  return result.words?.[place] ?? (place.startsWith(LIMIT) ? findLimitText(result, place) : undefined);
};

const findTemplate = ({ rule, reason }: RuleResult): string | undefined => {
  const outcomes: Readonly<Record<string, Outcome>> = findRule(rule)?.outcomes ?? {};
  if (Object.hasOwn(outcomes, reason)) return outcomes[reason]?.says;
  // Any rule's break that rests on a code one person read once.
  return reason === "read-again" ? messages.templates["read-again"] : undefined;
};

/** Which limits were not the handbook's own, so that nobody has to ask by what a claim was judged. */
const ownFigures = ({ rule, limits: used = [] }: RuleResult): string[] => {
  const records: LimitRecords = findRule(rule)?.limitRecords ?? {};
  return used.flatMap(({ id, origin, ...limit }) => {
    const record = records[id];
    return (origin === "firm" || origin === "maker") && record !== undefined
      ? [
          messages.say(`judged-by-${origin}`, {
            words: record.words,
            figure: `${figureText(limit)}${timeWord(limit.unit)}`,
          }),
        ]
      : [];
  });
};

/**
 * The sentence of a rule's result, made from its reason and figures alone, and behind it which figures were a firm's or a
 * maker's own.
 *
 * @throws {RangeError} for a rule or reason the handbook does not have, or a figure the reason needs and lacks
 * @example
 * sentence(cranking({ volts: exactly(8.9), system: 12 })) // "8.9 V while cranking, under 9.6 V (common practice). …"
 */
export const sentence = (result: RuleResult): string => {
  const template = findTemplate(result);
  if (template === undefined) throw new RangeError(`no sentence for ${result.rule}, ${result.reason}`);
  const { all, optional, required } = placesOf(template);
  const values = all.flatMap((place): (readonly [string, string])[] => {
    const text = findText(result, place) ?? (optional.includes(place) ? LEFT_OUT : undefined);
    if (text !== undefined) return [[place, text]];
    if (required.includes(place)) throw new RangeError(`${result.rule}, ${result.reason} lacks ${place}`);
    return [];
  });
  return [formatMessage<string>(template, Object.fromEntries(values)), ...ownFigures(result)].join(" ");
};
