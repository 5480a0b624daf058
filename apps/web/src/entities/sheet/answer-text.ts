import type { Answer, Fault, FaultsAnswer } from "@evenhand/shared/answer";
import type { GradeScale } from "@evenhand/shared/report";
import type { Item } from "@evenhand/shared/sheet";
import { UNITS } from "@evenhand/shared/unit";
import { mappedTo } from "@evenhand/sheet/grade-scale";
import { presenceWords } from "@evenhand/sheet/presence-words";
import type { IntlShape } from "react-intl";
import type { z } from "zod";
import type { MessageId } from "../../strings/en";
import { spelled, type SheetIndex } from "./sheet-index";

export interface AnswerWords {
  readonly text: string;
  /** Codes are set in fixed width. */
  readonly code?: boolean;
  /** Nothing was seen or known. */
  readonly faint?: boolean;
}

interface Context {
  readonly intl: IntlShape;
  readonly index: SheetIndex;
  readonly item: Item | undefined;
  readonly scales: readonly GradeScale[];
}

const say = (intl: IntlShape, id: MessageId, values?: Record<string, string | number>): string =>
  intl.formatMessage({ id }, values);

/** A number followed by its unit as the trade writes it: `6/32 in`, `14.1 V`. */
export const withUnit = (number: string, unit: keyof typeof UNITS): string => {
  // A fraction slash makes fonts set the digits before it as a numerator, which breaks decimals.
  const text = UNITS[unit].text.replace("⁄", "/");
  const tight = text === "" || text.startsWith("/") || text === "°" || text === "%";
  return `${number}${tight ? "" : "\u00a0"}${text}`;
};

const number = (intl: IntlShape, value: number): string =>
  intl.formatNumber(value, { maximumSignificantDigits: 6, useGrouping: Math.abs(value) >= 10_000 });

export const quantity = (intl: IntlShape, value: number, unit: keyof typeof UNITS): string =>
  withUnit(number(intl, value), unit);

const readings = ({ intl }: Context, answer: Extract<Answer, { kind: "reading" }>): string => {
  const values = answer.values.map(({ value }) => value);
  if (values.length <= 4)
    return withUnit(values.map((value) => number(intl, value)).join(" · "), answer.unit);
  const least = number(intl, Math.min(...values));
  const most = number(intl, Math.max(...values));
  return say(intl, "answer.readings.many", {
    count: values.length,
    range: withUnit(`${least}–${most}`, answer.unit),
  });
};

const HOUSE: Readonly<Record<string, MessageId>> = {
  "as-new": "grade.as-new",
  "light-wear": "grade.light-wear",
  "even-wear": "grade.even-wear",
  "heavy-wear": "grade.heavy-wear",
  spent: "grade.spent",
};

const houseGrade = (intl: IntlShape, value: string): string => {
  const known = HOUSE[value];
  return known ? say(intl, known) : spelled(value);
};

/** A grade in its own words, and what the service reads a word of another scale as. */
const grade = ({ intl, scales }: Context, scale: string, value: string | number): string => {
  const own = scales.find(({ id }) => id === scale)?.grades.find(({ id }) => id === value);
  const said =
    typeof value === "number" ? withUnit(number(intl, value), "%") : (own?.name ?? houseGrade(intl, value));
  const house = mappedTo({ scale, value }, scales).map((each) => houseGrade(intl, each));
  return house.length === 0
    ? said
    : say(intl, "grade.read-as", { grade: said, house: intl.formatList(house, { type: "disjunction" }) });
};

const kindWords = ({ index }: Context, kind: string): string =>
  index.faultKinds.get(kind)?.words.american ?? spelled(kind);

/** A spot is a cell of the item's drawing. */
export const spotWords = (index: SheetIndex, item: Item | undefined, spot: string): string => {
  const drawing = item?.faults?.drawing === undefined ? undefined : index.drawings.get(item.faults.drawing);
  return drawing?.cells.find(({ id }) => id === spot)?.words.american ?? spot.replaceAll("-", " ");
};

export const faultText = (context: Context, fault: Fault): string =>
  [
    kindWords(context, fault.kind),
    fault.extent && quantity(context.intl, fault.extent.value, fault.extent.unit),
    fault.spot !== undefined && spotWords(context.index, context.item, fault.spot),
  ]
    .filter((part) => typeof part === "string")
    .join(", ");

export const denialText = (context: Context, kind: string): string =>
  kind === "all"
    ? say(context.intl, "answer.faults.none")
    : say(context.intl, "answer.faults.no", { kind: kindWords(context, kind) });

const faults = (context: Context, answer: z.infer<typeof FaultsAnswer>): string => {
  const found = answer.found.map((fault) => faultText(context, fault));
  const denied = answer.denied === "all" ? ["all"] : answer.denied;
  const not = denied.map((kind) => denialText(context, kind));
  return [...found, ...not].join("; ");
};

const color = ({ intl }: Context, answer: Extract<Answer, { kind: "color" }>): string => {
  const [first] = answer.values;
  if (!first) return "";
  const one = (value: number): string => intl.formatNumber(value, { maximumFractionDigits: 1 });
  return say(intl, "answer.color", {
    L: one(first.L),
    a: one(first.a),
    b: one(first.b),
    count: answer.values.length,
  });
};

/** An answer in words. One place for all kinds, so that every page says the same. */
export const answerWords = (context: Context, answer: Answer): AnswerWords => {
  const { intl, item } = context;
  switch (answer.kind) {
    case "reading":
      return { text: readings(context, answer) };
    case "color":
      return { text: color(context, answer) };
    case "grade":
      return { text: grade(context, answer.scale, answer.value) };
    case "working":
      return { text: say(intl, `answer.working.${answer.value}`), faint: answer.value === "not-known" };
    case "presence":
      return {
        text: presenceWords(item, answer.value) ?? say(intl, `answer.presence.${answer.value}`),
        faint: answer.value === "not-known",
      };
    case "choice": {
      const said = [answer.option, ...(answer.also ?? [])].map(
        (option) => item?.choice?.options.find(({ id }) => id === option)?.words.american ?? spelled(option),
      );
      return { text: said.join(", "), faint: answer.option === "not-known" };
    }
    case "code":
      return { text: answer.text, code: true };
    case "faults":
      return { text: faults(context, answer) };
    case "not-fitted":
      return { text: say(intl, "answer.not-fitted"), faint: true };
    case "not-seen":
      return {
        text: say(intl, "answer.not-seen", { reason: say(intl, `not-seen.${answer.reason}`) }),
        faint: true,
      };
  }
};

export type { Context as AnswerContext };
