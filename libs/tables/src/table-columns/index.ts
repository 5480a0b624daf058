import type { Row } from "../grid/index.ts";
import { headingOf, headingsOf, isCount, withEndNamed } from "../headings/index.ts";
import type { Heading } from "../headings/index.ts";
import { isPlaceOnly, labelOf } from "../label/index.ts";
import { isBlank, isMark, outcomeOf } from "../outcome-words/index.ts";
import { isNumeric } from "../read-value/numbers.ts";
import { sectionsOf } from "../sections/index.ts";
import { findUnit } from "../unit-words/index.ts";

/** A column of a table: where it stands, what its headings say, and what it holds. `item`: its heading names what was looked at. */
export type Column = {
  readonly index: number;
  readonly heading: string;
  readonly role: Heading["role"] | "item" | "unknown";
  readonly outcome?: Heading["outcome"];
  readonly grade?: string;
  /** One of several readings under one heading: `Tread` over `inner`, `middle` and `outer`. */
  readonly ofSeveral?: true;
};

const textAt = (row: Row, index: number): string => row.cells[index]?.text ?? "";

/** The text of a heading at a column: all its rows, a blank one under a wider heading filled from the left. */
const headingAt = (headings: readonly Row[], index: number, last: Row): string => {
  const parts: string[] = [];
  for (const row of headings) {
    let text = textAt(row, index);
    if (text === "" && row !== last) text = fromLeft(row, index, last);
    if (text !== "" && !parts.includes(text)) parts.push(text);
  }
  return parts.join(" ");
};

const fromLeft = (row: Row, index: number, last: Row): string => {
  if (textAt(last, index) === "") return "";
  for (let left = index - 1; left > 0; left -= 1) {
    const text = textAt(row, left);
    if (text !== "") return text;
  }
  return "";
};

const roleOf = (heading: string, own: string): Heading | undefined => {
  const whole = headingOf(heading) ?? headingOf(own);
  return whole ?? (isCount(own) ? { role: "spot" } : undefined);
};

const SPOT_NAMES = /^(?:front|rear|left|right|top|bottom|upper|lower|cent(?:er|re)|middle|mid|\d{1,2})$/i;
const BETWEEN_ENDS = /^(?:cent(?:er|re)|middle|mid|2)$/i;

/** Columns that hold several readings of what a wider heading names, by that heading. */
const severalUnder = (headings: readonly Row[], width: number): ReadonlyMap<number, string> => {
  const [over, last] = headings.slice(-2);
  if (over === undefined || last === undefined) return new Map();
  const byHeading = new Map<string, number[]>();
  for (let index = 1; index < width; index += 1) {
    const name = textAt(over, index) || fromLeft(over, index, last);
    if (name !== "" && textAt(last, index) !== "" && textAt(last, index) !== name)
      byHeading.set(name, [...(byHeading.get(name) ?? []), index]);
  }
  return new Map(
    [...byHeading].flatMap(([name, indexes]) => {
      const own = indexes.map((index) => textAt(last, index).trim());
      const spots = own.every((text) => SPOT_NAMES.test(text) || headingOf(text)?.role === "spot");
      const between =
        own.some((text) => BETWEEN_ENDS.test(text)) || own.every((text) => headingOf(text)?.role === "spot");
      return own.length > 1 && spots && between && headingOf(name)?.role !== "label"
        ? indexes.map((index) => [index, name] as const)
        : [];
    }),
  );
};

export const columnsOf = (headings: readonly Row[], rows: readonly Row[]): Column[] => {
  const several = severalUnder(headings, Math.max(0, ...headings.map(({ cells }) => cells.length)));
  const width = Math.max(0, ...[...headings, ...rows].map(({ cells }) => cells.length));
  const last = headings.at(-1);
  const beside = headingsOf((last?.cells ?? []).map(({ text }) => text));
  return Array.from({ length: width }, (_, index) => {
    const named = several.get(index);
    if (named !== undefined)
      return { index, heading: named, role: "item" as const, ofSeveral: true as const };
    const heading = last === undefined ? "" : headingAt(headings, index, last);
    const own = headings.map((row) => textAt(row, index)).findLast((text) => text !== "") ?? "";
    const byRow = ["tick", "when"].includes(beside[index]?.role ?? "") ? beside[index] : undefined;
    const found = heading === "" ? undefined : (byRow ?? roleOf(heading, own));
    if (found === undefined) return { index, heading, role: "unknown" as const };
    return { index, heading: found.role === "when" ? withEndNamed(heading) : heading, ...found };
  });
};

const contentOf = (rows: readonly Row[], index: number): readonly string[] =>
  rows.flatMap((row) => {
    const cell = row.cells[index];
    return cell === undefined || cell.text === "" || cell.under === "left" ? [] : [cell.text];
  });

export const share = (texts: readonly string[], is: (text: string) => boolean): number =>
  texts.length === 0 ? 0 : texts.filter(is).length / texts.length;

const isShort = (text: string): boolean =>
  isBlank(text) || isMark(text) || isNumeric(text) || outcomeOf(text) !== undefined;

/** Whether a text names something that the sheet asks. */
export type NamesItem = (text: string) => boolean;

/** A first column of words is one of names, whatever its heading says (`Measured | Figure | Unit`, `Center | Reading`). */
const withLabels = (columns: readonly Column[], rows: readonly Row[]): readonly Column[] => {
  if (columns.some(({ role }) => role === "label")) return columns;
  const first = columns.find(({ role, index }) => role !== "ignored" && contentOf(rows, index).length > 0);
  if (first?.role !== "value" && first?.role !== "note" && first?.role !== "spot") return columns;
  if (share(contentOf(rows, first.index), isShort) >= 0.5) return columns;
  return columns.map((column) =>
    column === first ? { ...column, role: "label" as const, heading: "" } : column,
  );
};

/** `Corner: | Front left | Front right` and `Cylinder | 1 | 2`: the places stand across, and what is below the first word names. */
const placesAcross = (columns: readonly Column[], rows: readonly Row[]): readonly Column[] => {
  const [first, ...others] = columns;
  if (first?.role !== "place" || columns.some(({ role }) => role === "label")) return columns;
  const names = contentOf(rows, first.index);
  if (share(names, (text) => isShort(text) || isPlaceOnly(labelOf(text))) >= 0.5) return columns;
  const counts =
    /^\s*cyl/i.test(first.heading) && others.filter(({ heading }) => isCount(heading)).length >= 2;
  if (!counts && others.filter(({ role }) => role === "at").length < 2) return columns;
  return columns.map((column) => {
    if (column === first) return { ...column, role: "label" as const, heading: "" };
    return counts && isCount(column.heading)
      ? { ...column, role: "at" as const, heading: `cylinder ${column.heading.trim()}` }
      : column;
  });
};

/** `Engine | Oil level | OK`: of two columns of words before the answers the second names, the first groups. */
const withNames = (columns: readonly Column[], rows: readonly Row[]): readonly Column[] => {
  const labels = columns.filter(({ role }) => role === "label");
  const [group] = labels;
  if (labels.length !== 1 || group === undefined) return columns;
  const next = columns[columns.indexOf(group) + 1];
  const answers = columns.some(({ role, index }) => index > (next?.index ?? 0) && ANSWERING.has(role));
  if (next?.role !== "unknown" || !answers) return columns;
  const [groups, names] = [contentOf(rows, group.index), contentOf(rows, next.index)];
  const isNames =
    names.length >= groups.length &&
    share(names, isShort) < SOME &&
    new Set(names).size > new Set(groups).size;
  return isNames
    ? columns.map((column) => (column === next ? { ...column, role: "label" as const } : column))
    : columns;
};

const ANSWERING: ReadonlySet<Column["role"]> = new Set(["value", "tick"]);
const SOME = 0.3;

/** `Cyl | Dry psi | Leak %`: rows are cylinders, and no column names them. */
export const ofCylinders = (columns: readonly Column[]): boolean =>
  columns.some(({ role, heading }) => role === "place" && /^\s*cyl/i.test(heading));

/** `Position | Size | PSI | Condition`: of places in rows each column says what was read there; what no heading names is of what stands above. */
const withPlacesNamed = (columns: readonly Column[], namesItem: NamesItem): readonly Column[] => {
  const place = columns.find(({ role }) => role === "place");
  if (place === undefined || columns.some(({ role }) => role === "label") || ofCylinders(columns))
    return columns;
  const named = columns.map((column) => {
    if (column.role !== "value") return column;
    if (namesItem(column.heading)) return { ...column, role: "item" as const };
    return findUnit(column.heading) === undefined ? column : { ...column, role: "when" as const };
  });
  const items = named.filter(
    ({ role, heading }) => role === "item" || (role === "unknown" && namesItem(heading)),
  );
  return items.length > 0
    ? named.map((column) => (column.role === "place" ? { ...column, role: "label" as const } : column))
    : named;
};

/** `Area | What I found`: what stands beside a name and nothing else is what is said of it. */
const withValues = (columns: readonly Column[], rows: readonly Row[]): readonly Column[] => {
  const held = columns.filter(({ index, role }) => role !== "ignored" && contentOf(rows, index).length > 0);
  const [label, note] = held;
  const isNamed = label?.role === "label" || label?.role === "unknown";
  return held.length === 2 && isNamed && note?.role === "note"
    ? columns.map((column) => (column === note ? { ...column, role: "value" as const } : column))
    : columns;
};

const TROUBLE = /^\s*(?:faults?|defects?|issues?|problems?|deviations?|faults? found)\s*$/i;

/** `Good | Fault | Not checked`: a column of remarks by its heading that holds nothing but marks is one of ticks. */
const withFaultsTicked = (columns: readonly Column[], rows: readonly Row[]): readonly Column[] =>
  columns.map((column) => {
    if (column.role !== "note" || !TROUBLE.test(column.heading)) return column;
    const texts = contentOf(rows, column.index);
    return texts.length > 0 && texts.every(isMark)
      ? { ...column, role: "tick" as const, outcome: { says: "bad" as const } }
      : column;
  });

/** Columns without a word of their own, by what they hold: names to the left, then values, then notes. */
export const byContent = (own: readonly Column[], rows: readonly Row[], namesItem: NamesItem): Column[] => {
  const across = withPlacesNamed(placesAcross(own, rows), namesItem);
  const columns = withFaultsTicked(withNames(withLabels(across, rows), rows), rows);
  const named = columns.some(({ role }) => role === "label");
  const cylinders = ofCylinders(columns);
  let label = named || cylinders;
  let placed = columns.some(
    ({ role }) => role === "value" || role === "tick" || role === "at" || role === "spot" || role === "when",
  );
  return withValues(columns, rows).map((column) => {
    if (column.role !== "unknown") return column;
    const texts = contentOf(rows, column.index);
    if (texts.length === 0) return column;
    // Beside columns of values the first one of words names what they are of, though its heading may name an item too.
    const isPart = !label && (placed || sectionsOf(column.heading).length > 0) && share(texts, isShort) < 0.5;
    const name = cylinders ? `cylinder ${column.heading}` : column.heading;
    if (column.heading !== "" && column.index > 0 && !isPart && namesItem(name))
      return { ...column, role: "item" as const };
    // `Condition | Meter (mils)`: figures in a unit of their own, beside what else is said of the same names.
    if (placed && label && labelOf(column.heading).unit !== undefined && share(texts, isNumeric) >= 0.5)
      return { ...column, role: "when" as const };
    if (!label && share(texts, isShort) < 0.5 && !named) {
      label = true;
      return { ...column, role: "label" as const };
    }
    if (column.heading !== "" && placed && share(texts, isShort) < 0.5)
      return { ...column, role: "note" as const };
    if (!placed) {
      placed = true;
      return { ...column, role: "value" as const };
    }
    return { ...column, role: "note" as const };
  });
};

/** Row numbers in the first column say nothing; a first column of places is one of names in which the places are. */
export const numbersAside = (columns: readonly Column[], rows: readonly Row[]): Column[] => {
  const first = columns.find(({ index }) => contentOf(rows, index).length > 0);
  if (first === undefined || first.heading !== "") return [...columns];
  const texts = contentOf(rows, first.index);
  const counts = texts.length >= 3 && share(texts, isCount) > 0.9;
  return columns.map((column) =>
    column === first && counts ? { ...column, role: "ignored" as const } : column,
  );
};

const signature = (columns: readonly Column[]): string =>
  columns
    .filter(({ heading }) => heading !== "")
    .map(({ role, heading }, at) =>
      at === 0 && role === "unknown"
        ? "label"
        : role === "unknown"
          ? "unknown"
          : `${role}:${role === "label" ? "" : heading.toLowerCase()}`,
    )
    .join("|");

/** Two or three tables side by side have the same headings again. */
export const sideBySide = (columns: readonly Column[]): readonly (readonly Column[])[] => {
  const headed = columns.filter(({ heading }) => heading !== "");
  for (const parts of [3, 2]) {
    const size = headed.length / parts;
    if (!Number.isInteger(size) || size < 2) continue;
    const groups = Array.from({ length: parts }, (_, at) => headed.slice(at * size, (at + 1) * size));
    if (
      new Set(groups.map(signature)).size === 1 &&
      groups.every((group) => group[0]?.role === "unknown" || group[0]?.role === "label")
    )
      return groups;
  }
  return [columns];
};

/** Whether a column's names are places, as where a row is a corner and the columns say what was read there. */
export const namesPlaces = (texts: readonly string[]): boolean => {
  const named = texts.filter((text) => !isBlank(text));
  return (
    named.length > 0 &&
    share(named, (text) => headingOf(text)?.role === "at" || labelOf(text).core.length === 0) >= 0.6
  );
};
