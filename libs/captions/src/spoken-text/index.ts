import type { Cue } from "../webvtt/index.ts";

/** What was said, as one text; a new speaker begins on a new line. `at` holds for every word where it stands in the text, and its second. */
export type SpokenText = {
  readonly text: string;
  readonly at: readonly { readonly start: number; readonly second: number }[];
  /** Marks that end a sentence, by words: automatic captions have none. */
  readonly punctuated: boolean;
  /** Characters said by somebody who only asks and admires: a friend, a buyer. */
  readonly asides: readonly { readonly start: number; readonly end: number }[];
};

type Word = {
  readonly text: string;
  readonly second: number;
  readonly turn: boolean;
  /** Who says it, where a name opens the line. */
  readonly speaker?: string;
};

const ENTITIES: Readonly<Record<string, string>> = {
  amp: "&",
  lt: "<",
  gt: ">",
  nbsp: " ",
  lrm: "",
  rlm: "",
  quot: '"',
  apos: "'",
};
const STAMP = /^(?:(\d+):)?(\d{2}):(\d{2})\.(\d{3})$/u;

const secondsOf = (stamp: string): number | undefined => {
  const match = STAMP.exec(stamp);
  if (match === null) return undefined;
  const [, hours = "0", minutes = "0", seconds = "0", thousandths = "0"] = match;
  return Number(hours) * 3600 + Number(minutes) * 60 + Number(seconds) + Number(thousandths) / 1000;
};

const plain = (text: string): string =>
  text
    .replaceAll(/&([a-z]+);/gu, (whole, name: string) => ENTITIES[name] ?? whole)
    .replaceAll(/\{\\[^}]*\}/gu, "");

/** What people are called in captions, though the trade knows the word. */
const PEOPLE =
  /^(?:[qa]|question|answer|dealer|seller|owner|salesman|host|inspector|mechanic|presenter|speaker \w+|me|us)$/u;
const isPerson = (name: string): boolean => PEOPLE.test(name) || LISTENERS.test(name);

/** Names that open the lines of several cues, each often: somebody speaks. A word of the trade is no name. */
const speakersOf = (cues: readonly Cue[], isTrade: (word: string) => boolean): ReadonlySet<string> => {
  const counts = new Map<string, number>();
  for (const { text } of cues)
    for (const line of text.split("\n")) {
      const name = SPEAKER.exec(line)?.[1];
      if (name !== undefined) counts.set(name.toLowerCase(), (counts.get(name.toLowerCase()) ?? 0) + 1);
    }
  return new Set(
    [...counts].flatMap(([name, count]) =>
      count >= 2 && (isPerson(name) || !name.split(/\s+/u).some(isTrade)) ? [name] : [],
    ),
  );
};

const SPEAKER = /^\s*(?:>>+|[-–])?\s*([\p{L}][\p{L}.'’]*(?: [\p{L}][\p{L}.'’]*){0,2})\s*:\s*/u;
const TURN = /^\s*(?:>>+|[-–—])\s*/u;

type Line = { readonly words: Word[]; readonly speaker?: string };

const BRACKETED = /^\s*[[(♪][^\])]*[\])♪]\s*$/u;

/** Words of one line with their seconds: by the times within it, else spread evenly. */
const wordsOfLine = (line: string, from: number, to: number, speakers: ReadonlySet<string>): Line => {
  const words: Word[] = [];
  let turn = false;
  let body = line;
  const voice = /<v(?:\.[^\s>]*)?\s+([^>]*)>/u.exec(body);
  let speaker = voice?.[1]?.toLowerCase();
  if (voice !== null) turn = true;
  const arrows = TURN.exec(plain(body));
  if (arrows !== null) {
    turn = true;
    body = plain(body).slice(arrows[0].length);
  }
  const name = SPEAKER.exec(body);
  if (name !== null && speakers.has((name[1] ?? "").toLowerCase())) {
    turn = true;
    speaker = (name[1] ?? "").toLowerCase();
    body = body.slice(name[0].length);
  }
  if (BRACKETED.test(body)) return { words: [] };
  const pieces = body.split(/<([^>]*)>/u);
  const stamped = pieces.some((piece, index) => index % 2 === 1 && STAMP.test(piece));
  const letters = Math.max(1, pieces.filter((_, index) => index % 2 === 0).join("").length);
  let second = from;
  let seen = 0;
  for (const [index, piece] of pieces.entries()) {
    if (index % 2 === 1) second = secondsOf(piece) ?? second;
    else
      for (const text of plain(piece)
        .split(/\s+/u)
        .filter((one) => one !== "")) {
        words.push({
          text,
          second: stamped ? second : from + ((to - from) * seen) / letters,
          turn: turn && words.length === 0,
          ...(turn && words.length === 0 && speaker !== undefined ? { speaker } : {}),
        });
        seen += text.length + 1;
      }
  }
  return { words };
};

const same = (a: string | undefined, b: string | undefined): boolean =>
  a !== undefined && b !== undefined && a.toLowerCase() === b.toLowerCase();

/** Longest overlap that is looked for between what was said and the next cue. */
const MOST_REPEATED = 60;
const LEAST_REPEATED = 3;

/** How many words at the beginning of a cue only repeat the end of what was said. */
const repeated = (said: readonly Word[], words: readonly Word[], previous: number): number => {
  for (let count = Math.min(MOST_REPEATED, said.length, words.length); count > 0; count -= 1) {
    if (count < LEAST_REPEATED && !(count >= 2 && count === previous)) continue;
    if (
      words.slice(0, count).every((word, index) => same(word.text, said[said.length - count + index]?.text))
    )
      return count;
  }
  return 0;
};

/** Lines that stood in the cue before are shown again and were not said again. */
const freshLines = (lines: readonly string[], before: readonly string[]): string[] => {
  let from = 0;
  while (from < lines.length && before.includes(lines[from] ?? "")) from += 1;
  return lines.slice(from);
};

const stripped = (line: string): string =>
  line
    .replaceAll(/<[^>]*>/gu, "")
    .replaceAll(/\s+/gu, " ")
    .trim()
    .toLowerCase();

const TIME_BETWEEN = 3;

/** Who is called so has not the car to tell of. */
const LISTENERS =
  /\b(?:^q$|question|friend|buyer|customer|client|viewer|guest|interviewer|cameraman|camera|passer-?by|visitor|wife|husband|son|daughter|neighbou?r|mate|caller|man|woman|voice)\b/u;
/** Who is called so has come to ask. */
const ONLY_ASKS =
  /\b(?:^q$|question|buyer|customer|client|viewer|guest|interviewer|caller|visitor|passer-?by)\b/u;
/** Share of a listener's turns that ask, below which the car is told of by him: a son who knows it. */
const LISTENS = 0.25;
/** Share of somebody's turns that ask from which on they are taken to know nothing of the car. */
const ASKS = 0.6;
/** Shares of who asks often, and of who hardly ever does. */
const ASKS_OFTEN = 0.4;
const ASKS_NEVER = 0.1;
const LEAST_TURNS = 3;

const LEAST_UNNAMED = 8;
const UNNAMED = ["one", "other"];
/** Of turns that nobody is named at, so many must ask. */
const ASKS_UNNAMED = 0.75;

type Turn = { readonly speaker: string; readonly start: number; end: number; asks: boolean };

/** Turns of those who only ask: by what they are called, or since they do little else. */
const asidesOf = (turns: readonly Turn[]): SpokenText["asides"] => {
  const bySpeaker = Map.groupBy(turns, ({ speaker }) => speaker);
  if (bySpeaker.size < 2) return [];
  const shareOf = (own: readonly Turn[]): number => own.filter((turn) => turn.asks).length / own.length;
  return [...bySpeaker].flatMap(([speaker, own]) => {
    const asks = shareOf(own);
    const others = [...bySpeaker].flatMap(([name, theirs]) => (name === speaker ? [] : [shareOf(theirs)]));
    const isNone = ONLY_ASKS.test(speaker) || (LISTENERS.test(speaker) && asks >= LISTENS);
    // Who asks often is answered by who never does, and what is only supposed between is theirs to put right.
    const isAsker = UNNAMED.includes(speaker)
      ? asks >= ASKS_UNNAMED
      : asks >= ASKS || (asks >= ASKS_OFTEN && others.every((share) => share <= ASKS_NEVER));
    return isNone || (own.length >= LEAST_TURNS && isAsker) ? own : [];
  });
};

/** Turns that only a dash opens are of two people, one after the other. */
const withSpeakers = (said: readonly Word[]): readonly Word[] => {
  const turns = said.filter(({ turn }) => turn);
  if (turns.length < LEAST_UNNAMED || turns.some(({ speaker }) => speaker !== undefined)) return said;
  let count = 0;
  return said.map((word) => {
    if (!word.turn) return word;
    count += 1;
    return { ...word, speaker: UNNAMED[count % 2] ?? "" };
  });
};

/** Ends of sentences by words under which a text counts as without punctuation. */
const LEAST_MARKS = 1 / 60;

const shown = (words: readonly Word[]): SpokenText => {
  const at: { start: number; second: number }[] = [];
  let text = "";
  let marks = 0;
  const turns: Turn[] = [];
  for (const word of words) {
    if (text !== "") text += word.turn ? "\n" : " ";
    at.push({ start: text.length, second: word.second });
    const start = text.length;
    text += word.text;
    if (word.speaker !== undefined)
      turns.push({ speaker: word.speaker, start, end: text.length, asks: false });
    const turn = word.turn && word.speaker === undefined ? undefined : turns.at(-1);
    if (turn !== undefined) {
      turn.end = text.length;
      turn.asks ||= word.text.includes("?");
    }
    if (/[.?!]["”]?$/u.test(word.text)) marks += 1;
  }
  return { text, at, punctuated: marks >= words.length * LEAST_MARKS, asides: asidesOf(turns) };
};

/**
 * What was said, out of cues: cut sentences joined, lines that automatic captions show twice taken once, turns of several speakers on
 * lines of their own, and for every word its second. Sounds in brackets are left out.
 *
 * @param isTrade whether a word is one of the trade, so that "Hood:" in a list is no speaker
 * @example
 * spokenText([{ start: 1, end: 2, text: "The hood" }, { start: 2, end: 3, text: "is new." }]).text; // "The hood is new."
 */
export const spokenText = (
  cues: readonly Cue[],
  isTrade: (word: string) => boolean = () => false,
): SpokenText => {
  const speakers = speakersOf(cues, isTrade);
  const said: Word[] = [];
  let before: { lines: string[]; words: number; end: number } = { lines: [], words: 0, end: -Infinity };
  for (const { start, end, text } of cues) {
    const lines = text.split("\n");
    const marks = lines.map(stripped).filter((line) => line !== "");
    const follows = start - before.end <= TIME_BETWEEN;
    const kept = lines.filter((line) => stripped(line) !== "");
    const fresh =
      follows && marks.length > 0 ? kept.slice(kept.length - freshLines(marks, before.lines).length) : kept;
    const share = (end - start) / Math.max(1, fresh.length);
    const words = fresh.flatMap(
      (line, index) => wordsOfLine(line, start + share * index, start + share * (index + 1), speakers).words,
    );
    const skip = follows ? repeated(said, words, before.words) : 0;
    said.push(...words.slice(skip));
    before = { lines: marks, words: words.length, end };
  }
  return shown(withSpeakers(said));
};
