import type { Run, Tone } from "@evenhand/paper/blocks";
import { type Face, printable, widthOf } from "./faces.ts";

export type Piece = {
  readonly x: number;
  readonly text: string;
  readonly width: number;
  readonly face: Face;
  readonly size: number;
  readonly color: string;
  readonly struck: boolean;
};

/** What stands at one height. */
export type Line = {
  readonly height: number;
  readonly pieces: readonly Piece[];
  /** A rule above it, over its whole width. */
  readonly ruled?: true;
  /** Stays on the page of the next. */
  readonly keep?: boolean;
  /** Stand before it where it begins a page. */
  readonly again?: readonly Line[];
};

/** Where text stands, in points. */
export type Room = {
  readonly x: number;
  readonly width: number;
  readonly size: number;
  /** From one line to the next, in sizes of the letters. */
  readonly leading?: number;
};

export const ink = { plain: "#1a1a1a", faint: "#5a5a5a", alarm: "#8f1019", rule: "#b8b8b8" } as const;

type Look = { readonly face: Face; readonly color: string; readonly struck: boolean };
export const looks: Readonly<Record<Tone, Look>> = {
  plain: { face: "regular", color: ink.plain, struck: false },
  strong: { face: "bold", color: ink.plain, struck: false },
  faint: { face: "regular", color: ink.faint, struck: false },
  alarm: { face: "bold", color: ink.alarm, struck: false },
  struck: { face: "bold", color: ink.faint, struck: true },
  code: { face: "regular", color: ink.plain, struck: false },
};

/** Of text that is read on from line to line. */
const usual = 1.27;

type Word = { readonly text: string; readonly look: Look; readonly width: number };

/** A word that is wider than the room, in pieces that are not; at least one character each. */
function broken(text: string, look: Look, { width, size }: Room): Word[] {
  const whole = widthOf(text, look.face, size);
  if (whole <= width) return [{ text, look, width: whole }];
  const characters = Array.from(text);
  let [low, high] = [1, characters.length];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (widthOf(characters.slice(0, middle).join(""), look.face, size) <= width) low = middle;
    else high = middle - 1;
  }
  const first = characters.slice(0, low).join("");
  const rest = characters.slice(low).join("");
  const head = { text: first, look, width: widthOf(first, look.face, size) };
  return rest === "" ? [head] : [head, ...broken(rest, look, { x: 0, width, size })];
}

const wordsOf = (runs: readonly Run[], room: Room): Word[] =>
  runs.flatMap(({ text, tone = "plain" }) =>
    printable(text)
      .split(" ")
      .filter((word) => word !== "")
      .flatMap((word) => broken(word, looks[tone], room)),
  );

/** Words of one look beside each other are drawn as one. */
function lineOf(words: readonly Word[], { x, size, leading = usual }: Room): Line {
  const pieces: Piece[] = [];
  let at = x;
  for (const { text, look, width } of words) {
    const before = pieces.at(-1);
    const gap = before === undefined ? 0 : widthOf(" ", look.face, size);
    if (
      before !== undefined &&
      before.face === look.face &&
      before.color === look.color &&
      before.struck === look.struck
    ) {
      const joined = `${before.text} ${text}`;
      pieces[pieces.length - 1] = { ...before, text: joined, width: at + gap + width - before.x };
    } else {
      pieces.push({ x: at + gap, text, width, size, ...look });
    }
    at += gap + width;
  }
  return { height: size * leading, pieces };
}

/** Runs as lines no wider than the room. */
export function paragraph(runs: readonly Run[], room: Room): Line[] {
  const lines: Line[] = [];
  let [words, width]: [Word[], number] = [[], 0];
  for (const word of wordsOf(runs, room)) {
    const gap = words.length === 0 ? 0 : widthOf(" ", word.look.face, room.size);
    if (words.length > 0 && width + gap + word.width > room.width) {
      lines.push(lineOf(words, room));
      [words, width] = [[word], word.width];
    } else {
      words.push(word);
      width += gap + word.width;
    }
  }
  return words.length === 0 ? lines : [...lines, lineOf(words, room)];
}

/** Lines that stand side by side, as lines of the whole width. */
export const besides = (columns: readonly (readonly Line[])[]): Line[] =>
  Array.from({ length: Math.max(...columns.map((lines) => lines.length)) }, (_, at) => {
    const row = columns.flatMap((lines) => lines[at] ?? []);
    return {
      height: Math.max(...row.map(({ height }) => height)),
      pieces: row.flatMap(({ pieces }) => pieces),
    };
  });

export const gap = (height: number, more: Partial<Line> = {}): Line => ({ height, pieces: [], ...more });

export const heightOf = (lines: readonly Line[]): number =>
  lines.reduce((sum, { height }) => sum + height, 0);

/** Lines that stay on one page, each group with all that it keeps. */
export const groupsOf = (lines: readonly Line[]): Line[][] => {
  const groups: Line[][] = [];
  let group: Line[] = [];
  for (const line of lines) {
    group.push(line);
    if (line.keep === true) continue;
    groups.push(group);
    group = [];
  }
  return group.length === 0 ? groups : [...groups, group];
};
