/** Words that choose an option of one item, or say of one alone that it works or how worn it is. `alone`: nobody need name the item for it. */
export type OptionWords = {
  readonly item: string;
  readonly option: string;
  readonly words: readonly string[];
  readonly alone: boolean;
};

/** Words of the options of one item, patterns with a semicolon between them. */
export const of = (item: string, options: Readonly<Record<string, string>>, alone = false): OptionWords[] =>
  Object.entries(options).map(([option, words]) => ({
    item,
    option,
    words: words.split(";").map((one) => one.trim()),
    alone,
  }));
