import type { FindingInput } from "@evenhand/shared/finding";
import type { GradeScale, VehicleForm } from "@evenhand/shared/report";
import type { Item, Sheet } from "@evenhand/shared/sheet";
import type { Book } from "../grid/index.ts";
import { exceptedParts } from "../cell-parts/exceptions.ts";
import { factsIn, placedParts } from "../cell-parts/index.ts";
import { itemsNamed } from "../item-names/index.ts";
import { notedNumbers } from "../answer-of/reading.ts";
import { labelOf } from "../label/index.ts";
import type { Label } from "../label/index.ts";
import { letterGradesOf } from "../letter-grades/index.ts";
import type { LetterGrades } from "../letter-grades/index.ts";
import { lineName } from "../line-name/index.ts";
import { propose } from "../propose/index.ts";
import type { Meant, Proposal, Reading } from "../propose/reading.ts";
import { proposeSettled } from "../propose/settled.ts";
import type { SettledLine } from "../propose/settled.ts";
import type { Outcome } from "../outcome-words/index.ts";
import { legendOf, marksOf } from "../row-words/index.ts";
import { readValue } from "../read-value/index.ts";
import { settlePlaces } from "../settle-places/index.ts";
import type { Claim } from "../table-claims/index.ts";
import type { ProposedFinding, RefusedClaim, RowOutcome, TableDraft } from "./outcome.ts";
import { rowsOf, rowText } from "./rows.ts";
import type { ReadRow } from "./rows.ts";
import { writingOf } from "./writing.ts";

/** What is known beforehand. */
export type TableContext = {
  /** With the car's form, positions it does not have are never meant. */
  readonly form?: VehicleForm;
  /** Lines of this inspector's sheets that were settled by hand, by their names (`lineName`). */
  readonly settled?: ReadonlyMap<string, SettledLine>;
};

type Asked = {
  readonly line: string;
  readonly claim: Claim;
  readonly proposal: Proposal;
  readonly read: ReadRow;
  readonly grid: string;
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

/** A letter that the sheet explains says what it stands for: a grade, or good and bad. */
const marked = (claim: Claim, { marks, letters }: Explained): Claim => {
  const written = claim.value.text.trim().toLowerCase();
  const grade = letters?.names.get(written);
  if (letters !== undefined && grade !== undefined) {
    const { outcome: _outcome, ...value } = claim.value;
    return { ...claim, value: { ...value, text: grade, numeric: false }, scale: letters.scale, rated: true };
  }
  const outcome = marks.get(written);
  return outcome === undefined
    ? claim
    : { ...claim, value: { ...claim.value, text: "", outcome, numeric: false } };
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

/** `Compressions | 165 160 165 162`: a figure for each cylinder, where nothing else says which. */
const ofEach = (claim: Claim, sheet: Sheet, around: readonly string[]): readonly Claim[] => {
  const [name] = claim.names;
  if (name === undefined || !isNumbered(sheet, itemsNamed(sheet, name, around)[0]?.item)) return [claim];
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

const placesOf = ({ proposal }: Asked): readonly string[] => {
  const [best] = proposal.ok ? proposal.meant : [];
  return best === undefined ? [] : best.positions.map((position) => `${best.item.id} ${position}`);
};

/** Whether parts of a cell are of different things. */
const areDistinct = (parts: readonly Asked[]): boolean => {
  const all = parts.flatMap(placesOf);
  return new Set(all).size === all.length;
};

/** Whether parts of a cell are of different things, and at least two are understood. */
const areApart = (parts: readonly Asked[]): boolean =>
  parts.filter((part) => placesOf(part).length > 0).length > 1 && areDistinct(parts);

/** How well a part must fit to be taken out of its cell: no word of prose is an item. */
const PART_FIT = 0.5;

const fits = ({ claim, proposal }: Asked): boolean =>
  claim.value.outcome?.says !== "unseen" && proposal.ok && (proposal.meant[0]?.confidence ?? 0) >= PART_FIT;

/** A figure names its item by its unit as well; of words taken out of a cell a person says whether that is what they were of. */
const toSettle = (part: Asked): Asked =>
  !part.proposal.ok || part.claim.value.numbers !== undefined
    ? part
    : {
        ...part,
        proposal: { ...part.proposal, meant: part.proposal.meant.map((one) => ({ ...one, sure: false })) },
      };

const isUnplaced = ({ proposal }: Asked): boolean => !proposal.ok && proposal.why === "no-place";

const itemOf = ({ proposal }: Asked): string | undefined =>
  proposal.ok ? proposal.meant[0]?.item.id : proposal.item;

/** Parts that are understood, but those of which another part says something that is not: `solid, surface rust only`. */
const understoodOf = (facts: readonly Asked[]): readonly Asked[] => {
  const open = new Set(facts.filter((fact) => !fits(fact)).map(itemOf));
  return facts.filter((fact) => fits(fact) && !open.has(itemOf(fact)));
};

const answerIn = ({ proposal }: Asked): string =>
  JSON.stringify(proposal.ok ? [proposal.meant[0]?.answer, proposal.meant[0]?.positions] : []);

/** What a cell says as a whole, with what parts of it say of something else; where the whole says nothing, the parts by themselves. */
const withParts = (one: Asked, facts: readonly Asked[], ask: (claim: Claim) => Asked): readonly Asked[] => {
  const understood = understoodOf(facts);
  if (!one.proposal.ok)
    return understood.length > 0 && areDistinct(understood)
      ? [...understood, ...facts.filter((fact) => !understood.includes(fact)).map(leftOpen)]
      : [one];
  const more = understood.filter((fact) => itemOf(fact) !== itemOf(one) && placesOf(fact).length === 1);
  const apart = more.filter((fact) => answerIn(ask(without(one.claim, fact.claim))) === answerIn(one));
  return areDistinct([one, ...apart]) ? [one, ...apart] : [one];
};

/** A cell without one of its parts. */
const without = (claim: Claim, { value }: Claim): Claim => ({
  ...claim,
  value: readValue(claim.value.text.replace(value.text, " "), { comma: false }),
});

/** A part of a cell that is left to be settled, whatever it may be of. */
const leftOpen = (part: Asked): Asked => {
  const item = itemOf(part);
  const why = part.proposal.ok ? ("no-such-word" as const) : part.proposal.why;
  return { ...part, proposal: { ok: false, why, ...(item === undefined ? {} : { item }) } };
};

/** A cell as what it says of one thing, or of each of several. */
const taken = (claim: Claim, ask: (claim: Claim) => Asked): readonly Asked[] => {
  if (claim.names.length === 0) return [ask(claim)];
  const excepted = exceptedParts(claim).map(ask);
  const [rest] = excepted;
  if (rest?.proposal.ok === true) return excepted;
  const placed = placedParts(claim).map(ask);
  if (areApart(placed.filter(fits)) && !placed.some(isUnplaced)) return placed;
  const facts = factsIn(claim).map(ask).map(toSettle);
  return facts.every(fits) && areApart(facts) ? facts : withParts(ask(claim), facts, ask);
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
      .flatMap((claim) => taken(claim, (one) => ask(grid, read, one))),
  );
  return { asked, rows };
};

const noteFor = (claim: Claim): string | undefined => {
  const words = claim.value.numeric || claim.value.outcome !== undefined ? "" : claim.value.text;
  const note = [words, claim.note]
    .filter((text, at, all) => text !== "" && all.indexOf(text) === at)
    .join("; ");
  return note === "" ? undefined : note.slice(0, 4000);
};

const findingOf = (meant: Meant, position: string, claim: Claim): FindingInput => {
  const note = noteFor(claim);
  return {
    item: meant.item.id,
    ...(position === "" ? {} : { position }),
    answer: meant.answer,
    ...(claim.value.firmness === "asserted" ? {} : { firmness: claim.value.firmness }),
    ...(meant.answer.kind === "reading" ? { basis: "measured" as const } : {}),
    ...(note === undefined ? {} : { note }),
  };
};

type Ended = { readonly findings: ProposedFinding[]; readonly refused: RefusedClaim[] };

class Ends {
  private readonly taken = new Set<string>();
  /** Places of which something was said, by their set. */
  private readonly spoken = new Set<string>();
  readonly scales = new Map<string, GradeScale>();
  readonly byRow = new Map<ReadRow, Ended>();

  of(read: ReadRow): Ended {
    const ended = this.byRow.get(read) ?? { findings: [], refused: [] };
    this.byRow.set(read, ended);
    return ended;
  }

  /** Places not answered yet; of the others, those of which nothing else was said either. */
  private free({ item, positions }: Meant, ofOthers: boolean): readonly string[] {
    const free = positions.filter((position) => !this.taken.has(`${item.id} ${position}`));
    return ofOthers && free.length === positions.length
      ? positions.filter((position) => !this.spoken.has(`${item.positions ?? ""} ${position}`))
      : free;
  }

  /** One finding a place: what a later row says of the same is refused, never put over it. */
  add({ claim, read, line, proposal }: Asked, meant: Meant | undefined): void {
    const ended = this.of(read);
    if (!proposal.ok) {
      ended.refused.push({
        why: proposal.why,
        column: claim.column,
        line,
        ...(proposal.item === undefined ? {} : { item: proposal.item }),
      });
      return;
    }
    const ofOthers = claim.where.some(({ others }) => others);
    const free = meant === undefined ? [] : this.free(meant, ofOthers);
    if (ofOthers && free.length === meant?.positions.length) {
      ended.refused.push({ why: "no-place", column: claim.column, line, item: meant.item.id });
      return;
    }
    if (meant === undefined || free.length === 0) {
      const item = proposal.meant[0]?.item.id;
      ended.refused.push({
        why: "twice",
        column: claim.column,
        line,
        ...(item === undefined ? {} : { item }),
      });
      return;
    }
    if (meant.scale !== undefined) this.scales.set(meant.scale.id, meant.scale);
    for (const position of free) {
      this.taken.add(`${meant.item.id} ${position}`);
      this.spoken.add(`${meant.item.positions ?? ""} ${position}`);
      ended.findings.push({
        finding: findingOf(meant, position, claim),
        confidence: Math.round(Math.min(1, meant.confidence) * 100) / 100,
        sure:
          meant.sure &&
          (ofOthers || free.length === meant.positions.length) &&
          claim.value.firmness === "asserted",
        column: claim.column,
        line,
      });
    }
  }
}

const outcomeOf = (grid: string, read: ReadRow, ended: Ended | undefined): RowOutcome => {
  const base = { grid, row: read.row.number, text: rowText(read.row) };
  const { findings = [], refused = [] } = ended ?? {};
  if (findings.length > 0) return { ...base, end: "finding", findings, refused };
  if (read.note !== undefined) return { ...base, end: "note", findings, refused: [], note: read.note };
  const silent = refused.every(({ why }) => why === "nothing-said");
  if (read.preamble || silent)
    return { ...base, end: "note", findings, refused, note: silent ? "left-blank" : "fact" };
  if (read.claims.every(({ fromNote }) => fromNote))
    return { ...base, end: "note", findings, refused, note: "remark" };
  return { ...base, end: "refused", findings, refused };
};

const noneSettled: NonNullable<TableContext["settled"]> = new Map();

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
    { sheet, faultKinds, form: context.form, scale: legend },
    context.settled ?? noneSettled,
  );
  const settled = settlePlaces(
    asked.flatMap(({ proposal }, at) => (proposal.ok ? [{ at, meant: proposal.meant }] : [])),
  );
  const ends = new Ends();
  for (const [at, one] of asked.entries()) ends.add(one, settled.get(at));
  return {
    rows: rows.map(({ grid, read }) => outcomeOf(grid, read, ends.byRow.get(read))),
    scales: [...ends.scales.values()],
    aside: book.aside,
  };
};

export type { SettledLine } from "../propose/settled.ts";
export type { RowOutcome, TableDraft } from "./outcome.ts";
