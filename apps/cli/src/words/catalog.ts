import type { RowState } from "@evenhand/comparison/many-reports";
import type { Work } from "@evenhand/comparison/worklist";
import type { Comparison, Scatter } from "@evenhand/shared/comparison";

const plural = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;

const catalogSign = { holds: "✓", breaks: "✗", "cannot-tell": "·" } as const;

/** Every string the command line shows, apart from the sentences of the comparison, which have a catalog of their own. */
export const catalog = {
  title: "Two reports on one car, set against each other",
  stated: "Stated",
  found: "Found",
  item: "Item",
  outcomeHeading: "Outcome",
  silent: "—",
  mostPressing: "Most pressing first",
  morePressing: (count: number) => `… and ${count} more; they stand in their sections.`,
  contradicted: "✗ Contradicted by figures: a rule of the handbook speaks against the claim.",
  alsoBreaks: (rules: readonly string[]) => `On the same fact also: ${rules.join("; ")}.`,
  noneInDoubt:
    "No line that both answered differs or is in doubt. What nobody looked at stands below, and is not sound.",
  section: (number: number, words: string) => `${number}. ${words}`,
  unseenBySection: (count: number) => plural(count, "place unseen", "places unseen"),
  quietBySection: (count: number) => `${plural(count, "place", "places")} seen, sound and not stated`,
  totals: "Totals",
  standings: "How the items stand for the buyer",
  crossChecks: "What the figures themselves give away",
  verdict: { holds: "holds", breaks: "breaks", "cannot-tell": "cannot tell" },
  verdictSign: catalogSign,
  hint: "· hint",
  whose: { a: "A alone", b: "B alone", both: "A and B" },
  noneBroken: "No rule of the handbook is broken.",
  rulesHold: (holding: readonly { readonly title: string; readonly checks: number }[]) =>
    `${catalogSign.holds} holds: ${holding.map(({ title, checks }) => (checks > 1 ? `${title} (${checks})` : title)).join("; ")}.`,
  rulesCannotTell: (count: number) =>
    `${catalogSign["cannot-tell"]} ${plural(count, "check", "checks")} could not tell: too little was read, or the uncertainty covers the boundary.`,
  ownHandbook: ({ limits, makerSource }: NonNullable<Comparison["handbook"]>, organization: string) => {
    const own = Object.keys(limits).length;
    return [
      ...(own === 0 ? [] : [`${own} ${own === 1 ? "limit is" : "limits are"} ${organization}'s own.`]),
      ...(makerSource === null ? [] : [`Figures of the make, entered by ${organization}: ${makerSource}.`]),
    ].join(" ");
  },
  rowState: {
    disputed: "disputed",
    "in-doubt": "in doubt",
    agreed: "agreed",
    "one-party": "one party",
  } satisfies Readonly<Record<RowState, string>>,
  whoSaysWhat: (parties: number, reports: number) =>
    `${plural(reports, "report", "reports")} on one car by ${plural(parties, "party", "parties")}`,
  ownReportsDiffer: "one party's own reports differ",
  notCounted:
    "Nobody is outvoted: a firm speaks once, by its latest report. No certificate of roadworthiness, no valuation: local law and a licensed mechanic decide.",
  work: {
    "read-again": (count: number) =>
      `${plural(count, "reading", "readings")} in all with what it was read with`,
    "use-instrument": (count: number) =>
      `${plural(count, "reading", "readings")} with an ordinary instrument instead of by eye`,
    "read-on-one-day": () => "to be read by both on one day: it drifts",
    "measure-extent": () => "to be measured: how far it reaches",
    "read-code-again": () => "the code, to be read again character by character",
    "look-again": () => "to be looked at again and answered more closely",
    "finer-instrument": () => "no number of readings with these instruments settles it",
  } satisfies Readonly<Record<Work, (count: number) => string>>,
  cautions: "Before any of it, as on the sheet",
  worklist: (count: number, minutes: number) =>
    `What would settle what is open: ${plural(count, "line", "lines")}, about ${plural(Math.round(minutes), "minute", "minutes")}`,
  coverage: "Coverage",
  coverageHead: {
    of: "",
    onSheet: "on sheet",
    stated: "stated",
    seen: "seen",
    both: "both",
    share: "seen of stated",
  },
  whole: "whole sheet",
  unseenDecisive: "Nobody saw, of what a purchase can turn on",
  softness: (of: { decisive: number; hedged: number; byEye: number; silent: number }) =>
    `Of ${of.decisive} decisive places (what can stop a purchase, hurt somebody or carry the price) the statement hedged ${of.hedged}, judged ${of.byEye} by eye and was silent on ${of.silent}.`,
  chance: (of: { readings: number; doubtful: number; expectedDoubtful: number }) =>
    `Of ${plural(of.readings, "reading", "readings")} compared ${of.doubtful} came out doubtful; chance alone would give about ${of.expectedDoubtful.toFixed(1)}.`,
  /** `undefined` where every reading stands as well by how far the two really scatter. */
  scatter: ({ asDeclared, onlyAsDeclared }: Scatter): string | undefined => {
    if (onlyAsDeclared === 0) return undefined;
    const hang = `${plural(onlyAsDeclared, "reading agrees or differs", "readings agree or differ")} only if both sides measured as exactly as they declared`;
    return asDeclared !== null && asDeclared < 0.5
      ? `By what was found better than stated, the two sides scatter more than they declared: ${hang}.`
      : `${hang}; what was found better than stated does not speak against it.`;
  },
  picture: (a: string, b: string, delta: string) => `A ${a}, B ${b}; a difference of ${delta} matters`,
  limit: "limit",
  limitSide: { min: "at least", max: "at most" },
  gradeFigures: (steps: string) => `${steps} house steps apart`,
  codeFigures: (places: number, passes: "a" | "b" | "both" | "neither" | null) => {
    const apart = `${plural(places, "character", "characters")} apart`;
    if (passes === null) return apart;
    const which = { a: "A passes", b: "B passes", both: "both pass", neither: "neither passes" }[passes];
    return `${apart}; ${which} the check digit`;
  },
  caution:
    "This sets two reports against each other. It is no certificate of roadworthiness, no valuation, no legal advice and no contract. Local law, a licensed mechanic and the local authority decide.",
  sealed: "sealed",
  findings: (count: number) => plural(count, "finding", "findings"),
} as const;
