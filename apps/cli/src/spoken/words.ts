import { defineMessages } from "@evenhand/message/define-messages";

const { say } = defineMessages("terminal-spoken", {
  draft:
    "{path} is a draft of {count, plural, one {# claim} other {# claims}} read from spoken words: nothing of it is stated before somebody confirms it.",
  author: "read from spoken words",
  "not-entered": "not entered",
  "car-guessed":
    "What kind of car it is was taken from the words themselves: {body}, {doors, plural, one {# door} other {# doors}}, {cylinders, plural, one {# cylinder} other {# cylinders}}. Name a report on the same car with --beside REPORT.json.",
  inferred: "side or part taken from what was in view",
  heard: "heard as “{heard}”",
  unsure: "unsure",
  questions: "Never mentioned, gravest first: {items}.",
  "questions.more": "{items}, and {count} more",
  "not-text": "The file cannot be read: {reason}",
});

export const spokenWords = { say };
