import { readXml } from "../read-xml/index.ts";

/** Text of an element's runs; what is said of how Japanese is read aloud is left out. */
export type RunText = {
  readonly open: (name: string) => void;
  readonly text: (text: string) => void;
  readonly close: (name: string) => void;
  readonly take: () => string;
};

/** `_x000D_` stands for a character XML cannot write (ECMA-376 Part 1, 22.9.2.19). */
const unescaped = (text: string): string =>
  text.replaceAll(/_x([0-9A-Fa-f]{4})_/g, (_, code: string) =>
    String.fromCodePoint(Number.parseInt(code, 16)),
  );

/** Gathers the text of `t` elements, over however many runs of rich text. */
export const runText = (): RunText => {
  let gathered: string[] = [];
  let [inText, aloud] = [false, 0];
  return {
    open: (name) => {
      if (name === "t") inText = true;
      if (name === "rPh") aloud += 1;
    },
    text: (text) => {
      if (inText && aloud === 0) gathered.push(text);
    },
    close: (name) => {
      if (name === "t") inText = false;
      if (name === "rPh") aloud -= 1;
    },
    take: () => {
      const whole = unescaped(gathered.join(""));
      gathered = [];
      return whole;
    },
  };
};

/** The strings that cells share, by number. */
export const sharedStrings = (text: string | undefined, part: string): string[] => {
  const strings: string[] = [];
  if (text === undefined) return strings;
  const run = runText();
  readXml(text, part, {
    open: run.open,
    text: run.text,
    close: (name) => {
      run.close(name);
      if (name === "si") strings.push(run.take());
    },
  });
  return strings;
};

/** Notes pinned to cells, by the cell's name (`B4`). */
export const pinnedNotes = (text: string, part: string): Map<string, string> => {
  const notes = new Map<string, string>();
  const run = runText();
  let cell = "";
  readXml(text, part, {
    open: (name, attributes) => {
      run.open(name);
      if (name === "comment") cell = attributes["ref"] ?? "";
    },
    text: run.text,
    close: (name) => {
      run.close(name);
      if (name === "comment") notes.set(cell, plainNote(run.take()));
    },
  });
  return notes;
};

/** Without what spreadsheets put around it: the author's name in the first line, and the sentence about threads. */
const plainNote = (text: string): string =>
  text
    .replace(/^\[Threaded comment\][\s\S]*?\bComment:\s*/, "")
    .replace(/^[^\n:]{1,60}:\n/, "")
    .replaceAll(/\s+/g, " ")
    .trim();
