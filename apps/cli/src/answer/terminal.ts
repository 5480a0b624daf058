import type { Answer, AnswerCost, AnsweredMatter } from "@evenhand/shared/page-one";
import type { Terminal } from "../terminal/index.ts";
import { wrap } from "../terminal/layout.ts";
import { costWords } from "./cost.ts";
import { answerWords } from "./words.ts";

/** One screen: whatever more there is stands behind it, and is counted. */
const STOPS = 3;
const NOTED = 2;
const UNKNOWN = 2;
const SOFT = 2;
/** All of page one. */
const LINES = 30;

/** A text in one line, cut at the terminal's edge. */
const clip = (text: string, width: number, margin = 0): string => {
  const line = " ".repeat(margin) + text.replaceAll(/\s+/g, " ");
  return line.length <= width ? line : `${line.slice(0, width - 1)}…`;
};

const MARGIN = 2;

/** Words after a heading, in as many lines as they take, no more than `most`. */
const paragraph = (heading: string, words: string, most: number, { width, style }: Terminal): string[] => {
  const [first = "", ...rest] = wrap(`${heading}: ${words}`, width - MARGIN - 1);
  const lines = [style.strong(first.slice(0, heading.length + 1)) + first.slice(heading.length + 1)];
  const whole = [...lines, ...rest.map((line) => " ".repeat(MARGIN) + line)];
  return whole.length <= most ? whole : [...whole.slice(0, most - 1), `${whole[most - 1] ?? ""}…`];
};

const stopLines = ({ stops }: Answer, terminal: Terminal): string[] => {
  const known = stops.filter((stop) => stop.known).map(({ words }) => words);
  const unknown = stops.filter((stop) => !stop.known).map(({ words }) => words);
  const more = known.length > STOPS ? `; ${answerWords.more(known.length - STOPS)}` : "";
  const found = known.slice(0, STOPS).join("; ") + more;
  return [
    ...(found === "" ? [] : paragraph(answerWords.stopsHeading, found, 3, terminal)),
    ...(unknown.length === 0
      ? []
      : paragraph(answerWords.couldStop(unknown.length), unknown.join("; "), 2, terminal)),
    ...(stops.length === 0 ? paragraph(answerWords.stopsHeading, answerWords.noStop, 1, terminal) : []),
  ];
};

const matterLines = (one: AnsweredMatter, number: number, terminal: Terminal): string[] => {
  const { matter, notes } = one;
  const [note] = notes;
  const head = `${String(number).padStart(2)} ${matter.severity.padEnd(7)}`;
  const text = `${matter.headline}: ${matter.found}`;
  const quoted = number > NOTED || note === undefined ? "" : ` “${note.words}”`;
  const next = clip(`${answerWords.next(one)}.${quoted}`, terminal.width, head.length);
  const first = `${head}${clip(text, terminal.width - head.length)}`;
  return number > NOTED ? [first] : [terminal.style.strong(first), terminal.style.faint(next)];
};

/** How many matters `room` lines hold: a heading, one line each, a second for the first ones, and one for what is left out. */
const matterCount = (all: number, room: number): number => {
  const free = room - 1 - Math.min(all, NOTED);
  return all <= free ? all : Math.max(1, free - 1);
};

const mattersBlock = ({ matters }: Answer, terminal: Terminal, room: number): string[] => {
  if (matters.length === 0) return paragraph(answerWords.mattersHeading, answerWords.noMatter, 2, terminal);
  const shown = matters.slice(0, matterCount(matters.length, room));
  const left = matters.slice(shown.length);
  const names = left.map(({ matter }) => matter.headline).join("; ");
  return [
    terminal.style.strong(`${answerWords.mattersHeading}:`),
    ...shown.flatMap((one, index) => matterLines(one, index + 1, terminal)),
    ...(left.length === 0
      ? []
      : [clip(`${answerWords.more(left.length)}: ${names}`, terminal.width, MARGIN + 1)]),
  ];
};

const unknownLines = ({ unknown }: Answer, terminal: Terminal): string[] => {
  if (unknown.length === 0) return [];
  const words = unknown.map(({ matter }) => `${matter.headline} (${matter.lines.length}): ${matter.found}`);
  const more = unknown.length - UNKNOWN;
  return [
    terminal.style.strong(
      `${answerWords.unknownHeading}:${more > 0 ? ` ${answerWords.inAll(unknown.length)}` : ""}`,
    ),
    ...words.slice(0, UNKNOWN).map((text) => clip(text, terminal.width, MARGIN)),
  ];
};

const costLines = (answer: Answer, priced: AnswerCost | null, terminal: Terminal): string[] => {
  const said = costWords(answer, priced);
  if (said === null) return paragraph(answerWords.costHeading, answerWords.noCost, 1, terminal);
  const largest = said.largest.length === 0 ? "" : ` Largest: ${said.largest.join("; ")}.`;
  return paragraph(answerWords.costHeading, `${said.range}${largest} ${said.by}`, 3, terminal);
};

/** What softens it: as many lines as are left to it, the worst first. */
const softLines = ({ soft = [] }: Answer, terminal: Terminal, most: number): string[] => {
  if (soft.length === 0) return [];
  return paragraph(answerWords.softHeading, soft.map(({ words }) => words).join(" "), most, terminal);
};

const questionLines = ({ questions }: Answer, terminal: Terminal): string[] =>
  questions.length === 0
    ? []
    : [
        terminal.style.strong(`${answerWords.questionsHeading}:`),
        ...questions.map((question, index) => clip(`${index + 1}. ${question}`, terminal.width, MARGIN)),
      ];

/**
 * Page one on a terminal, 30 lines at most: what stops the money, what became of the statement, the matters worst first, what nobody
 * knows, what to ask and what softens it; what is left out is counted.
 */
export const answerLines = (answer: Answer, terminal: Terminal, priced: AnswerCost | null): string[] => {
  const { make, model, modelYear, identification } = answer.vehicle;
  const before = [
    terminal.style.strong(clip(`${modelYear} ${make} ${model}, ${identification}`, terminal.width)),
    ...paragraph(answerWords.lookedHeading, answerWords.looked(answer.looked), 2, terminal),
    ...stopLines(answer, terminal),
    ...paragraph(answerWords.claimsHeading, answerWords.claims(answer.claims), 2, terminal),
  ];
  const after = [
    ...unknownLines(answer, terminal),
    ...costLines(answer, priced, terminal),
    ...questionLines(answer, terminal),
    ...softLines(answer, terminal, SOFT),
    ...wrap(answerWords.caution, terminal.width),
  ];
  return [...before, ...mattersBlock(answer, terminal, LINES - before.length - after.length), ...after];
};
