import type {
  BeforeMoneyAnswer,
  BeforeMoneyEntries,
  BeforeMoneyOpen,
  BeforeMoneyStanding,
  RecordedMatter,
} from "@evenhand/shared/before-money";
import { LINES, type Line } from "./lines.ts";

export { LINES as beforeMoneyLines };

/** A matter of the comparison, with the items of its gravest lines. */
export type MatterAtItems = RecordedMatter & { readonly items: readonly string[] };

const LEAST_WORDS = 10;
const named = new Set(LINES.flatMap(({ items }) => items));
const stops = ({ severity }: RecordedMatter): boolean => severity === "halt";

/** What stops the money and none of the lines names stands at `other`. */
const speaksOf = ({ line, items }: Line, matter: MatterAtItems): boolean =>
  line === "other"
    ? stops(matter) && (matter.items.length === 0 || matter.items.some((item) => !named.has(item)))
    : matter.items.some((item) => items.includes(item));

const plain = (words: string): string => words.trim().toLowerCase().replaceAll(/\s+/g, " ");

const payeeOpen = ({ say, payee }: BeforeMoneyAnswer): BeforeMoneyOpen | null => {
  if (say !== "done") return "always-due";
  if (payee === undefined || payee.name.trim() === "") return "no-payee";
  if (payee.numberFrom === null) return "no-call";
  return payee.numberFrom === "same-mail" ? "number-of-the-mail" : null;
};

/** What stops the money ends only as done, and only for what was read when it was said to be. */
const haltOpen = (
  { say, halts }: BeforeMoneyAnswer,
  now: readonly RecordedMatter[],
): BeforeMoneyOpen | null => {
  if (now.length === 0) return null;
  if (say !== "done") return "halt-not-done";
  const read = new Map(halts.map(({ id, headline }) => [id, headline]));
  return now.every(({ id, headline }) => read.get(id) === headline) ? null : "new-halt";
};

const dayOpen = ({ on }: BeforeMoneyAnswer, today: string): BeforeMoneyOpen | null =>
  on === null ? "no-day" : on > today ? "day-to-come" : null;

const openOf = (
  line: Line,
  answer: BeforeMoneyAnswer | undefined,
  halts: readonly RecordedMatter[],
  today: string,
): BeforeMoneyOpen | null => {
  if (answer === undefined) return "not-answered";
  if (line.always === true && answer.say === "not-due") return "always-due";
  const stopped = haltOpen(answer, halts);
  if (stopped !== null) return stopped;
  if (answer.words.trim().length < LEAST_WORDS) return "no-words";
  if (answer.by.trim() === "") return "nobody";
  return dayOpen(answer, today) ?? (line.line === "payee" ? payeeOpen(answer) : null);
};

type Stood = BeforeMoneyStanding["lines"][number];

/** Words given at two lines that stop the money are nobody's own at the second. */
const eachInItsOwn = (lines: readonly Stood[], answers: BeforeMoneyEntries["lines"]): Stood[] => {
  const said = new Set<string>();
  return lines.map((one) => {
    if (one.open !== null || !one.matters.some(stops)) return one;
    const words = plain(answers[one.line]?.words ?? "");
    if (said.has(words)) return { ...one, open: "same-words" };
    said.add(words);
    return one;
  });
};

const stateOf = (lines: readonly Stood[], known: boolean): BeforeMoneyStanding["state"] => {
  const open = lines.filter((one) => one.open !== null);
  if (open.some(({ matters }) => matters.some(stops))) return "stopped";
  return open.length > 0 || !known ? "open" : "answered";
};

/**
 * How the list stands that a buyer goes through before money moves: what the record says at each line, and whether the buyer's own
 * answer closes it. A line at which something stops the money closes only as done, in words of its own, and opens again when
 * something else stops the money there. Nothing here says that it is safe to pay: `answered` is the buyer's word on every line.
 *
 * @param lines those of `beforeMoneyLines`
 * @param matters of the newest comparison; `null` where nothing is compared, and then no list is ever all answered
 * @param today the last date it is anywhere on earth, so that nobody's today is to come
 * @example standing(beforeMoneyLines, [lien], {}, "2027-05-04").state // "stopped"
 */
export const standing = (
  lines: readonly Line[],
  matters: readonly MatterAtItems[] | null,
  answers: BeforeMoneyEntries["lines"],
  today: string,
): BeforeMoneyStanding => {
  const stood = lines.flatMap((line): Stood[] => {
    const at = (matters ?? []).filter((matter) => speaksOf(line, matter));
    if (at.length === 0 && line.onlyWithMatters === true) return [];
    const open = openOf(line, answers[line.line], at.filter(stops), today);
    return [{ line: line.line, matters: at.map(({ items: _items, ...matter }) => matter), open }];
  });
  const own = eachInItsOwn(stood, answers);
  return { state: stateOf(own, matters !== null), lines: own };
};
