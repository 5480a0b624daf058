import type { VehicleForm } from "@evenhand/shared/report";
import type { Item, Sheet } from "@evenhand/shared/sheet";
import type { Book } from "../grid/index.ts";
import { itemsNamed } from "../item-names/index.ts";
import { notedNumbers } from "../answer-of/reading.ts";
import { labelOf } from "../label/index.ts";
import type { Label } from "../label/index.ts";
import { letterGradesOf } from "../letter-grades/index.ts";
import type { LetterGrades } from "../letter-grades/index.ts";
import { lineName } from "../line-name/index.ts";
import { propose } from "../propose/index.ts";
import type { Proposal, Reading } from "../propose/reading.ts";
import { proposeSettled } from "../propose/settled.ts";
import type { SettledLine } from "../propose/settled.ts";
import { outcomeOf } from "../outcome-words/index.ts";
import type { Outcome } from "../outcome-words/index.ts";
import { legendOf, marksOf } from "../legends/index.ts";
import { readValue } from "../read-value/index.ts";
import { settlePlaces } from "../settle-places/index.ts";
import type { Claim } from "../table-claims/index.ts";
import { Ends, inOrder } from "./ends.ts";
import type { Ended } from "./ends.ts";
import type { RowOutcome, TableDraft } from "./outcome.ts";
import { rowsOf, rowText } from "./rows.ts";
import type { ReadRow } from "./rows.ts";
import { isOfOthers, taken } from "./taken.ts";
import type { Asked } from "./taken.ts";
import { writingOf } from "./writing.ts";

/** What is known beforehand. */
export type TableContext = {
  /** With the car's form, positions it does not have are never meant. */
  readonly form?: VehicleForm;
  /** Lines of this inspector's sheets that were settled by hand, by their names (`lineName`). */
  readonly settled?: ReadonlyMap<string, SettledLine>;
};

/** Before the first heading only what names an item outright is one: a client's name is no code. */
const PREAMBLE_FIT = 0.8;

const inPreamble = (proposal: Proposal): Proposal => {
  if (!proposal.ok) return proposal;
  const [best] = proposal.meant;
  return best !== undefined && best.confidence >= PREAMBLE_FIT ? proposal : { ok: false, why: "no-item" };
};

/** How well a heading must fit an item to be taken for one. */
const NAMES_ITEM = 0.55;

const proposalFor = (
  claim: Claim,
  read: ReadRow,
  reading: Omit<Reading, "around" | "sections">,
  settled: SettledLine | undefined,
): Proposal => {
  const whole = { ...reading, around: read.around, sections: read.sections };
  const known = settled === undefined ? undefined : proposeSettled(claim, settled, whole);
  if (known !== undefined) return known;
  const proposal = propose(claim, whole);
  return read.preamble ? inPreamble(proposal) : proposal;
};

/** What a sheet says of its own letters. */
type Explained = {
  readonly marks: ReadonlyMap<string, Outcome>;
  readonly letters: LetterGrades | undefined;
};

/** `NE | drums not removed`: the remark says why it was not seen. */
const reasoned = (outcome: Outcome, note: string): Outcome => {
  const noted = outcome.says === "unseen" ? outcomeOf(note) : undefined;
  return noted?.says === "unseen" ? noted : outcome;
};

/** A letter that the sheet explains says what it stands for: a grade, or good and bad. */
const marked = (claim: Claim, { marks, letters }: Explained): Claim => {
  const written = claim.value.text.trim().toLowerCase();
  const grade = letters?.names.get(written);
  if (letters !== undefined && grade !== undefined) {
    const { outcome: _outcome, ...value } = claim.value;
    return { ...claim, value: { ...value, text: grade, numeric: false }, scale: letters.scale, rated: true };
  }
  const outcome = /^\d$/.test(written) && claim.rated !== true ? undefined : marks.get(written);
  if (outcome === undefined) return claim;
  if (claim.note === "" || outcome.says === "unseen") {
    const { numbers: _numbers, ...value } = claim.value;
    return {
      ...claim,
      rated: false,
      value: { ...value, text: "", outcome: reasoned(outcome, claim.note), numeric: false },
    };
  }
  // What was seen says more than its mark.
  const seen = readValue(claim.note, { comma: false });
  return { ...claim, rated: false, value: { ...seen, outcome: seen.outcome ?? outcome } };
};

/** More figures than a cylinder has readings, and no more than an engine has cylinders. */
const [LEAST_CYLINDERS, MOST_CYLINDERS] = [3, 16];

/** `Cyl 1-4` numbers all of them, and none. */
const withoutRange = (label: Label): Label => {
  if (!/\d\s*(?:-|–|to)\s*\d/.test(label.text)) return label;
  const { number: _number, ...rest } = label;
  return rest;
};

/** Whether an item has a place for each cylinder. */
const isNumbered = (sheet: Sheet, item: Item | undefined): boolean =>
  sheet.positionSets.find(({ id }) => id === item?.positions)?.numbered !== undefined;

const BY_NUMBER = /(?:cyl(?:inder)?s?\.?\s*(?:no\.?\s*)?|#\s*)(\d{1,2})\s*[:=–-]?\s+(\d+(?:[.,]\d+)?)/gi;

/** `Cyl 1 120, cyl 2 118 psi`: each figure behind the number of its cylinder. */
const listedByNumber = (claim: Claim): readonly Claim[] => {
  const listed = Array.from(claim.value.text.matchAll(BY_NUMBER));
  if (listed.length < 2) return [];
  const unit = readValue(claim.value.text.replaceAll(BY_NUMBER, "$2"), { comma: false }).numbers?.unit;
  return listed.map(([, number = "", figure = ""]) => {
    const value = readValue(figure, { comma: false });
    const numbers = value.numbers ?? { values: [] };
    return {
      ...claim,
      where: [labelOf(`cylinder ${number}`)],
      value: { ...value, numbers: unit === undefined ? numbers : { ...numbers, unit } },
    };
  });
};

/** `Compressions | 165 160 165 162`: a figure for each cylinder, where nothing else says which. */
const ofEach = (claim: Claim, sheet: Sheet, around: readonly string[]): readonly Claim[] => {
  const [name] = claim.names;
  if (name === undefined || !isNumbered(sheet, itemsNamed(sheet, name, around)[0]?.item)) return [claim];
  const listed = listedByNumber(claim);
  if (listed.length > 0) return listed;
  const where = claim.where.map(withoutRange);
  if (where.some(({ number }) => number !== undefined)) return [claim];
  const numbers = claim.value.numbers ?? notedNumbers(claim.note);
  if (numbers === undefined) return [claim];
  const { length } = numbers.values;
  if (length < LEAST_CYLINDERS || length > MOST_CYLINDERS) return [claim];
  return numbers.values.map((value, at) => ({
    ...claim,
    where: [...where, labelOf(`cylinder ${String(at + 1)}`)],
    value: { ...claim.value, text: String(value), numbers: { ...numbers, values: [value] } },
  }));
};

const askAll = (
  book: Book,
  reading: Omit<Reading, "around" | "sections">,
  settled: NonNullable<TableContext["settled"]>,
): {
  readonly asked: Asked[];
  readonly rows: readonly { readonly grid: string; readonly read: ReadRow }[];
} => {
  const writing = writingOf(book);
  const namesItem = (text: string): boolean =>
    (itemsNamed(reading.sheet, labelOf(text), [])[0]?.fit ?? 0) >= NAMES_ITEM;
  const rows = book.grids.flatMap((grid) =>
    rowsOf(grid, writing, namesItem).map((read) => ({ grid: grid.name, read })),
  );
  const explained = { marks: marksOf(book.grids), letters: letterGradesOf(book.grids) };
  const ask = (grid: string, read: ReadRow, claim: Claim): Asked => {
    const line = lineName(claim, read.around);
    return { claim, grid, read, line, proposal: proposalFor(claim, read, reading, settled.get(line)) };
  };
  const asked = rows.flatMap(({ grid, read }) =>
    read.claims
      .flatMap((said) => ofEach(said, reading.sheet, read.around))
      .map((said) => marked(said, explained))
      .flatMap((claim) => taken(claim, { ask: (one) => ask(grid, read, one), sheet: reading.sheet })),
  );
  return { asked, rows };
};

const rowOutcome = (grid: string, read: ReadRow, ended: Ended | undefined): RowOutcome => {
  const base = { grid, row: read.row.number, text: rowText(read.row) };
  const { findings = [], refused = [] } = ended ?? {};
  if (findings.length > 0) return { ...base, end: "finding", findings, refused };
  if (read.note !== undefined) return { ...base, end: "note", findings, refused: [], note: read.note };
  const silent = refused.every(({ why }) => why === "nothing-said");
  if (read.preamble || silent)
    return { ...base, end: "note", findings, refused, note: silent ? "left-blank" : "fact" };
  const unnamed = read.listed && refused.every(({ why }) => why === "no-item");
  if (unnamed || read.claims.every(({ fromNote }) => fromNote))
    return { ...base, end: "note", findings, refused, note: "remark" };
  return { ...base, end: "refused", findings, refused };
};

const noneSettled: NonNullable<TableContext["settled"]> = new Map();

/** `Lorimer 8 (RHD)`: nothing where a sheet says neither, or both. */
const saysRightHandDrive = ({ grids }: Book): boolean | undefined => {
  const says = (words: RegExp): boolean =>
    grids.some(({ rows }) =>
      rows.slice(0, HEAD_ROWS).some(({ cells }) => cells.some(({ text }) => words.test(text))),
    );
  const [right, left] = [says(/\bRHD\b|\bright[- ]hand drive\b/i), says(/\bLHD\b|\bleft[- ]hand drive\b/i)];
  return right === left ? undefined : right;
};

const saysBonnet = ({ grids }: Book): boolean =>
  grids.some(({ rows }) => rows.some(({ cells }) => cells.some(({ text }) => /\bbonnet\b/i.test(text))));

/** Rows in which the car is named. */
const HEAD_ROWS = 12;

/**
 * Reads a file of tables as the draft of a report: headings found, columns and rows lined up with the sheet's items by the lexicon, each
 * finding with how sure it is. Every row that holds something ends as finding, note or refused with a reason; none is dropped.
 *
 * @param context what is known of the car, and what was settled of this inspector's sheets
 * @returns time linear in the number of rows
 */
export const readTable = (book: Book, sheet: Sheet, context: TableContext = {}): TableDraft => {
  const faultKinds = new Map(sheet.faultKinds.map((kind) => [kind.id, kind]));
  const legend = legendOf(book.grids);
  const { asked, rows } = askAll(
    book,
    {
      sheet,
      faultKinds,
      form: context.form,
      scale: legend,
      rightHandDrive: saysRightHandDrive(book),
      saysBonnet: saysBonnet(book),
    },
    context.settled ?? noneSettled,
  );
  const settled = settlePlaces(
    asked.flatMap(({ claim, proposal }, at) =>
      proposal.ok && !isOfOthers(claim) ? [{ at, meant: proposal.meant }] : [],
    ),
  );
  const ends = new Ends();
  const answering = asked.map((one, at) => ({
    one,
    meant: isOfOthers(one.claim) && one.proposal.ok ? one.proposal.meant[0] : settled.get(at),
  }));
  for (const { one, meant } of inOrder(answering)) ends.add(one, meant);
  return {
    rows: rows.map(({ grid, read }) => rowOutcome(grid, read, ends.byRow.get(read))),
    scales: [...ends.scales.values()],
    aside: book.aside,
  };
};

export type { SettledLine } from "../propose/settled.ts";
export type { RowOutcome, TableDraft } from "./outcome.ts";
