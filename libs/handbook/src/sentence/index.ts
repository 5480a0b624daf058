import type { LimitUse, RuleResult } from "@evenhand/shared/cross-check";
import { figureText, rangeFigureText, timeWord } from "../figure-text/index.ts";
import type { LimitRecords } from "../limit-record/index.ts";
import type { Outcome } from "../rule-record/index.ts";
import { findRule } from "../rules/index.ts";

const PLACEHOLDER = /\{(limit:|or:)?([^}]+)\}/g;

const findAlternatives = ({ alternatives = [] }: RuleResult, between: string): string | undefined =>
  alternatives.length === 0 ? undefined : alternatives.join(between);

/** A figure of practice is worded as one: nobody requires or allows it. */
const beside = ({ origin }: LimitUse): string => (origin === "common-practice" ? " (common practice)" : "");

/** A limit's figure, or the band between two (`low..high`), by whose figures it is. */
const findLimitText = ({ limits = [] }: RuleResult, name: string): string | undefined => {
  const [limit, upper] = name.split("..").map((each) => limits.find(({ id }) => id === each));
  if (limit === undefined || (upper === undefined && name.includes(".."))) return undefined;
  if (upper === undefined) return `${figureText(limit)}${timeWord(limit.unit)}${beside(limit)}`;
  return `${figureText({ value: limit.value, unit: "1" })} to ${figureText(upper)}${beside(limit) || beside(upper)}`;
};

/** What a placeholder stands for: a range before the figure of the same name, since it says more. */
const findText = (result: RuleResult, kind: string | undefined, name: string): string | undefined => {
  if (kind === "limit:") return findLimitText(result, name);
  if (name === "alternatives") return findAlternatives(result, kind === "or:" ? ", or " : "; ");
  const range = result.ranges?.[name];
  if (range !== undefined) return rangeFigureText(range);
  const own = result.figures[name];
  return own === undefined ? result.words?.[name] : figureText(own);
};

/** Any rule's break that rests on a code one person read once. */
const READ_AGAIN =
  "{said} It rests on {codes}, which was not read alike twice: read it again, with a photograph, before anything is made of it.";

const findTemplate = ({ rule, reason }: RuleResult): string | undefined => {
  const outcomes: Readonly<Record<string, Outcome>> = findRule(rule)?.outcomes ?? {};
  if (Object.hasOwn(outcomes, reason)) return outcomes[reason]?.says;
  return reason === "read-again" ? READ_AGAIN : undefined;
};

/** A part in square brackets stands only where everything it speaks of is there. */
const OPTIONAL = /\[([^\]]*)\]/g;

const withOptions = (template: string, result: RuleResult): string =>
  template.replaceAll(OPTIONAL, (_, part: string) =>
    Array.from(part.matchAll(PLACEHOLDER)).every(
      ([, kind, name = ""]) => findText(result, kind, name) !== undefined,
    )
      ? part
      : "",
  );

const WHOSE = { firm: "the firm's own figure", maker: "the maker's figure" } as const;

/** Which limits were not the handbook's own, so that nobody has to ask by what a claim was judged. */
const ownFigures = ({ rule, limits: used = [] }: RuleResult): string[] => {
  const records: LimitRecords = findRule(rule)?.limitRecords ?? {};
  return used.flatMap(({ id, origin, ...limit }) => {
    const record = records[id];
    return (origin === "firm" || origin === "maker") && record !== undefined
      ? [`Judged by ${WHOSE[origin]}: ${record.words}, ${figureText(limit)}${timeWord(limit.unit)}.`]
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
  const said = withOptions(template, result).replaceAll(
    PLACEHOLDER,
    (_, kind: string | undefined, name: string) => {
      const text = findText(result, kind, name);
      if (text === undefined) throw new RangeError(`${result.rule}, ${result.reason} lacks ${name}`);
      return text;
    },
  );
  return [said, ...ownFigures(result)].join(" ");
};
