import { z } from "zod";
import { LocalDate } from "./identifier.ts";
import { MatterId } from "./matter.ts";
import { Severity } from "./severity.ts";

/** What a buyer goes through before money moves, in the order it is read. `other`: what else stops the money, where there is such. */
export const BEFORE_MONEY_LINES = [
  "title",
  "brand",
  "lien",
  "numbers",
  "border",
  "payee",
  "law",
  "other",
] as const;
export const BeforeMoneyLine = z.enum(BEFORE_MONEY_LINES);
export type BeforeMoneyLine = z.infer<typeof BeforeMoneyLine>;

/** Where the telephone number came from by which it was asked who receives the money. */
export const NumberFrom = z.enum(["known-before", "looked-up", "same-mail"]);
export type NumberFrom = z.infer<typeof NumberFrom>;

const Payee = z.strictObject({
  /** Who receives the money, by name; never an account's number. */
  name: z.string().trim().max(200),
  /** `null` where nobody has called. */
  numberFrom: NumberFrom.nullable(),
});

/** What the buyer says of one line. What is empty has not been said yet. */
export const BeforeMoneyAnswer = z.strictObject({
  say: z.enum(["done", "not-due"]),
  words: z.string().trim().max(1000),
  by: z.string().trim().max(200),
  on: LocalDate.nullable(),
  /** Of `payee` alone. */
  payee: Payee.optional(),
  /** What stopped the money at this line when it was answered, as it read. */
  halts: z.array(z.strictObject({ id: MatterId, headline: z.string().max(1000) })).max(50),
});
export type BeforeMoneyAnswer = z.infer<typeof BeforeMoneyAnswer>;

const answer = BeforeMoneyAnswer.optional();
export const BeforeMoneyEntries = z.strictObject({
  lines: z.strictObject({
    title: answer,
    brand: answer,
    lien: answer,
    numbers: answer,
    border: answer,
    payee: answer,
    law: answer,
    other: answer,
  }),
});
export type BeforeMoneyEntries = z.infer<typeof BeforeMoneyEntries>;

/** What the record says at a line, before the buyer says anything. `decides`: how it could end. */
export const RecordedMatter = z.strictObject({
  id: MatterId,
  severity: Severity,
  headline: z.string(),
  found: z.string(),
  decides: z.string(),
});
export type RecordedMatter = z.infer<typeof RecordedMatter>;

/** Why a line stands open. */
export const BeforeMoneyOpen = z.enum([
  "not-answered",
  "no-words",
  "same-words",
  "nobody",
  "no-day",
  "day-to-come",
  "halt-not-done",
  "new-halt",
  "always-due",
  "no-payee",
  "no-call",
  "number-of-the-mail",
]);
export type BeforeMoneyOpen = z.infer<typeof BeforeMoneyOpen>;

/** `stopped`: something that stops the money stands open at a line. `answered` is the buyer's word on every line, and no more. */
export const BeforeMoneyStanding = z.strictObject({
  state: z.enum(["stopped", "open", "answered"]),
  lines: z.array(
    z.strictObject({
      line: BeforeMoneyLine,
      matters: z.array(RecordedMatter),
      open: BeforeMoneyOpen.nullable(),
    }),
  ),
});
export type BeforeMoneyStanding = z.infer<typeof BeforeMoneyStanding>;
