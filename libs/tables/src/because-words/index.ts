import { defineMessages } from "@evenhand/message/define-messages";
import type { Aside } from "../grid/index.ts";
import type { RefusedBecause } from "../propose/reading.ts";
import type { NoteKind } from "../read-table/outcome.ts";

const REFUSED = {
  "no-item": "nothing the sheet asks is called so",
  "no-place": "it does not say where: left, right, front or rear",
  twice: "something above it has answered this already",
  "no-number": "a figure is asked for, and none stands there",
  "several-figures": "several figures stand there, and not which of them is meant",
  "other-unit": "the unit is of another kind than what is measured",
  "not-plausible": "the figure is outside of anything that is read there",
  "no-such-word": "the words are not among the answers there are",
  "several-answers": "several answers stand there, and only one may be given",
  "bad-but-not-how": "it is said to be bad, and not what is wrong with it",
  "no-scale": "a number is given as a grade, and nothing says of what scale",
  "spreadsheet-error": "the spreadsheet shows an error instead of a value",
  "nothing-said": "it is marked as not applying",
} as const;

const NOTES = {
  heading: "heading",
  fact: "fact of the visit or the car",
  remark: "remark",
  "left-blank": "left blank",
} as const;

const ASIDE = {
  formulas:
    "{count, plural, one {# cell is} other {# cells are}} what a formula gave when the file was saved; nothing was computed.",
  "external-links":
    "The workbook links to {count, plural, one {another file} other {# other files}}; none was opened.",
  macros: "The workbook holds macros; they were not looked at.",
  "hidden-worksheet": "The hidden worksheet “{name}” was left unread.",
} as const;

const refused = defineMessages("table-row-refused", REFUSED);
const notes = defineMessages("table-row-note", NOTES);
const aside = defineMessages("table-aside", ASIDE);

/** Why something in a row became no finding. */
export type Because = RefusedBecause;

/**
 * Why something in a row became no finding, for whoever wrote the row.
 *
 * @example becauseWords("no-place") // "it does not say where: left, right, front or rear"
 */
export const becauseWords = (why: Because): string => refused.say(why);

/** What a row is that holds no finding. */
export const noteWords = (note: NoteKind): string => notes.say(note);

/** What of a file was left aside, in a sentence. */
export const asideWords = (left: Aside): string => {
  switch (left.kind) {
    case "formulas":
    case "external-links":
      return aside.say(left.kind, { count: left.count });
    case "macros":
      return aside.say("macros");
    case "hidden-worksheet":
      return aside.say("hidden-worksheet", { name: left.name });
  }
};
