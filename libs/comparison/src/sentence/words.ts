import type { Answer, AnswerOf, Fault } from "@evenhand/shared/answer";
import type { GradeScale } from "@evenhand/shared/report";
import type { Item, Sheet } from "@evenhand/shared/sheet";
import { mappedTo } from "@evenhand/sheet/grade-scale";
import { presenceWords } from "@evenhand/sheet/presence-words";
import { formatExact, formatNumber, formatUnit } from "../format-figure/index.ts";
import { CLAUSES, NOT_SEEN, PRESENCE, WORKING } from "./catalog.ts";
import { fill, list } from "./fill.ts";

/** One side's answer, with the scales its report describes. */
export type SideAnswer = { readonly answer: Answer; readonly scales: readonly GradeScale[] };

/** A kind of fault as the sheet names it. */
export const kindWords = (kind: string, sheet: Sheet): string =>
  sheet.faultKinds.find(({ id }) => id === kind)?.words.american ?? kind;

/** A spot as the item's drawing names it. */
const spotWords = (spot: string, item: Item, sheet: Sheet): string => {
  const drawing = sheet.drawings.find(({ id }) => id === item.faults?.drawing);
  return drawing?.cells.find(({ id }) => id === spot)?.words.american ?? spot;
};

const extentWords = ({ extent }: Fault): string =>
  extent === undefined ? "" : `, ${formatExact(extent.value)}${formatUnit(extent.unit)}`;

/** A fault with its spot: "corrosion at lower rear". */
export const faultAt = (kind: string, spot: string | undefined, item: Item, sheet: Sheet): string => {
  const fault = kindWords(kind, sheet);
  return spot === undefined ? fault : fill(CLAUSES.at, { fault, spot: spotWords(spot, item, sheet) });
};

/** A fault as one side wrote it: "corrosion at lower rear, 40 mm". */
export const faultWords = (fault: Fault, item: Item, sheet: Sheet): string =>
  faultAt(fault.kind, fault.spot, item, sheet) + extentWords(fault);

const faultsWords = ({ found, denied }: AnswerOf<"faults">, item: Item, sheet: Sheet): string => {
  const said = found.map((fault) => faultWords(fault, item, sheet));
  if (denied === "all" && found.length === 0) return CLAUSES.noneAtAll;
  const none =
    denied === "all" ? [] : denied.map((kind) => fill(CLAUSES.noneDenied, { kind: kindWords(kind, sheet) }));
  return said.length + none.length === 0 ? CLAUSES.nothingListed : list([...said, ...none]);
};

const readingWords = ({ values, unit }: AnswerOf<"reading">): string =>
  list(values.map(({ value }) => formatExact(value))) + formatUnit(unit);

const colorWords = ({ values }: AnswerOf<"color">): string =>
  list(
    values.map(({ L, a, b }) =>
      fill(CLAUSES.colorOf, { L: formatNumber(L, 1), a: formatNumber(a, 1), b: formatNumber(b, 1) }),
    ),
  );

const ownGradeWords = ({ scale, value }: AnswerOf<"grade">, scales: readonly GradeScale[]): string => {
  if (typeof value === "number") return `${formatExact(value)}%`;
  const own = scale === "house" ? undefined : scales.find(({ id }) => id === scale);
  return own?.grades.find(({ id }) => id === value)?.name ?? value.replaceAll("-", " ");
};

/**
 * A grade of the report's own by the name it gives, and what it is read as; a house grade, or one that has no name, by its id in
 * words.
 *
 * @example gradeWords({ kind: "grade", scale: "stars", value: "two" }, [threeStars]) // "two stars (read as even wear)"
 */
export const gradeWords = (answer: AnswerOf<"grade">, scales: readonly GradeScale[]): string => {
  const grade = ownGradeWords(answer, scales);
  const house = mappedTo(answer, scales).map((each) => each.replaceAll("-", " "));
  return house.length === 0 ? grade : fill(CLAUSES.readAs, { grade, house: house.join(CLAUSES.or) });
};

const optionWords = ({ option, also = [] }: AnswerOf<"choice">, item: Item): string =>
  [option, ...also]
    .map((said) => item.choice?.options.find(({ id }) => id === said)?.words.american ?? said)
    .join(", ");

/**
 * An answer as one reads it, in its own units and its own grades.
 *
 * @example describeAnswer({ answer: { kind: "working", value: "no" }, scales: [] }, horn, sheet) // "not working"
 */
export const describeAnswer = ({ answer, scales }: SideAnswer, item: Item, sheet: Sheet): string => {
  switch (answer.kind) {
    case "reading":
      return readingWords(answer);
    case "color":
      return colorWords(answer);
    case "grade":
      return gradeWords(answer, scales);
    case "working":
      return WORKING[answer.value];
    case "presence":
      return presenceWords(item, answer.value) ?? PRESENCE[answer.value];
    case "choice":
      return optionWords(answer, item);
    case "code":
      return answer.text;
    case "faults":
      return faultsWords(answer, item, sheet);
    case "not-fitted":
      return "not fitted";
    case "not-seen":
      return NOT_SEEN[answer.reason];
  }
};
