/** What is shown from one second to another; `text` as it stands in the file, with its marks. */
export type Cue = { readonly start: number; readonly end: number; readonly text: string };

const ARROW = "-->";
const HOURS_OR_MINUTES = /^(\d+):/u;

type At = { readonly line: string; position: number };

const skipSpace = (at: At): void => {
  while (/[ \t\f]/u.test(at.line.charAt(at.position)) && at.position < at.line.length) at.position += 1;
};

const digits = (at: At): string => {
  const found = /^\d*/u.exec(at.line.slice(at.position))?.[0] ?? "";
  at.position += found.length;
  return found;
};

const colonAndTwo = (at: At): number | undefined => {
  if (at.line.charAt(at.position) !== ":") return undefined;
  at.position += 1;
  const two = digits(at);
  return two.length === 2 ? Number(two) : undefined;
};

/**
 * Seconds of a WebVTT timestamp at a place in a line, by the standard's own steps ("collect a WebVTT timestamp"): hours may be left out
 * or have any number of digits, minutes and seconds have two and are below sixty, thousandths three.
 *
 * @see https://www.w3.org/TR/webvtt1/#collect-a-webvtt-timestamp
 */
const timestampAt = (at: At): number | undefined => {
  const first = digits(at);
  if (first === "") return undefined;
  let hours = first.length !== 2 || Number(first) > 59 ? Number(first) : undefined;
  let minutes = Number(first);
  let seconds = colonAndTwo(at);
  if (seconds === undefined) return undefined;
  if (hours !== undefined || at.line.charAt(at.position) === ":") {
    hours ??= Number(first);
    minutes = seconds;
    seconds = colonAndTwo(at);
    if (seconds === undefined) return undefined;
  }
  if (at.line.charAt(at.position) !== ".") return undefined;
  at.position += 1;
  const thousandths = digits(at);
  if (thousandths.length !== 3 || minutes > 59 || seconds > 59) return undefined;
  return (hours ?? 0) * 3600 + minutes * 60 + seconds + Number(thousandths) / 1000;
};

/**
 * Seconds of a WebVTT timestamp that is the whole of a text; nothing where it is none.
 *
 * @example
 * webvttTimestamp("00:01:02.500"); // 62.5
 */
export const webvttTimestamp = (text: string): number | undefined => {
  const at = { line: text, position: 0 };
  const seconds = HOURS_OR_MINUTES.test(text) ? timestampAt(at) : undefined;
  return at.position === text.length ? seconds : undefined;
};

const timingsOf = (line: string): { start: number; end: number } | undefined => {
  const at = { line, position: 0 };
  skipSpace(at);
  const start = timestampAt(at);
  if (start === undefined) return undefined;
  skipSpace(at);
  if (line.slice(at.position, at.position + ARROW.length) !== ARROW) return undefined;
  at.position += ARROW.length;
  skipSpace(at);
  const end = timestampAt(at);
  return end === undefined ? undefined : { start, end };
};

type Block = { readonly cue?: Cue; readonly next: number };

/** One block from line `from`: its cue where it has one, and the line after it. */
const blockAt = (lines: readonly string[], from: number, inHeader: boolean): Block => {
  let timings: { start: number; end: number } | undefined;
  let seenArrow = false;
  const text: string[] = [];
  let at = from;
  for (; at < lines.length; at += 1) {
    const line = lines[at] ?? "";
    const count = at - from + 1;
    if (line.includes(ARROW)) {
      if (inHeader || !(count === 1 || (count === 2 && !seenArrow))) break;
      seenArrow = true;
      timings = timingsOf(line);
      text.length = 0;
    } else if (line === "") break;
    else text.push(line);
  }
  return timings === undefined ? { next: at } : { cue: { ...timings, text: text.join("\n") }, next: at };
};

const linesOf = (file: string): string[] =>
  file
    .replaceAll("\0", "\uFFFD")
    .replace(/^\uFEFF/u, "")
    .split(/\r\n|\n|\r/u);

/** Whether a text says of itself that it is WebVTT. */
export const isWebvtt = (file: string): boolean => /^\uFEFF?WEBVTT(?:[ \t\r\n]|$)/u.test(file);

/**
 * The cues of a WebVTT file, by the standard's own steps: what is broken in one block costs that block alone. Nothing where the file
 * does not begin as WebVTT. Settings, regions and styles say how it looks and are left out.
 *
 * @see https://www.w3.org/TR/webvtt1/#webvtt-parser-algorithm
 * @example
 * webvttCues("WEBVTT\n\n00:01.000 --> 00:02.000\nThe hood is new.")?.[0]?.start; // 1
 */
export const webvttCues = (file: string): Cue[] | undefined => {
  if (!isWebvtt(file)) return undefined;
  const lines = linesOf(file);
  const cues: Cue[] = [];
  let at = lines[1] === undefined || lines[1] === "" ? 1 : blockAt(lines, 1, true).next;
  while (at < lines.length) {
    while (lines[at] === "") at += 1;
    if (at >= lines.length) break;
    const { cue, next } = blockAt(lines, at, false);
    if (cue !== undefined) cues.push(cue);
    at = next;
  }
  return cues;
};
