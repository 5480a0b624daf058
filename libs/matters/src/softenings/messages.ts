import { defineMessages } from "@evenhand/message/define-messages";

/** What softens an answer, in sentences for a buyer: each with its counts, none about anybody's character. */
export const softMessages = defineMessages("soft", {
  "only-as-declared":
    "Of {readings, plural, one {# reading} other {# readings}} set against each other, {count, plural, one {# agrees or differs} other {# agree or differ}} only if both sides measured as exactly as they say; what was found better than stated {more, select, yes {speaks against it} other {does not speak against it}}.",
});

/** Whose answers, how many of how many: words that accuse nobody, and say what the answers cannot do. */
export const spokenMessages = defineMessages("spoken", {
  open: "{Side} leaves {count} of the {of} places that count open ({why}).",
  unmentioned: "{count} not mentioned",
  "not-seen": "{count} not seen",
  "not-known": "{count} not known",
  hedged:
    "{Side} hedges {hedged} of its {of} answers that count{told, plural, =0 {} other { and has # from others}}: it vouches for none of these.",
  unmeasured: "{Side} names no instrument for {count} of its {of} readings, {eye} of them by eye.",
  coarse:
    "{Side} names an instrument over three times as coarse as ordinary for {count} of its {of} readings.",
  scattered: "{Side} gives {count} of its {of} readings as values too far apart for one place.",
  vague: "{Side} does not say how large or where at {count} of its {of} places with faults.",
  "wide-scale": "{Side} gives {count} of its {of} grades in steps wider than a fifth: they confirm little.",
  praised:
    "{Side} calls {count} of its {of} grades {words}, which its own scale puts no higher than the middle.",
  word: "“{word}”",
  days: "{count, plural, one {# difference} other {# differences}} from {side} (dated {date}) {count, plural, one {is} other {are}} put down to the days between.",
});

/** What readings say by being alike, or too far apart: a question with its evidence, and nothing about anybody. */
export const alikeMessages = defineMessages("alike", {
  copied:
    "Of {compared} readings both sides took, {same} are the same to the last digit, where chance makes at most about {most} so: {ask}",
  "ask.none-blind": "was {later} written from {earlier}? Ask how each was read.",
  "ask.either": "was one written from the other? Ask how each was read.",
  "ask.all-blind":
    "{later} gave all of them before {earlier} was shown, so they are no copy of it. Ask whether both go back to one earlier report.",
  "ask.some-blind":
    "{later} gave {blind} of them before {earlier} was shown, which are no copy of it. Ask how the others were read.",
  "copied.figures":
    "So many by chance: {chance}, by declared scatter and rounding. Only these two reports were compared.",
  "too-alike":
    "{Side} reads {places} places more than once, and the readings {times, plural, =0 {are all the same, which separate ones are not} other {lie closer together than separate ones do ({times} of the usual scatter)}}: ask whether each was read anew.",
  "scatters-more":
    "{Side} reads {places} places more than once, and the readings lie farther apart than such readings do ({times} times the usual scatter): each is worth less than its figures say.",
  "repeats.figures":
    "Variance {ratio} times the declared, over {degrees} degrees of freedom; by chance: {chance}.",
  rare: "less than one in a thousand",
  chance: "{p}",
  by: "{report} by {organization}",
});
