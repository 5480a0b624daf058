import {
  BEFORE_MONEY_LINES,
  type BeforeMoneyAnswer,
  type BeforeMoneyEntries,
  type BeforeMoneyLine,
  type NumberFrom,
} from "@evenhand/shared/before-money";
import type { BeforeMoneySeen } from "@evenhand/shared/http/money";

/** One line as it stands in its fields. */
export interface TypedBefore {
  readonly say: BeforeMoneyAnswer["say"] | "none";
  readonly words: string;
  readonly by: string;
  readonly on: string;
  readonly payee: string;
  readonly numberFrom: NumberFrom | "none";
  /** What stopped the money here when the line was last changed. */
  readonly halts: BeforeMoneyAnswer["halts"];
}
export type TypedList = Readonly<Record<BeforeMoneyLine, TypedBefore>>;

const typedLine = (answer: BeforeMoneyAnswer | undefined): TypedBefore => ({
  say: answer?.say ?? "none",
  words: answer?.words ?? "",
  by: answer?.by ?? "",
  on: answer?.on ?? "",
  payee: answer?.payee?.name ?? "",
  numberFrom: answer?.payee?.numberFrom ?? "none",
  halts: answer?.halts ?? [],
});

/** What stands in the fields for what is stored. */
export const typedList = ({ lines }: BeforeMoneyEntries): TypedList => ({
  title: typedLine(lines.title),
  brand: typedLine(lines.brand),
  lien: typedLine(lines.lien),
  numbers: typedLine(lines.numbers),
  border: typedLine(lines.border),
  payee: typedLine(lines.payee),
  law: typedLine(lines.law),
  other: typedLine(lines.other),
});

/** What stops the money at a line, as the page shows it. */
export const haltsAt = ({ standing }: BeforeMoneySeen, line: BeforeMoneyLine): TypedBefore["halts"] =>
  (standing.lines.find((one) => one.line === line)?.matters ?? [])
    .filter(({ severity }) => severity === "halt")
    .map(({ id, headline }) => ({ id, headline }));

/** Lines where something is written, but not whether it is done. */
export const unsaidLines = (typed: TypedList): ReadonlySet<BeforeMoneyLine> =>
  new Set(
    BEFORE_MONEY_LINES.filter((line) => {
      const { say, words, by, on, payee, numberFrom } = typed[line];
      return say === "none" && (`${words}${by}${on}${payee}`.trim() !== "" || numberFrom !== "none");
    }),
  );

const answerOf = (line: BeforeMoneyLine, typed: TypedBefore): BeforeMoneyAnswer | undefined => {
  const { say, words, by, on, payee, numberFrom, halts } = typed;
  if (say === "none") return undefined;
  const paid = { name: payee.trim(), numberFrom: numberFrom === "none" ? null : numberFrom };
  return {
    say,
    words: words.trim(),
    by: by.trim(),
    on: on === "" ? null : on,
    halts: [...halts],
    ...(line === "payee" ? { payee: paid } : {}),
  };
};

/** What is saved; ask {@link unsaidLines} first. */
export const beforeEntries = (typed: TypedList): BeforeMoneyEntries => ({
  lines: Object.fromEntries(
    BEFORE_MONEY_LINES.flatMap((line) => {
      const answer = answerOf(line, typed[line]);
      return answer === undefined ? [] : [[line, answer]];
    }),
  ),
});
