import type { Acknowledgement, MatterAnswer, OpenMatter } from "@evenhand/shared/summary";

export type Unanswered = {
  readonly matter: string;
  readonly because: "not-answered" | "no-words" | "same-words" | "not-open";
};

type Asked = Pick<OpenMatter, "id" | "severity">;

/**
 * Whether an answer asks for the buyer's own words: what stops the money does whatever is answered, and what is taken as it is.
 *
 * @example needsWords("danger", "as-it-is") // true
 */
export const needsWords = (severity: Asked["severity"], answer: MatterAnswer): boolean =>
  severity === "halt" || answer === "as-it-is";

const plain = (words: string): string => words.trim().toLowerCase().replaceAll(/\s+/g, " ");

/** The last answer given of each matter. */
const lastOf = (given: readonly Acknowledgement[]): ReadonlyMap<string, Acknowledgement> =>
  new Map(given.map((one) => [one.matter, one]));

/**
 * Which open matters are not answered for. What stops the money, and what is taken as it is, asks for the buyer's own words; what
 * stops the money for its own, not those already given for another. An answer to a matter that is not open is named too.
 *
 * @param open the summary's open matters
 * @param given the buyer's answers; of two to one matter the later counts
 * @example unanswered([{ id: "brakes", severity: "danger" }], [{ matter: "brakes", answer: "first" }]) // []
 * @example unanswered([{ id: "lien", severity: "halt" }], []) // [{ matter: "lien", because: "not-answered" }]
 */
export const unanswered = (open: readonly Asked[], given: readonly Acknowledgement[]): Unanswered[] => {
  const answers = lastOf(given);
  const said = new Set<string>();
  const missing = open.flatMap(({ id, severity }): Unanswered[] => {
    const answer = answers.get(id);
    if (answer === undefined) return [{ matter: id, because: "not-answered" }];
    if (!needsWords(severity, answer.answer)) return [];
    if (answer.words === undefined) return [{ matter: id, because: "no-words" }];
    if (severity !== "halt") return [];
    const words = plain(answer.words);
    if (said.has(words)) return [{ matter: id, because: "same-words" }];
    said.add(words);
    return [];
  });
  const known = new Set(open.map(({ id }) => id));
  const others = [...answers.keys()].filter((id) => !known.has(id));
  return [...missing, ...others.map((matter): Unanswered => ({ matter, because: "not-open" }))];
};
