/** What is written in sheets and seldom said. Patterns as in the lexicon: `a/b` one or the other, `(a)` with or without. No source: the trade's own habits. */
export type Written = {
  readonly items: readonly string[];
  readonly words: readonly string[];
  readonly at?: readonly string[];
};

/** A name of one item or several; of several the likeliest first. */
export const name = (words: string, items: string, at?: string): Written => ({
  words: words.split(";").map((one) => one.trim()),
  items: items.split(" "),
  ...(at === undefined ? {} : { at: at.split(" ") }),
});
