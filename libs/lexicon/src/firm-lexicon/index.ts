import type { Lexicon } from "../lexicon-version-1/index.ts";

/** A firm's own words: what it calls a subject, what is misheard of its people, by the subject's or item's id. */
export type FirmWords = {
  /** Own names by subject: `{ "rocker": ["bottom rail"] }`. A subject the lexicon lacks is named by an item of the sheet. */
  readonly subjects?: Readonly<Record<string, readonly string[]>>;
  /** Own names of options: `{ "engine.oil": { "milky": ["latte"] } }`. */
  readonly options?: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>>;
  readonly slips?: Readonly<Record<string, string>>;
};

/**
 * A lexicon with a firm's own words added. Neither is changed; what the firm calls a thing stands beside the trade's words.
 *
 * @example
 * firmLexicon(lexiconVersion1, { subjects: { rocker: ["bottom rail"] } }).version; // 1
 */
export const firmLexicon = (
  lexicon: Lexicon,
  { subjects = {}, options = {}, slips = {} }: FirmWords,
): Lexicon => {
  const known = new Set(lexicon.subjects.map(({ id }) => id));
  const added = Object.entries(subjects)
    .filter(([id]) => !known.has(id))
    .map(([id, words]) => ({ id, items: [id], words }));
  return {
    ...lexicon,
    subjects: [
      ...lexicon.subjects.map((one) => ({ ...one, words: [...one.words, ...(subjects[one.id] ?? [])] })),
      ...added,
    ],
    options: [
      ...lexicon.options,
      ...Object.entries(options).flatMap(([item, byOption]) =>
        Object.entries(byOption).map(([option, words]) => ({ item, option, words, alone: false })),
      ),
    ],
    slips: { ...lexicon.slips, ...slips },
  };
};
