import { UNSURE_BELOW } from "@evenhand/captions/draft-report";
import type { Finding } from "@evenhand/shared/finding";
import type { SheetReading, SpokenReading } from "@evenhand/shared/http/readings";
import type { GradeScale } from "@evenhand/shared/report";
import type { KeptReading } from "../../offline/store";

/** Why a proposal wants a look. `why` is the service's own sentence. */
export type Doubt =
  | { readonly is: "inferred" }
  | { readonly is: "heard"; readonly words: string }
  | { readonly is: "unsure" }
  | { readonly is: "refused" | "problem"; readonly why: string };

/** What may become a finding once somebody has said so; without a finding it is settled by hand or not at all. */
export interface Proposal {
  readonly key: string;
  readonly finding: Finding | null;
  /** The item it seems to be of, where it is no finding. */
  readonly item: string | null;
  /** 0 to 1; 0 where nothing was read. */
  readonly confidence: number;
  readonly doubts: readonly Doubt[];
  /** What the firm's sheet calls the line; `null` of what was spoken. */
  readonly line: string | null;
  /** The line was settled by hand before. */
  readonly settled: boolean;
  /** Where in the whole text its words stand. */
  readonly said: { readonly start: number; readonly end: number } | null;
}

/** A stretch of the text or a row of the sheet, with what was made of it. */
export interface Block {
  readonly key: string;
  readonly text: string;
  /** Where in the whole text it begins. */
  readonly start: number;
  /** Second of the recording; `null` of a sheet. */
  readonly second: number | null;
  readonly row: { readonly grid: string; readonly number: number } | null;
  /** What a row is that holds no finding. */
  readonly note: string | null;
  readonly proposals: readonly Proposal[];
}

export interface Review {
  readonly of: "spoken" | "sheet";
  readonly blocks: readonly Block[];
  readonly unmentioned: readonly string[];
  readonly scales: readonly GradeScale[];
  readonly aside: readonly string[];
}

const problemDoubt = (problem: string | null): readonly Doubt[] =>
  problem === null ? [] : [{ is: "problem", why: problem }];

const unsureDoubt = (unsure: boolean): readonly Doubt[] => (unsure ? [{ is: "unsure" }] : []);

type Remark = SpokenReading["remarks"][number];

const spokenProposal = (
  { finding, confidence, inferred, heard, problem, start, end }: Remark,
  at: number,
): Proposal => ({
  key: `said-${at}`,
  finding,
  item: finding.item,
  confidence,
  doubts: [
    ...(inferred ? [{ is: "inferred" } as const] : []),
    ...heard.map((words) => ({ is: "heard", words }) as const),
    ...unsureDoubt(confidence < UNSURE_BELOW),
    ...problemDoubt(problem),
  ],
  line: null,
  settled: false,
  said: { start, end },
});

/** Captions as they were read, stretch by stretch. */
const spokenReview = ({ text, passages, remarks, unmentioned }: SpokenReading): Review => {
  const proposals = remarks.map(spokenProposal);
  const blocks = passages.map(({ start, end, second }, at): Block => {
    const next = passages[at + 1]?.start ?? Number.POSITIVE_INFINITY;
    return {
      key: `at-${start}`,
      text: text.slice(start, end),
      start,
      second,
      row: null,
      note: null,
      proposals: proposals.filter(({ said }) => said !== null && said.start >= start && said.start < next),
    };
  });
  return { of: "spoken", blocks, unmentioned, scales: [], aside: [] };
};

type SheetRow = SheetReading["rows"][number];

const rowProposals = ({ findings, refused, end }: SheetRow, key: string): readonly Proposal[] => [
  ...findings.map(({ finding, confidence, sure, line, settled, problem }, at): Proposal => ({
    key: `${key}-${at}`,
    finding,
    item: finding.item,
    confidence,
    doubts: [...unsureDoubt(!sure), ...problemDoubt(problem)],
    line,
    settled,
    said: null,
  })),
  // Of a row that is a note, what it does not say is no question to anybody.
  ...(end === "note" ? [] : refused).map(({ reason, item, line }, at): Proposal => ({
    key: `${key}-refused-${at}`,
    finding: null,
    item,
    confidence: 0,
    doubts: [{ is: "refused", why: reason }],
    line,
    settled: false,
    said: null,
  })),
];

/** A sheet as it was read, row by row. */
const sheetReview = ({ rows, scales, aside }: SheetReading): Review => ({
  of: "sheet",
  blocks: rows.map((row, at) => {
    const key = `row-${at}`;
    return {
      key,
      text: row.text,
      start: 0,
      second: null,
      row: { grid: row.grid, number: row.row },
      note: row.end === "note" ? row.note : null,
      proposals: rowProposals(row, key),
    };
  }),
  unmentioned: [],
  scales,
  aside,
});

/** What the service read, as it is gone through. */
export const reviewOf = (read: KeptReading["read"]): Review =>
  read.of === "spoken" ? spokenReview(read.reading) : sheetReview(read.reading);
