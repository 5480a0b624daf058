import type { FindingInput } from "@evenhand/shared/finding";
import type { GradeScale } from "@evenhand/shared/report";
import type { RefusedBecause } from "../propose/reading.ts";
import type { Aside } from "../grid/index.ts";

/** A finding that a row proposes. `sure`: nothing about it is for a person to settle. */
export type ProposedFinding = {
  readonly finding: FindingInput;
  readonly confidence: number;
  readonly sure: boolean;
  /** The cell it was read from, counted from 0; -1 where only a note said it. */
  readonly column: number;
  /** What the sheet calls the line (`lineName`), by which it is known once somebody has settled it. */
  readonly line: string;
};

/** Something in a row that became no finding, and why. */
export type RefusedClaim = {
  readonly why: RefusedBecause;
  readonly column: number;
  readonly line: string;
  /** The item it seems to be of. */
  readonly item?: string;
};

/** What a row is that holds no finding: a heading, a fact of the visit, a remark, or a name with nothing beside it. */
export type NoteKind = "heading" | "fact" | "remark" | "left-blank";

/** What became of one row. */
export type RowOutcome = {
  /** Which of the file's worksheets. */
  readonly grid: string;
  readonly row: number;
  /** What stands in it, cells parted by a bar. */
  readonly text: string;
  readonly end: "finding" | "note" | "refused";
  readonly findings: readonly ProposedFinding[];
  readonly refused: readonly RefusedClaim[];
  readonly note?: NoteKind;
};

/** A whole file as a draft: every row that holds something, and what became of it. */
export type TableDraft = {
  readonly rows: readonly RowOutcome[];
  /** Scales its grades are on, beside the house's. */
  readonly scales: readonly GradeScale[];
  readonly aside: readonly Aside[];
};
