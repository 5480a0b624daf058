import { z } from "zod";
import { SealReceipt } from "../chain.ts";
import { AnswerCost } from "../page-one.ts";
import { CostRow, CostTable } from "../cost-table.ts";
import { Currency } from "../currency.ts";
import { Instant, ItemId, LocalId, Money, ObjectId, PositionId, Sha256 } from "../identifier.ts";
import { Acknowledgement, DecisionDraft, StoredSummary, SummarySource } from "../summary.ts";
import { Created, CreatedDraft, Named, pageOf, PageQuery, Revision, type Contract } from "./paging.ts";

export const SummaryRequest = z.strictObject({});
export type SummaryRequest = z.infer<typeof SummaryRequest>;
export const SummaryCreated = z.strictObject({ id: ObjectId, hash: Sha256, receipt: SealReceipt });
export type SummaryCreated = z.infer<typeof SummaryCreated>;

/** Something the summary was made from that has a newer version now. `was: null`: there was none; `now: null`: there is none. */
export const Moved = z.strictObject({
  what: SummarySource.shape.what,
  id: ObjectId,
  was: z.string().nullable(),
  now: z.string().nullable(),
  /** Of a report: the findings that changed. */
  findings: z.array(z.strictObject({ item: ItemId, position: PositionId })).optional(),
});
export type Moved = z.infer<typeof Moved>;

export const DecisionKind = z.enum(["approve", "counter", "decline"]);
/** Until when an offer stands; left out, until it is answered or withdrawn. */
const Until = Instant.optional();
const Conditions = z.string().trim().min(1).max(4000).optional();
/** How an offer ended that nobody answered. */
export const OfferEnd = z.enum(["withdrawn", "lapsed"]);
export type OfferEnd = z.infer<typeof OfferEnd>;

/** `hash` is that of the summary as it was seen. A counter names a price, conditions or both. */
export const DecisionRequest = z.strictObject({
  decision: DecisionKind,
  hash: Sha256,
  acknowledgements: z.array(Acknowledgement).max(20).default([]),
  price: Money.optional(),
  conditions: Conditions,
  until: Until,
});
export type DecisionRequest = z.infer<typeof DecisionRequest>;

/** Acknowledgements are the buyer's own; the dealer gets none of them. */
export const Decision = z.strictObject({
  id: ObjectId,
  revision: Revision,
  vehicle: ObjectId,
  /** Not shown to the dealer. */
  summary: ObjectId.nullable(),
  decision: DecisionKind,
  hash: Sha256,
  acknowledgements: z.array(Acknowledgement),
  price: Money.nullable(),
  conditions: z.string().nullable(),
  /** Until when the buyer's offer stands. */
  until: Instant.nullable(),
  decidedAt: Instant,
  /** The dealer's; a counter has an offer of its own. */
  answer: z
    .strictObject({
      answer: z.enum(["accept", "refuse", "counter"]),
      note: z.string().nullable(),
      answeredAt: Instant,
      offer: z
        .strictObject({
          price: Money.nullable(),
          conditions: z.string().nullable(),
          until: Instant.nullable(),
        })
        .nullable(),
    })
    .nullable(),
  /** What the buyer said to the dealer's counter. */
  reply: z.strictObject({ reply: z.enum(["accept", "refuse"]), repliedAt: Instant }).nullable(),
  /** Where nobody answered: withdrawn by the buyer, or lapsed with its time. */
  ended: z.strictObject({ how: OfferEnd, at: Instant }).nullable(),
});
export type Decision = z.infer<typeof Decision>;

/** The draft of a decision, with the revision the next `PUT` matches. */
export const KeptDraft = z.strictObject({
  revision: z.int().nonnegative(),
  draft: DecisionDraft.nullable(),
});
export type KeptDraft = z.infer<typeof KeptDraft>;

export const SummarySeen = z.strictObject({
  id: ObjectId,
  comparison: ObjectId,
  vehicle: ObjectId,
  hash: Sha256,
  createdAt: Instant,
  /** Empty while the summary still tells how things stand. */
  moved: z.array(Moved),
  decision: Decision.nullable(),
  /** What was typed and chosen so far; revision 0 before anything was. */
  draft: KeptDraft,
});
export type SummarySeen = z.infer<typeof SummarySeen>;
export const SummaryRow = SummarySeen.omit({ moved: true, decision: true, draft: true }).extend({
  decision: DecisionKind.nullable(),
});
export type SummaryRow = z.infer<typeof SummaryRow>;

/** A counter back names a price, conditions or both, as the buyer's does. */
export const DecisionAnswer = z.strictObject({
  answer: z.enum(["accept", "refuse", "counter"]),
  note: z.string().trim().min(1).max(2000).optional(),
  price: Money.optional(),
  conditions: Conditions,
  until: Until,
});
export type DecisionAnswer = z.infer<typeof DecisionAnswer>;

/** The buyer takes or leaves the dealer's counter, or withdraws an offer of their own that is not answered. */
export const OfferReply = z.strictObject({ reply: z.enum(["accept", "refuse", "withdraw"]) });
export type OfferReply = z.infer<typeof OfferReply>;

export const SummaryQuery = PageQuery.extend({
  comparison: ObjectId.optional(),
  vehicle: ObjectId.optional(),
});
export type SummaryQuery = z.infer<typeof SummaryQuery>;
export const DecisionQuery = PageQuery.extend({ vehicle: ObjectId.optional() });
export type DecisionQuery = z.infer<typeof DecisionQuery>;

/** `revision: 0` and `table: null` before the buyer has set one; the first `PUT` matches `"0"`. */
export const CostTableSeen = z.strictObject({
  revision: z.int().nonnegative(),
  table: CostTable.nullable(),
});
export type CostTableSeen = z.infer<typeof CostTableSeen>;

const CostChange = z.strictObject({
  row: LocalId,
  words: z.string(),
  before: CostRow.nullable(),
  after: CostRow.nullable(),
});
/** The last twenty times a table was saved, the latest first, each with the rows that changed. */
export const CostTableHistory = z.strictObject({
  items: z.array(
    z.strictObject({
      revision: Revision,
      name: z.string(),
      currency: Currency,
      savedBy: z.string(),
      savedAt: Instant,
      changes: z.array(CostChange),
    }),
  ),
});
export type CostTableHistory = z.infer<typeof CostTableHistory>;

/** Tables of the firms that have reported on a car for this buyer, who may begin with one of them. */
export const CostTablesOffered = z.strictObject({
  items: z.array(z.strictObject({ firm: Named, table: CostTable })),
});
export type CostTablesOffered = z.infer<typeof CostTablesOffered>;

/** A thousand rows with their words. */
const costTableBytes = 512 * 1024;
/** What is said of every open matter, each in its own words. */
const decisionBytes = 256 * 1024;

export const summaryContracts = {
  "comparisons.cost": { costly: true, status: 200, answer: AnswerCost },
  "costTable.get": { status: 200, answer: CostTableSeen },
  "costTable.history": { status: 200, answer: CostTableHistory },
  "costTable.offered": { status: 200, answer: CostTablesOffered },
  "costTable.put": { body: CostTable, bodyBytes: costTableBytes, status: 200, answer: CostTableSeen },
  "summaries.create": { body: SummaryRequest, costly: true, status: 201, answer: SummaryCreated },
  "summaries.list": { query: SummaryQuery, status: 200, answer: pageOf(SummaryRow) },
  "summaries.get": { status: 200, answer: SummarySeen },
  "summaries.document": { status: 200, answer: StoredSummary },
  "summaries.draft": { body: DecisionDraft, bodyBytes: decisionBytes, status: 200, answer: KeptDraft },
  "summaries.decide": { body: DecisionRequest, bodyBytes: decisionBytes, status: 201, answer: Created },
  "decisions.list": { query: DecisionQuery, status: 200, answer: pageOf(Decision) },
  "decisions.get": { status: 200, answer: Decision },
  "decisions.answer": { body: DecisionAnswer, status: 201, answer: CreatedDraft },
  "decisions.reply": { body: OfferReply, status: 201, answer: CreatedDraft },
} as const satisfies Record<string, Contract>;
