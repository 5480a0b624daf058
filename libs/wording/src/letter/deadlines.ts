import { defineMessages } from "@evenhand/message/define-messages";

/** What is due, by the step that is owed, and until when. Subject and first sentence of a letter: never which car, never what was found. */
export const dueMessages = defineMessages("due", {
  "request-hour": "The hour you hold is kept for you until {due}.",
  "accept-hour": "Your answer to a buyer who asks for a visit is due by {due}.",
  "give-access": "Your answer about access for a visit is due by {due}.",
  "answer-items": "Your answer to a buyer is due by {due}.",
  "answer-contest": "Your answer to a dealer is due by {due}.",
  "answer-remedy": "Your answer to what a dealer offers is due by {due}.",
  "answer-dispute": "Your answer to a buyer who asks you about a report is due by {due}.",
  "revise-report": "The report you are revising is due by {due}.",
  "book-look": "Another look has to be booked by {due}.",
  "do-remedy": "What you promised a buyer is due by {due}.",
  "check-remedy": "Your word on what a dealer says is done is due by {due}.",
  "answer-counter": "Your answer to a counter-offer is due by {due}.",
  "answer-offer": "Your answer to a dealer’s counter-offer is due by {due}.",
});

export const silenceMessages = defineMessages("silence", {
  "hour-released": "If nothing comes by then, the hour is released and the visit is off.",
  "finding-stands":
    "If nothing comes by then, the finding stands: it counts in your record, and the car is off the list until a new statement answers it.",
  "statement-stands": "If nothing comes by then, the statement stands.",
  settled: "If nothing comes by then, the remedy counts as done.",
  "left-open": "If nothing comes by then, it is left open, settled neither way.",
  "offer-lapsed": "If nothing comes by then, the offer lapses.",
});

export const deadlineMessages = defineMessages("deadline", {
  body: "{sentence}{count, plural, one {} other { # lines wait for it; this is the earliest of their times.}} {silence}\n\nThis is where it is done:\n{link}\n\nIf a colleague has done it already, there is nothing left to do.\n",
});
