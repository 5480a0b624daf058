import type { Answer, Fault } from "@evenhand/shared/answer";
import type { GradeScale } from "@evenhand/shared/report";
import type { Item } from "@evenhand/shared/sheet";
import type { UNITS } from "@evenhand/shared/unit";
import * as wording from "@evenhand/wording/answer-words";
import { formatExact, formatUnit } from "@evenhand/wording/format-figure";
import { sheetWords } from "@evenhand/wording/sheet-words";
import { plainSlash } from "../../ui/plain-slash";
import type { SheetIndex } from "./sheet-index";

export interface AnswerWords {
  readonly text: string;
  /** Codes are set in fixed width. */
  readonly code?: boolean;
  /** Nothing was seen or known. */
  readonly faint?: boolean;
}

export interface AnswerContext {
  readonly index: SheetIndex;
  readonly item: Item | undefined;
  readonly scales: readonly GradeScale[];
}

const wordingContext = ({ index, item, scales }: AnswerContext): wording.AnswerContext => ({
  sheet: sheetWords(index.sheet),
  item,
  scales,
});

/** A number followed by its unit as the trade writes it: `6/32 in`, `14.1 V`. */
export const withUnit = (number: string, unit: keyof typeof UNITS): string =>
  plainSlash(number + formatUnit(unit));

export const quantity = (value: number, unit: keyof typeof UNITS): string =>
  withUnit(formatExact(value), unit);

export const faultText = (context: AnswerContext, fault: Fault): string =>
  plainSlash(wording.faultWords(fault, wordingContext(context)));

export const denialText = (context: AnswerContext, kind: string): string =>
  wording.denialWords(kind, wordingContext(context));

const isFaint = (answer: Answer): boolean => {
  switch (answer.kind) {
    case "working":
    case "presence":
      return answer.value === "not-known";
    case "choice":
      return answer.option === "not-known";
    case "not-fitted":
    case "not-seen":
      return true;
    default:
      return false;
  }
};

/** An answer in words, as every page and the command line say it, and how it is set. */
export const answerWords = (context: AnswerContext, answer: Answer): AnswerWords => ({
  text:
    answer.kind === "code" ? answer.text : plainSlash(wording.answerWords(answer, wordingContext(context))),
  code: answer.kind === "code",
  faint: isFaint(answer),
});
