import { listed } from "@evenhand/message/listed";
import type { Answer, AnswerOf, Fault } from "@evenhand/shared/answer";
import type { GradeScale } from "@evenhand/shared/report";
import type { Item } from "@evenhand/shared/sheet";
import { mappedTo } from "@evenhand/sheet/grade-scale";
import { presenceWords } from "@evenhand/sheet/presence-words";
import { formatExact, formatNumber, formatUnit } from "../format-figure/index.ts";
import { say } from "../say/index.ts";
import type { SheetWords } from "../sheet-words/index.ts";
import { spelled } from "../sheet-words/index.ts";
import { terms } from "../terms/index.ts";

/** What an answer's words are made from beside the answer. */
export type AnswerContext = {
  readonly sheet: SheetWords;
  readonly item: Item | undefined;
  /** Scales the report describes. */
  readonly scales: readonly GradeScale[];
};

/** Alone in a row ("works"), or after "stated" and "found" in a sentence ("working"). */
export type AnswerForm = "row" | "said";

const isTerm = (id: string): id is keyof typeof terms => Object.hasOwn(terms, id);

/** More readings than a row holds are told by their range. */
const MOST_IN_A_ROW = 4;

/** Readings as they were written: "8 · 7", or in a sentence "8 and 7". */
export const readingWords = ({ unit, values }: AnswerOf<"reading">, form: AnswerForm): string => {
  const numbers = values.map(({ value }) => value);
  const each = numbers.map(formatExact);
  if (form === "said") return listed(each, "and") + formatUnit(unit);
  if (numbers.length <= MOST_IN_A_ROW) return each.join(" · ") + formatUnit(unit);
  const [low, high] = [Math.min(...numbers), Math.max(...numbers)].map(formatExact);
  const range = say("answer.range", { low: low ?? "", high: high ?? "" }) + formatUnit(unit);
  return say("answer.readings.many", { count: numbers.length, range });
};

const colorWords = ({ values }: AnswerOf<"color">, form: AnswerForm): string => {
  const each = values.map(({ L, a, b }) =>
    say("answer.color", { L: formatNumber(L, 1), a: formatNumber(a, 1), b: formatNumber(b, 1) }),
  );
  if (form === "said") return listed(each, "and");
  return say("answer.color.first", { color: each[0] ?? "", count: values.length });
};

const houseWords = (grade: string): string => {
  const id = `grade.${grade}`;
  return isTerm(id) ? terms[id] : spelled(grade);
};

const ownGradeWords = ({ scale, value }: AnswerOf<"grade">, scales: readonly GradeScale[]): string => {
  if (typeof value === "number") return formatExact(value) + formatUnit("%");
  const own = scale === "house" ? undefined : scales.find(({ id }) => id === scale);
  return own?.grades.find(({ id }) => id === value)?.name ?? houseWords(value);
};

/**
 * A grade of the report's own by the name it gives, and what it is read as; a house grade by its words.
 *
 * @example gradeWords({ kind: "grade", scale: "stars", value: "two" }, [threeStars]) // "two stars (here: even wear)"
 */
export const gradeWords = (answer: AnswerOf<"grade">, scales: readonly GradeScale[]): string => {
  const grade = ownGradeWords(answer, scales);
  const house = mappedTo(answer, scales).map(houseWords);
  return house.length === 0 ? grade : say("grade.read-as", { grade, house: listed(house, "or") });
};

type FaultContext = Omit<AnswerContext, "scales">;

/** A kind of fault with its spot: "corrosion at lower rear". */
export const faultAt = (kind: string, spot: string | undefined, { sheet, item }: FaultContext): string => {
  const fault = sheet.faultKind(kind);
  return spot === undefined ? fault : say("answer.fault.at", { fault, spot: sheet.spot(item, spot) });
};

/** A fault as one side wrote it: "corrosion at lower rear, 40 mm". */
export const faultWords = ({ kind, spot, extent }: Fault, context: FaultContext): string =>
  listed([
    faultAt(kind, spot, context),
    ...(extent === undefined ? [] : [formatExact(extent.value) + formatUnit(extent.unit)]),
  ]);

/** What is said not to be there: one kind of fault, or any. */
export const denialWords = (kind: string, { sheet }: Pick<AnswerContext, "sheet">): string =>
  kind === "all" ? say("answer.faults.none") : say("answer.faults.no", { kind: sheet.faultKind(kind) });

const faultsWords = (
  { found, denied }: AnswerOf<"faults">,
  context: AnswerContext,
  form: AnswerForm,
): string => {
  const said = found.map((fault) => faultWords(fault, context));
  if (denied !== "all") said.push(...denied.map((kind) => denialWords(kind, context)));
  else if (found.length === 0) said.push(say("answer.faults.none"));
  // In a sentence on one fault the rest is not what it is about.
  else if (form === "row") said.push(say("answer.faults.none-else"));
  if (said.length === 0) return say("answer.faults.nothing");
  return form === "row" ? listed(said, "semicolon") : listed(said, "and");
};

/**
 * An answer in words, in its own units and its own grades: the same wherever it is read.
 *
 * @param form alone in a row, or after "stated" or "found"
 * @example answerWords({ kind: "working", value: "intermittent" }, context) // "works now and then"
 * @example answerWords({ kind: "working", value: "intermittent" }, context, "said") // "working now and then"
 */
export const answerWords = (answer: Answer, context: AnswerContext, form: AnswerForm = "row"): string => {
  switch (answer.kind) {
    case "reading":
      return readingWords(answer, form);
    case "color":
      return colorWords(answer, form);
    case "grade":
      return gradeWords(answer, context.scales);
    case "working":
      return say(form === "row" ? `answer.working.${answer.value}` : `said.working.${answer.value}`);
    case "presence":
      return presenceWords(context.item, answer.value) ?? say(`answer.presence.${answer.value}`);
    case "choice":
      return listed(
        [answer.option, ...(answer.also ?? [])].map((option) => context.sheet.option(context.item, option)),
      );
    case "code":
      return answer.text;
    case "faults":
      return faultsWords(answer, context, form);
    case "not-fitted":
      return say("answer.not-fitted");
    case "not-seen": {
      const reason = say(`not-seen.${answer.reason}`);
      if (form === "row") return say("answer.not-seen", { reason });
      // "Torque boxes: unsafe" would say it of the boxes, and not of looking at them.
      return reason.startsWith("not ") ? reason : say("said.not-seen", { reason });
    }
  }
};
