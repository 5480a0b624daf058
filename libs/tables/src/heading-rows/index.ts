import type { Cell, Row } from "../grid/index.ts";
import { endOf, headingOf, headingsOf, isCount, LEAST, MOST } from "../headings/index.ts";
import type { Heading } from "../headings/index.ts";
import { outcomeOf } from "../outcome-words/index.ts";
import { isNumeric } from "../read-value/numbers.ts";
import { labelOf } from "../label/index.ts";
import { isFact } from "../row-words/index.ts";
import { sectionsOf } from "../sections/index.ts";

const textAt = (row: Row, index: number): string => row.cells[index]?.text ?? "";

export const filled = (row: Row): readonly { readonly cell: Cell; readonly index: number }[] =>
  row.cells.map((cell, index) => ({ cell, index })).filter(({ cell }) => cell.text.trim() !== "");

/** One text merged over the whole row is a title. */
export const isTitle = (row: Row): boolean => {
  const cells = filled(row);
  const own = cells.filter(({ cell }) => cell.under === undefined);
  return (
    own.length === 1 && (cells.length === 1 || cells.every(({ cell }) => cell.text === own[0]?.cell.text))
  );
};

const couldHead = (text: string): boolean =>
  text.length <= 60 &&
  !isNumeric(text) &&
  !/[!?]\s(?!\()/.test(text) &&
  !/[a-z]{4}\.\s/.test(text) &&
  !/^\d{4}-\d\d-\d\d/.test(text);

/** The numbers 1, 2, 3 … in a row count spots or cylinders. */
const countsUp = (texts: readonly string[]): boolean => {
  const counts = texts.filter(isCount).map(Number);
  return counts.length >= 2 && counts.every((count, at) => count === at + 1);
};

const STRONG: ReadonlySet<string> = new Set(["label", "value", "note", "unit", "place"]);

/** Whether a row heads columns: by the words that only headings have, or by places and counts side by side. */
export const isHeading = (row: Row): boolean => {
  const cells = filled(row).filter(({ cell }) => cell.under !== "above");
  const texts = cells.map(({ cell }) => cell.text);
  if (isTitle(row) || texts.length < 2) return false;
  const half = texts.length / 2;
  if (Number.isInteger(half) && half >= 2 && sameTwice(texts)) return headsColumns(texts.slice(0, half));
  return headsColumns(texts);
};

/** Two tables side by side: the second half has the roles of the first, and most of its words. */
const sameTwice = (texts: readonly string[]): boolean => {
  const half = texts.length / 2;
  return texts
    .slice(1, half)
    .every(
      (text, at) =>
        text.toLowerCase() === texts[half + at + 1]?.toLowerCase() && headingOf(text) !== undefined,
    );
};

/** A tick stands in a row, and heads nothing. */
const TICKED = /^[✓✔☑√✅✗✘☒❌]$/;

/** `Appraiser | T. Marrow | Location | a barn` are facts of the visit in pairs. */
const areFacts = (texts: readonly string[]): boolean =>
  texts.length >= 4 &&
  texts.length % 2 === 0 &&
  texts.every((text, at) => (at % 2 === 0 ? isFact(text) : headingOf(text) === undefined));

const headsColumns = (texts: readonly string[]): boolean => {
  if (areFacts(texts)) return false;
  if (texts.some((text) => TICKED.test(text.trim()))) return false;
  // `Horn | A | works` is a row with its grade.
  if (texts.length <= 3 && texts.filter((text) => /^[A-F]$/.test(text.trim())).length === 1) return false;
  const roles = headingsOf(texts);
  if (
    countsUp(texts) &&
    texts.every((text, at) => isCount(text) || roles[at] !== undefined || (at === 0 && couldHead(text)))
  )
    return texts.filter(isCount).length >= 3 || texts.every(isCount);
  // `Tyre pressure | LF | 30 | psi` is a row with its figure.
  if (!texts.every(couldHead)) return false;
  if (saysTwice(texts, roles) || saysNothing(roles)) return false;
  const of = (role: string): number => roles.filter((one) => one?.role === role).length;
  const ticks = new Set(roles.flatMap((one, at) => (one?.role === "tick" ? [texts[at]?.toLowerCase()] : [])));
  const strong = roles.filter((one) => one !== undefined && STRONG.has(one.role)).length;
  const [ats, spots, known] = [of("at"), of("spot"), roles.filter((one) => one !== undefined).length];
  const firstIsName =
    roles[0] === undefined || roles[0].role === "label" || sectionsOf(texts[0] ?? "").length > 0;
  if (
    ticks.size >= 2 &&
    ticks.size === of("tick") &&
    known >= texts.length - 1 &&
    (firstIsName || ticks.size >= 3 || strong > 0)
  )
    return true;
  if (ats >= 2 && known >= texts.length - 1 && distinctAts(texts) && ticks.size === 0) return true;
  if (arePaired(texts) && known >= texts.length - 1) return true;
  if (spots >= 2 && known >= texts.length - 1) return true;
  if (opensList(texts)) return true;
  if (strong >= 2) return !texts.some((text, at) => roles[at] === undefined && isValueWord(text));
  // `Electrics | Isolator | Works` is a row: what may answer as well heads nothing alone.
  if (strong === 1 && texts.some((text) => ANSWERS_AS_WELL.test(text.trim()))) return false;
  if (strong >= 1 && ticks.size >= 1) return true;
  return strong >= 1 && texts.length >= 2 && firstHeads(texts, roles);
};

const ANSWERS_AS_WELL = /^(?:works?|working|present|found|fitted|installed|checked|observed|level)$/i;

/** `Cold | Hot`, `Before road | After road`: the two ends of one. */
const PAIRS: readonly (readonly [RegExp, RegExp])[] = [
  [/^cold$/i, /^(?:hot|warm)$/i],
  [/^dry$/i, /^wet$/i],
  [/^before\b/i, /^after\b/i],
  [LEAST, MOST],
];

const arePaired = (texts: readonly string[]): boolean =>
  PAIRS.some((pair) => pair.every((word) => texts.filter((text) => word.test(endOf(text))).length === 1));

/** `Lamp: | Headlamp L | Headlamp R | Stop L`: a name with a colon over names. */
const opensList = ([first = "", ...rest]: readonly string[]): boolean =>
  /^[A-Za-z ]{3,20}:$/.test(first.trim()) &&
  rest.length >= LEAST_LISTED &&
  rest.every((text) => text.length <= 30 && !text.includes(":") && !isValueWord(text));

const LEAST_LISTED = 3;

/** `Window | works | works | slow` is a row: a heading says each answer once, but where it names the items twice too. */
const saysTwice = (texts: readonly string[], roles: readonly (Heading | undefined)[]): boolean => {
  const said = (role: string): readonly string[] =>
    texts.flatMap((text, at) => (roles[at]?.role === role ? [text.trim().toLowerCase()] : []));
  const answers = [...said("value"), ...said("tick")];
  return new Set(answers).size < answers.length && said("label").length < 2;
};

/** `Radio | N/A | none fitted` is a row: beside what was not looked at a heading has what was. */
const saysNothing = (roles: readonly (Heading | undefined)[]): boolean => {
  const ticks = roles.filter((one) => one?.role === "tick");
  return (
    ticks.length > 0 &&
    ticks.every((one) => one?.outcome?.says === "not-applicable" || one?.outcome?.says === "unseen")
  );
};

/** `Tread | left front | right front`: each place once. */
const distinctAts = (texts: readonly string[]): boolean => {
  const places = texts
    .filter((text) => headingOf(text)?.role === "at")
    .map((text) => text.trim().toLowerCase());
  return new Set(places).size === places.length || places.length >= 4;
};

const isValueWord = (text: string): boolean =>
  outcomeOf(text) !== undefined ||
  (labelOf(text).unit === undefined && /\d/.test(text.replaceAll(/[([].*?[)\]]/g, "")));

/** `Engine | Reading`, `Wheels | Tread (mm) | … | Notes`: a name, names, and one word that only a heading has. */
const firstHeads = (texts: readonly string[], roles: readonly (Heading | undefined)[]): boolean => {
  const [first = ""] = texts;
  // `10 | Oil gauge | Works` is a row with its number.
  if (isCount(first)) return false;
  const strongFirst = roles[0] !== undefined && STRONG.has(roles[0].role);
  if (strongFirst && texts.length === 2 && roles[1] === undefined) return false;
  const rest = texts.slice(1).filter((_, at) => roles[at + 1] === undefined);
  const names = rest.every((text) => !isValueWord(text) && text.length <= 30);
  const lone = texts.length === 2 && roles[1]?.role === "note" && sectionsOf(first).length === 0;
  return names && !lone && (sectionsOf(first).length > 0 || roles[0] !== undefined || rest.length >= 2);
};

/** The row over a heading belongs to it where it spans columns and is no title. */
export const spansColumns = (row: Row | undefined, heading: Row): boolean => {
  if (row === undefined || row.number !== heading.number - 1 || isTitle(row)) return false;
  const cells = filled(row);
  if (!cells.some(({ cell }) => cell.under === "left")) return false;
  return cells.every(({ cell }) => couldHead(cell.text) && outcomeOf(cell.text) === undefined);
};

/** `Electrical | Horn | Works` below `Electrical | Battery | 12.5 V`: the same words in front again are a row more. */
export const goesOn = (
  { headings, rows }: { readonly headings: readonly Row[]; readonly rows: readonly Row[] },
  before: Row | undefined,
  row: Row,
): boolean => {
  const first = textAt(row, 0).trim().toLowerCase();
  return (
    headings.length > 0 &&
    rows.length > 0 &&
    before !== undefined &&
    first !== "" &&
    row.cells[0]?.under === undefined &&
    filled(row).length > 1 &&
    textAt(before, 0).trim().toLowerCase() === first
  );
};

/** A second row of headings: counts or places under a wider one, or what stands in it repeats the one above it. */
export const underHeading = (
  { headings, rows }: { readonly headings: readonly Row[]; readonly rows: readonly Row[] },
  row: Row,
): boolean => {
  if (headings.length === 0 || rows.length > 0) return false;
  const own = filled(row).filter(({ cell }) => cell.under !== "above");
  if (own.length < 1) return false;
  return countsUp(own.map(({ cell }) => cell.text)) && own.every(({ cell }) => isCount(cell.text));
};

/** Whether texts are all such as answer, and as head columns of ticks as well: `Yes`, `No`, `Good`. */
export const headsByTicks = (texts: readonly string[]): boolean =>
  headingsOf(texts).every((one) => one?.role === "tick");
