/**
 * What somebody names when they speak of a car: a part, a paper, a reading, a sound. `items` are what may be said of it, the likeliest
 * first; `at` are its places, where its items have several. `words` are patterns: `a/b` one or the other, `(a)` with or without.
 */
export type Subject = {
  readonly id: string;
  readonly items: readonly string[];
  readonly at?: readonly string[];
  readonly words: readonly string[];
};

/** Patterns are written in one string, a semicolon between them. */
export const subject = (id: string, items: readonly string[], words: string, at?: string): Subject => ({
  id,
  items,
  words: words.split(";").map((one) => one.trim()),
  ...(at === undefined ? {} : { at: at.split(" ") }),
});
