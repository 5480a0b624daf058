import type { Answer, AnsweredMatter } from "@evenhand/shared/page-one";
import { notSeenWords } from "@evenhand/comparison/sentence";
import type { Severity } from "@evenhand/shared/severity";

const CAUTION =
  "No certificate, valuation, legal advice or contract: local law and a licensed mechanic decide.";

const HOW_GRAVE: Readonly<Record<Severity, string>> = {
  halt: "stops the money",
  danger: "can hurt somebody",
  worth: "the price rests on it",
  repair: "money to put right",
  small: "a trifle",
};

const statedWorseSaid = (count: number): string =>
  count === 0
    ? ""
    : ` To the dealer's credit: ${count === 1 ? "one fault was" : `${count} faults were`} stated worse than found.`;

/** Words of page one, each made from what was counted. */
export const answerWords = {
  caution: CAUTION,
  lookedHeading: "Looked at by",
  stopsHeading: "What stops the money",
  noStop: "every place that could was seen, and none does.",
  couldStop: (count: number): string => `Not known, and could stop the money (${count})`,
  fell: "≠",
  inAll: (count: number): string => `${count} kinds of it, the first two`,
  claimsHeading: "What became of the statement",
  mattersHeading: "What is wrong, worst first",
  noMatter: "No matter was found in what was looked at.",
  unknownHeading: "What nobody knows",
  costHeading: "Cost to put right",
  questionsHeading: "Ask the dealer",
  softHeading: "What softens it",
  noCost: "not worked out: name your own table with --costs FILE.",
  grave: (severity: Severity): string => HOW_GRAVE[severity],
  more: (count: number): string => `and ${count} more`,
  looked: ({ by, started, minutes, couldNot }: Answer["looked"]): string => {
    const time = minutes === null ? "" : `, ${minutes} minutes`;
    const not = couldNot.map(({ reason, places }) => `${notSeenWords(reason)} ${places}`).join(", ");
    return `${by}, ${started.slice(0, 10)}${time}.${not === "" ? "" : ` Places not seen, and why: ${not}.`}`;
  },
  claims: ({
    stated,
    decisive,
    held,
    disclosed,
    fell,
    doubtful,
    unseen,
    notComparable,
    statedWorse = 0,
  }: Answer["claims"]): string => {
    const [spoken, counting] =
      decisive === undefined
        ? ["", ""]
        : [` (${decisive.stated} of the ${decisive.onSheet} that count)`, ` (${decisive.held} that count)`];
    return `Of ${stated} places stated${spoken}: ${fell} fell, ${doubtful} in doubt, ${unseen} not seen, ${notComparable} not comparable, ${disclosed} owned up to, ${held} not contradicted${counting}.${statedWorseSaid(statedWorse)}`;
  },
  next: ({ matter: { next } }: AnsweredMatter): string =>
    next.minutes === undefined ? next.words : `${next.words}, about ${next.minutes} min`,
};
