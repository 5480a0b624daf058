import { defineMessages } from "@evenhand/message/define-messages";
import { listed } from "@evenhand/message/listed";
import type { RowState } from "@evenhand/comparison/many-reports";
import type { Work } from "@evenhand/comparison/worklist";
import type { Comparison, Scatter } from "@evenhand/shared/comparison";

const { say } = defineMessages("terminal", {
  "more-pressing": "… and {count} more; they stand in their sections.",
  "also-breaks": "On the same fact also: {rules}.",
  section: "{number}. {words}",
  "unseen-places": "{count, plural, one {# place} other {# places}} unseen",
  "quiet-places": "{count, plural, one {# place} other {# places}} seen, sound and not stated",
  "rules-hold": "{sign} holds: {rules}.",
  "rule-times": "{title} ({checks})",
  "rules-cannot-tell":
    "{sign} {count, plural, one {# check} other {# checks}} could not tell: too little was read, or the uncertainty covers the boundary.",
  "own-limits": "{count, plural, one {# limit is} other {# limits are}} {organization}'s own.",
  "own-maker": "Figures of the make, entered by {organization}: {source}.",
  "who-says-what":
    "{reports, plural, one {# report} other {# reports}} on one car by {parties, plural, one {# party} other {# parties}}",
  "work.read-again": "{count, plural, one {# reading} other {# readings}} in all with what it was read with",
  "work.use-instrument":
    "{count, plural, one {# reading} other {# readings}} with an ordinary instrument instead of by eye",
  "work.read-on-one-day": "to be read by both on one day: it drifts",
  "work.read-code-again": "the code, to be read again character by character",
  "work.look-again": "to be looked at again and answered more closely",
  "work.finer-instrument": "no number of readings with these instruments settles it",
  worklist:
    "What would settle what is open: {count, plural, one {# line} other {# lines}}, about {minutes, plural, one {# minute} other {# minutes}}",
  softness:
    "Of {decisive} decisive places (what can stop a purchase, hurt somebody or carry the price) the statement hedged {hedged}, judged {byEye} by eye and was silent on {silent}.",
  chance:
    "Of {readings, plural, one {# reading} other {# readings}} compared {doubtful} came out doubtful; chance alone would give about {expected}.",
  scatter:
    "{count, plural, one {# reading agrees or differs} other {# readings agree or differ}} only if both sides measured as exactly as they declared",
  "scatter.more":
    "By what was found better than stated, the two sides scatter more than they declared: {hang}.",
  "scatter.not-against": "{hang}; what was found better than stated does not speak against it.",
  repeats:
    "{side}: {places, plural, one {# place} other {# places}} read more than once tell; their variance is {ratio} times the sheet's, over {degrees} degrees of freedom.",
  "alike-readings":
    "Of {compared, plural, one {# reading} other {# readings}} both sides took {same} are the same to the last digit; chance makes at most about {expected} so.",
  picture: "A {a}, B {b}; a difference of {delta} matters",
  "house-steps": "{steps} house steps apart",
  characters: "{count, plural, one {# character} other {# characters}} apart",
  "characters.passes.a": "{apart}; A passes the check digit",
  "characters.passes.b": "{apart}; B passes the check digit",
  "characters.passes.both": "{apart}; both pass the check digit",
  "characters.passes.neither": "{apart}; neither passes the check digit",
  labelled: "{label}: {words}",
  noted: "{words} ({note})",
  report: "{side}  {kind} of {day} by {organization}, {findings}",
  author: "{organization}, {kind} of {day}",
  car: "{modelYear} {make} {model}, {identification}",
  standings: "{label}: {counts}.",
  "in-reading": "Δ {difference}; δ {delta}",
  "in-color": "{difference}; δ {delta}",
  findings: "{count, plural, one {# finding} other {# findings}}",
});
const fixed = defineMessages("terminal.page", {
  title: "Two reports on one car, set against each other",
  stated: "Stated",
  found: "Found",
  item: "Item",
  outcomeHeading: "Outcome",
  mostPressing: "Most pressing first",
  contradicted: "✗ Contradicted by figures: a rule of the handbook speaks against the claim.",
  noneInDoubt:
    "No line that both answered differs or is in doubt. What nobody looked at stands below, and is not sound.",
  totals: "Totals",
  standings: "How the items stand for the buyer",
  crossChecks: "What the figures themselves give away",
  hint: "· hint",
  noneBroken: "No rule of the handbook is broken.",
  ownReportsDiffer: "one party's own reports differ",
  notCounted:
    "Nobody is outvoted: a firm speaks once, by its latest report. No certificate of roadworthiness, no valuation: local law and a licensed mechanic decide.",
  cautions: "Before any of it, as on the sheet",
  coverage: "Coverage",
  whole: "whole sheet",
  unseenDecisive: "Nobody saw, of what a purchase can turn on",
  limit: "limit",
  caution:
    "This sets two reports against each other. It is no certificate of roadworthiness, no valuation, no legal advice and no contract. Local law, a licensed mechanic and the local authority decide.",
  sealed: "sealed",
});

const catalogSign = { holds: "✓", breaks: "✗", "cannot-tell": "·" } as const;

/** Every string the command line shows, apart from the sentences of the comparison, which have a catalog of their own. */
export const catalog = {
  ...fixed.templates,
  silent: "—",
  morePressing: (count: number) => say("more-pressing", { count }),
  alsoBreaks: (rules: readonly string[]) => say("also-breaks", { rules: listed(rules, "semicolon") }),
  section: (number: number, words: string) => say("section", { number, words }),
  unseenBySection: (count: number) => say("unseen-places", { count }),
  quietBySection: (count: number) => say("quiet-places", { count }),
  verdict: { holds: "holds", breaks: "breaks", "cannot-tell": "cannot tell" },
  verdictSign: catalogSign,
  whose: { a: "A alone", b: "B alone", both: "A and B" },
  rulesHold: (holding: readonly { readonly title: string; readonly checks: number }[]) =>
    say("rules-hold", {
      sign: catalogSign.holds,
      rules: listed(
        holding.map(({ title, checks }) => (checks > 1 ? say("rule-times", { title, checks }) : title)),
        "semicolon",
      ),
    }),
  rulesCannotTell: (count: number) => say("rules-cannot-tell", { sign: catalogSign["cannot-tell"], count }),
  ownHandbook: ({ limits, makerSource }: NonNullable<Comparison["handbook"]>, organization: string) => {
    const own = Object.keys(limits).length;
    return [
      ...(own === 0 ? [] : [say("own-limits", { count: own, organization })]),
      ...(makerSource === null ? [] : [say("own-maker", { organization, source: makerSource })]),
    ].join(" ");
  },
  rowState: {
    disputed: "disputed",
    "in-doubt": "in doubt",
    agreed: "agreed",
    "one-party": "one party",
  } satisfies Readonly<Record<RowState, string>>,
  whoSaysWhat: (parties: number, reports: number) => say("who-says-what", { parties, reports }),
  work: {
    "read-again": (count: number) => say("work.read-again", { count }),
    "use-instrument": (count: number) => say("work.use-instrument", { count }),
    "read-on-one-day": () => say("work.read-on-one-day"),
    "read-code-again": () => say("work.read-code-again"),
    "look-again": () => say("work.look-again"),
    "finer-instrument": () => say("work.finer-instrument"),
  } satisfies Readonly<Record<Work, (count: number) => string>>,
  worklist: (count: number, minutes: number) => say("worklist", { count, minutes: Math.round(minutes) }),
  coverageHead: {
    of: "",
    onSheet: "on sheet",
    stated: "stated",
    seen: "seen",
    both: "both",
    share: "seen of stated",
  },
  softness: (of: { decisive: number; hedged: number; byEye: number; silent: number }) => say("softness", of),
  chance: (of: { readings: number; doubtful: number; expectedDoubtful: number }) =>
    say("chance", {
      readings: of.readings,
      doubtful: of.doubtful,
      expected: of.expectedDoubtful.toFixed(1),
    }),
  /** `undefined` where every reading stands as well by how far the two really scatter. */
  scatter: ({ asDeclared, onlyAsDeclared }: Scatter): string | undefined => {
    if (onlyAsDeclared === 0) return undefined;
    const hang = say("scatter", { count: onlyAsDeclared });
    return say(asDeclared !== null && asDeclared < 0.5 ? "scatter.more" : "scatter.not-against", { hang });
  },
  /** What repeats of each side, and readings both wrote alike, come to. */
  likeness: ({ repeats, likeReadings }: Pick<Comparison, "repeats" | "likeReadings">): string[] => [
    ...(["a", "b"] as const).flatMap((side) => {
      const own = repeats?.[side];
      if (own?.ratio === undefined) return [];
      const { places, degreesOfFreedom: degrees, ratio } = own;
      return [say("repeats", { side: side.toUpperCase(), places, degrees, ratio: ratio.toFixed(1) })];
    }),
    ...(likeReadings === undefined
      ? []
      : [
          say("alike-readings", {
            compared: likeReadings.compared,
            same: likeReadings.same,
            expected: likeReadings.expected.toFixed(1),
          }),
        ]),
  ],
  picture: (a: string, b: string, delta: string) => say("picture", { a, b, delta }),
  limitSide: { min: "at least", max: "at most" },
  gradeFigures: (steps: string) => say("house-steps", { steps }),
  codeFigures: (places: number, passes: "a" | "b" | "both" | "neither" | null) => {
    const apart = say("characters", { count: places });
    return passes === null ? apart : say(`characters.passes.${passes}`, { apart });
  },
  labelled: (label: string, words: string) => say("labelled", { label, words }),
  noted: (words: string, note: string | number) => say("noted", { words, note }),
  report: (of: { side: string; kind: string; day: string; organization: string; findings: string }) =>
    say("report", of),
  author: (of: { organization: string; kind: string; day: string }) => say("author", of),
  car: (of: { modelYear: number; make: string; model: string; identification: string }) => say("car", of),
  standingsLine: (label: string, counts: readonly string[]) =>
    say("standings", { label, counts: listed(counts) }),
  inReading: (difference: string, delta: string) => say("in-reading", { difference, delta }),
  inColor: (difference: string, delta: string) => say("in-color", { difference, delta }),
  findings: (count: number) => say("findings", { count }),
} as const;
