import type { Matter } from "@evenhand/shared/matter";
import { Answer } from "@evenhand/shared/page-one";

/** What of an answer a case shows: its matters, without notes and lines. */
export type AnswerMatters = { readonly wrong: readonly Matter[]; readonly unknown: readonly Matter[] };

/** The matters of an answer's stored bytes. */
export function answerMatters(answer: Uint8Array): AnswerMatters {
  const { matters, unknown } = Answer.parse(JSON.parse(Buffer.from(answer).toString("utf8")));
  return { wrong: matters.map(({ matter }) => matter), unknown: unknown.map(({ matter }) => matter) };
}
