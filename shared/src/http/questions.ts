import { z } from "zod";
import { Finding } from "../finding.ts";
import { Instant, ItemId, ObjectId, PositionId } from "../identifier.ts";
import { CreatedDraft, pageOf, PageQuery, Revision, type Contract } from "./paging.ts";

/** `drafted`: the buyer's alone. `answered`: a finding in the dealer's draft. `published`: the statement with it is sealed. */
export const QuestionState = z.enum(["drafted", "asked", "answered", "published", "withdrawn"]);
export type QuestionState = z.infer<typeof QuestionState>;

const Text = z.string().trim().min(1).max(2000);
export const QuestionRequest = z.strictObject({
  item: ItemId,
  position: PositionId.default(""),
  text: Text,
  /** `false` keeps it as a draft nobody else sees. */
  send: z.boolean().default(true),
});
export type QuestionRequest = z.infer<typeof QuestionRequest>;
/** While drafted the text and sending; while asked, withdrawing. */
export const QuestionChange = z.strictObject({
  text: Text.optional(),
  move: z.enum(["send", "withdraw"]).optional(),
});
export type QuestionChange = z.infer<typeof QuestionChange>;

/**
 * The answer is a finding on the item and position asked about, with its firmness. It goes into the draft of the statement's next
 * version; `seal` seals and publishes that version at once. `base`: the revision of the finding there that was seen, as in
 * operations on a report.
 */
export const QuestionAnswer = z.strictObject({
  finding: z.record(z.string(), z.unknown()),
  base: z.int().nonnegative().nullable().default(null),
  seal: z.boolean().default(false),
});
export type QuestionAnswer = z.infer<typeof QuestionAnswer>;

export const QuestionSeen = z.strictObject({
  id: ObjectId,
  revision: Revision,
  vehicle: ObjectId,
  item: ItemId,
  position: PositionId,
  text: z.string(),
  state: QuestionState,
  createdAt: Instant,
  askedAt: Instant.nullable(),
  answeredAt: Instant.nullable(),
  /** To the dealer once answered, to the buyer once the statement with it is sealed. */
  finding: Finding.nullable(),
  /** The sealed version that first says it. */
  statement: z.strictObject({ id: ObjectId, version: z.int().positive() }).nullable(),
});
export type QuestionSeen = z.infer<typeof QuestionSeen>;
export const QuestionQuery = PageQuery.extend({
  vehicle: ObjectId.optional(),
  state: QuestionState.optional(),
});
export type QuestionQuery = z.infer<typeof QuestionQuery>;

export const questionContracts = {
  "questions.create": { body: QuestionRequest, status: 201, answer: CreatedDraft },
  "questions.list": { query: QuestionQuery, status: 200, answer: pageOf(QuestionSeen) },
  "questions.get": { status: 200, answer: QuestionSeen },
  "questions.change": { body: QuestionChange, status: 200, answer: CreatedDraft },
  "questions.answer": { body: QuestionAnswer, status: 201, answer: CreatedDraft },
} as const satisfies Record<string, Contract>;
