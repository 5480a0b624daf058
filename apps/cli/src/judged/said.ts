import type { Comparison, Entry } from "@evenhand/shared/comparison";
import type { Report } from "@evenhand/shared/report";
import type { Severity } from "@evenhand/shared/severity";

/** What a judge can want of a line, and what a comparison can say. `nothing`: no line at all. */
export const WORDS = [
  "contradicted",
  "differ",
  "found-bad-unmentioned",
  "doubtful",
  "agreed-fault",
  "unseen-ask",
  "found-no-yardstick",
  "not-comparable",
  "not-contradicted",
  "agree",
  "sound",
  "not-fitted",
  "circumstance",
  "nothing",
] as const;
/** From the worst down: for a place the worst of its lines counts. */
export type Word = (typeof WORDS)[number];

const worst = (words: readonly Word[]): Word =>
  words.reduce<Word>((a, b) => (WORDS.indexOf(b) < WORDS.indexOf(a) ? b : a), "nothing");

/**
 * What one line says, in the judges' words.
 *
 * @example saidByEntry({ ...entry, outcome: "agree", marks: ["both-bad"] }) // "agreed-fault"
 */
export const saidByEntry = ({ outcome, marks, coverageOnly, severity, finding, standing }: Entry): Word => {
  if (standing === "contradicted-by-figures" || (outcome === "differ" && marks.includes("by-figures"))) {
    return "contradicted";
  }
  if (marks.includes("not-fitted") && (outcome === "agree" || coverageOnly === true)) return "not-fitted";
  if (marks.includes("perhaps-unit")) return "not-comparable";
  if (coverageOnly === true) return "sound";
  switch (outcome) {
    case "agree":
      return marks.includes("both-bad") ? "agreed-fault" : "agree";
    case "consistent":
      return marks.includes("both-bad") ? "agreed-fault" : "not-contradicted";
    case "unstated":
      return marks.includes("no-yardstick") ? "found-no-yardstick" : "found-bad-unmentioned";
    case "unseen":
      // Nobody spoke of it and nothing hangs on it: no line anybody reads.
      return finding.a === null && finding.b === null && severity === null ? "nothing" : "unseen-ask";
    case "incomparable":
      return "not-comparable";
    default:
      return outcome;
  }
};

export type Said = { readonly word: Word; readonly severity: Severity | null };

const statedKind = ({ atom, finding }: Entry, a: Report): string | undefined => {
  const stated = a.findings[finding.a ?? -1]?.answer;
  return atom.of === "fault" && stated?.kind === "faults" ? stated.found[atom.a ?? -1]?.kind : undefined;
};

/** A place, and of its faults one kind only where `kind` is given. */
export type JudgedPlace = {
  readonly item: string;
  readonly position: string;
  readonly kind: string | undefined;
};

const linesOf = ({ entries }: Comparison, a: Report, { item, position, kind }: JudgedPlace): Entry[] => {
  const lines = entries.filter((entry) => entry.item === item && entry.position === position);
  if (kind === undefined) return lines;
  const found = lines.filter(({ atom }) => atom.of !== "answer" && atom.kind === kind);
  if (found.length > 0) return found;
  const stated = lines.filter((line) => statedKind(line, a) === kind);
  return stated.length > 0 ? stated : lines.filter(({ atom }) => atom.of !== "fault");
};

/** What a comparison says of a place: the worst of its lines. */
export const saidOf = (comparison: Comparison, a: Report, place: JudgedPlace): Said => {
  const lines = linesOf(comparison, a, place);
  const word = worst(lines.map(saidByEntry));
  return { word, severity: lines.find((line) => saidByEntry(line) === word)?.severity ?? null };
};
