import type { Row } from "../grid/index.ts";
import { isBlank, isMark, outcomeOf } from "../outcome-words/index.ts";
import type { Outcome } from "../outcome-words/index.ts";
import { readValue } from "../read-value/index.ts";
import type { Value } from "../read-value/index.ts";
import type { Writing } from "../read-value/numbers.ts";
import type { Column } from "../table-columns/index.ts";
import { textAt } from "../table-plan/index.ts";
import type { Plan } from "../table-plan/index.ts";

const bad: Outcome = { says: "bad" };

const good: Outcome = { says: "good" };

/** An x beside ticks crosses out; one alone is a mark. */
export const crossed = (text: string, column: Column, plan: Plan, value: Value): Value => {
  if (!/^[xX]$/.test(text)) return value;
  return { ...value, outcome: plan.crossed.has(column.index) ? bad : good };
};

const NEGATIVE: ReadonlySet<Outcome["says"] | undefined> = new Set(["no", "bad", "not-applicable"]);

/** `No` under `Yes` says no. */
const contradicts = (own: Outcome | undefined, heading: Outcome | undefined): boolean =>
  NEGATIVE.has(own?.says) && heading !== undefined && !NEGATIVE.has(heading.says);

/** A cell under `OK`, `Fail` or `Fair`: a mark means the heading, a text says it itself beside what the heading says. */
const ticked = (text: string, column: Column, writing: Writing): Value => {
  const own = readValue(text, writing);
  if (column.grade !== undefined && (isMark(text) || text.toLowerCase() === column.grade.toLowerCase()))
    return { ...own, text: column.grade, outcome: column.outcome, numeric: false, numbers: undefined };
  if (contradicts(own.outcome, column.outcome)) return own;
  if (isMark(text) || (own.outcome !== undefined && own.outcome.says !== "unseen"))
    return {
      ...own,
      text: column.heading,
      outcome: column.outcome ?? own.outcome,
      numeric: false,
      numbers: undefined,
    };
  return { ...own, outcome: own.outcome ?? column.outcome };
};

/** What several cells of one row say of the same thing: the numbers of one, the verdict of another. */
const joined = (values: readonly Value[]): Value | undefined => {
  const [first] = values;
  if (first === undefined) return undefined;
  const numeric = values.find((value) => value.numeric);
  const words = values.filter((value) => !value.numeric);
  const worded = words.find(({ text }) => outcomeOf(text) === undefined) ?? words[0];
  const outcome = values.find((value) => value.outcome !== undefined)?.outcome;
  const remark = values.map((value) => value.remark).find((one) => one !== undefined);
  const hedged = values.find(({ firmness }) => firmness !== "asserted");
  return {
    text: worded?.text ?? first.text,
    numeric: numeric !== undefined,
    firmness: hedged?.firmness ?? "asserted",
    ...(outcome === undefined ? {} : { outcome }),
    ...(remark === undefined ? {} : { remark }),
    ...((numeric ?? worded)?.numbers === undefined ? {} : { numbers: (numeric ?? worded)?.numbers }),
  };
};

export type Said = { readonly value: Value; readonly column: number; readonly rated?: boolean | undefined };

/** Under `OK? Y/N` yes is good, whatever is asked: of a noise, that there is none. */
const judged = ({ heading }: Column, value: Value): Value => {
  const says = value.outcome?.says;
  if (!/\b(?:ok|okay|pass(?:es|ed)?)\b/i.test(heading) || (says !== "yes" && says !== "no")) return value;
  return { ...value, outcome: says === "yes" ? good : bad };
};

const RATING = /^\s*(?:rating|grade|score|marks?|points|codes?|class|category|status|verdict)\b/i;

/** `Rating 1-4`: its figures are marks, and what was measured stands elsewhere. */
const isRating = ({ heading }: Column, text: string): boolean =>
  RATING.test(heading) && /^\s*(?:\d{1,2}|[A-F])\s*$/.test(text);

/** `Fitted?`: no says that there is none, and yes no more than that the other columns say how it is. */
const FITTED = /^\s*(?:fitted|equipped|on (?:the )?car|has it|installed)\s*\??\s*$/i;

const fitted = (value: Value): Value | undefined =>
  value.outcome?.says === "no" ? { ...value, outcome: { says: "not-applicable" } } : undefined;

export const mainValue = (row: Row, plan: Plan, writing: Writing): Said | undefined => {
  const said = plan.columns.flatMap((column): Said[] => {
    const text = textAt(row, column);
    if (isBlank(text) || row.cells[column.index]?.under === "left") return [];
    if (column.role === "tick") return [{ value: ticked(text, column, writing), column: column.index }];
    if (column.role !== "value") return [];
    if (FITTED.test(column.heading)) {
      const none = fitted(readValue(text, writing));
      return none === undefined ? [] : [{ value: none, column: column.index }];
    }
    const value = judged(column, crossed(text, column, plan, readValue(text, writing)));
    return [{ value, column: column.index, rated: isRating(column, text) }];
  });
  const figures = said.filter(({ rated }) => rated !== true);
  const marks = said.filter(({ rated }) => rated);
  // `Battery | B | 12.5 V`: beside what was measured its mark says nothing more.
  const measured = figures.filter(
    ({ value: { numeric, numbers } }) => numeric && (numbers?.unit !== undefined || numbers?.of32 === true),
  );
  const value = joined((measured.length > 0 ? figures : [...figures, ...marks]).map((one) => one.value));
  if (value === undefined) return undefined;
  const column = (measured[0] ?? said[0])?.column ?? 0;
  return { value, column, rated: figures.length === 0 };
};

/** Words in a column of readings say something of them. */
export const isNoteIn = (role: Column["role"], text: string): boolean =>
  role === "note" || (role === "spot" && !/\d|^#/.test(text) && outcomeOf(text) === undefined);

/** Readings of one thing side by side, under `Inner | Middle | Outer` or `1 | 2 | 3`. */
export const spotReadings = (row: Row, plan: Plan, writing: Writing): Said | undefined => {
  const spots = plan.columns.filter(({ role }) => role === "spot");
  const said = spots.flatMap((column): Said[] => {
    const text = textAt(row, column);
    return isBlank(text) || isNoteIn(column.role, text)
      ? []
      : [{ value: readValue(text, writing), column: column.index }];
  });
  return ofAll(said);
};

/** Readings of one thing in several columns, as one value. */
export const severalIn = (row: Row, columns: readonly Column[], writing: Writing): Value => {
  const texts = columns.map((column) => textAt(row, column)).filter((text) => !isBlank(text));
  const said = texts.map((text) => ({ value: readValue(text, writing), column: 0 }));
  return ofAll(said)?.value ?? readValue("", writing);
};

const ofAll = (said: readonly Said[]): Said | undefined => {
  const [first] = said;
  if (first === undefined || said.length < 2) return first;
  const numbers = said.flatMap(({ value }) => (value.numbers === undefined ? [] : [value.numbers]));
  if (numbers.length < said.length) return first;
  const unit = numbers.map((one) => one.unit).find((one) => one !== undefined);
  const of32 = numbers.every((one) => one.of32 === true);
  const values = numbers.flatMap((one) => one.values);
  return {
    column: first.column,
    value: {
      ...first.value,
      numbers: { values, ...(unit === undefined ? {} : { unit }), ...(of32 ? { of32: true } : {}) },
    },
  };
};
