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
