import { Matter } from "@evenhand/shared/matter";
import { Answer } from "@evenhand/shared/page-one";
import { z } from "zod";

/** What of an answer a case shows: its matters, without notes and lines. */
const AnswerMatters = z.object({ wrong: z.array(Matter), unknown: z.array(Matter) });
export type AnswerMatters = z.infer<typeof AnswerMatters>;

const json = (bytes: Uint8Array): unknown => JSON.parse(Buffer.from(bytes).toString("utf8"));

/** The matters of an answer's stored bytes, as bytes of their own: a twentieth of the size, for what is read often. */
export function mattersBytes(answer: Uint8Array): Uint8Array {
  const { matters, unknown } = Answer.parse(json(answer));
  const only = { wrong: matters.map(({ matter }) => matter), unknown: unknown.map(({ matter }) => matter) };
  return Buffer.from(JSON.stringify(only), "utf8");
}

export const readMatters = (bytes: Uint8Array): AnswerMatters => AnswerMatters.parse(json(bytes));
