import { defineMessages } from "@evenhand/message/define-messages";

const { say } = defineMessages("terminal-read", {
  summary:
    "{rows, plural, one {# row} other {# rows}}: {findings, plural, one {# finding} other {# findings}} in {withFindings}, {notes, plural, one {# note} other {# notes}}, {refused, plural, one {# refused} other {# refused}}. {open, plural, =0 {Nothing is} one {# finding is} other {# findings are}} left to be settled by hand.",
  draft:
    "{file} is a draft: {findings, plural, one {# finding was} other {# findings were}} read from an inspector’s own sheet, {open} of them unsure, and nobody has confirmed any. {refused, plural, =0 {No row was} one {# row was} other {# rows were}} refused; npm run read -- {file} --table shows every row.",
  "not-taken": "row {row}{grid}: {reason}",
  of: " of {grid}",
  "no-car":
    "Sheets say nothing of the car they were made on: name a report file on the same car beside them.",
  missing:
    "What no sheet says is missing from this report: the car, who wrote it, and when. Put vehicle, author and visit in, or name a report on the same car with --beside REPORT.json.",
  sure: "sure",
  unsure: "unsure",
  "said-at": "{place}: {answer}",
  "refused-because": "refused: {reason}",
  "refused-of": "refused ({item}): {reason}",
  "row-heading": "Row",
  "text-heading": "What stands there",
  "becomes-heading": "What it becomes",
  "sure-heading": "How sure",
});

export const readWords = { say };
