import type { SpokenText } from "../spoken-text/index.ts";

/** A stretch of what was said, to be read beside what was made of it. */
export type Passage = {
  readonly start: number;
  readonly end: number;
  readonly second: number;
};

/** Words after which a stretch ends where no mark ends it. */
const MOST_WORDS = 40;
const LEAST_UNMARKED = 16;

/** Words before which talk without marks may be cut. */
const OPENS = /^(?:and|then|now|so|next|okay|ok|moving|the)$/iu;

/**
 * What was said in stretches that begin at a speaker's turn or after a sentence, none longer than a person takes in at once. Together they
 * are the whole text.
 *
 * @example
 * passages(spokenText([{ start: 1, end: 3, text: "The hood is new. So is the top." }])).length; // 2
 */
export const passages = ({ text, at, punctuated }: SpokenText): Passage[] => {
  const made: Passage[] = [];
  let first = 0;
  const close = (next: number): void => {
    const [from, end] = [at[first], at[next]?.start ?? text.length];
    if (from === undefined || next <= first) return;
    made.push({
      start: from.start,
      end: from.start + text.slice(from.start, end).trimEnd().length,
      second: from.second,
    });
    first = next;
  };
  for (let index = 1; index < at.length; index += 1) {
    const [before, start] = [at[index - 1]?.start ?? 0, at[index]?.start ?? 0];
    const between = text.slice(before, start);
    const words = index - first;
    const opens =
      !punctuated &&
      words >= LEAST_UNMARKED &&
      OPENS.test(/^\S+/u.exec(text.slice(start, start + 20))?.[0] ?? "");
    if (between.includes("\n") || /[.?!]["”]?\s*$/u.test(between) || opens || words >= MOST_WORDS)
      close(index);
  }
  close(at.length);
  return made;
};
