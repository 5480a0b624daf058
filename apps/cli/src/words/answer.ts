import { formatExact } from "@evenhand/comparison/format-figure";
import { gradeWords, notSeenWords } from "@evenhand/comparison/sentence";
import type { Answer, AnswerOf, Fault } from "@evenhand/shared/answer";
import type { GradeScale } from "@evenhand/shared/report";
import type { Item } from "@evenhand/shared/sheet";
import { presenceWords } from "@evenhand/sheet/presence-words";
import type { SheetWords } from "./sheet-words.ts";
import { catalog } from "./catalog.ts";
import { formatQuantity } from "./quantity.ts";

export type AnswerContext = {
  readonly sheet: SheetWords;
  readonly item: Item | undefined;
  /** Scales the report describes. */
  readonly scales: readonly GradeScale[];
};

const manyValues = 4;

const readingText = ({ unit, values }: AnswerOf<"reading">): string => {
  const numbers = values.map(({ value }) => value);
  if (numbers.length <= manyValues) return formatQuantity(numbers.map(formatExact).join(", "), unit);
  const range = `${formatExact(Math.min(...numbers))} to ${formatExact(Math.max(...numbers))}`;
  return `${formatQuantity(range, unit)} (${catalog.readings(numbers.length)})`;
};

const colorText = ({ values }: AnswerOf<"color">): string =>
  values.map(({ L, a, b }) => `L* ${formatExact(L)} a* ${formatExact(a)} b* ${formatExact(b)}`).join("; ");

/** One fault: kind, extent, spot. */
export const faultText = (fault: Fault, { sheet, item }: Omit<AnswerContext, "scales">): string => {
  const extent = fault.extent && formatQuantity(fault.extent.value, fault.extent.unit);
  const spot = fault.spot && sheet.spot(item, fault.spot);
  return [sheet.faultKind(fault.kind), extent, spot].filter((part) => part !== undefined).join(", ");
};

const faultsText = ({ found, denied }: AnswerOf<"faults">, context: AnswerContext): string => {
  const named = found.map((fault) => faultText(fault, context));
  if (denied === "all")
    return [...named, found.length > 0 ? catalog.nothingElse : catalog.noFaults].join("; ");
  const not = denied.map((kind) => catalog.noFaultOf(context.sheet.faultKind(kind)));
  return [...named, ...not].join("; ") || catalog.nothingSaid;
};

/**
 * An answer in words, with its own units.
 *
 * @example answerText({ kind: "working", value: "yes" }, context) // "works"
 */
export const answerText = (answer: Answer, context: AnswerContext): string => {
  switch (answer.kind) {
    case "reading":
      return readingText(answer);
    case "color":
      return colorText(answer);
    case "grade":
      return gradeWords(answer, context.scales);
    case "working":
      return catalog.working[answer.value];
    case "presence":
      return presenceWords(context.item, answer.value) ?? catalog.presence[answer.value];
    case "choice":
      return [answer.option, ...(answer.also ?? [])]
        .map((option) => context.sheet.option(context.item, option))
        .join(", ");
    case "code":
      return answer.text;
    case "faults":
      return faultsText(answer, context);
    case "not-fitted":
      return catalog.notFitted;
    case "not-seen":
      return catalog.notSeen(notSeenWords(answer.reason));
  }
};
