import { defineMessages } from "@evenhand/message/define-messages";

/**
 * What is mailed, by code: subject and body as ICU messages. Never a secret in a subject, and nothing of what was found.
 */
export const letters = defineMessages("letter", {
  "invitation.subject": "An invitation",
  "invitation.body":
    "You are invited to join {organization}.\n\n{link}\n\nThe link works once, for {days, plural, one {# day} other {# days}}. If you did not expect this letter, do nothing.\n",
  "new-password.subject": "A new password",
  "new-password.body":
    "Somebody asked for a new password for the account with this address. If it was you, choose one here:\n\n{link}\n\nThe link works once, for one hour. If it was not you, do nothing: your password stays as it is.\n",
  "password-changed.subject": "Your password was changed",
  "password-changed.body":
    "The password of your account was changed, and every other device was signed out.\n\nIf it was not you, ask for a new password by mail at once: {address}/forgotten-password\n",
  "complaint-answered.subject": "Your complaint was answered.",
  "complaint-answered.body": "Your complaint was answered.\n\nSign in to read it: {link}\n",
  "record-root.subject": "The signed root of your record",
  "record-root.body":
    "Everything that happened here and concerns your organization stands in its record: {size, plural, one {# entry} other {# entries}} as of tonight. This proves what they are:\n\n{root}\n\nKeep this letter. With it anybody can show later whether an entry was changed, left out or cut off; without it nobody can show that of the last ones. It says nothing of any car.\n\n{address}\n",
  "visit-on-calendar.subject": "An inspection visit for your calendar",
  "visit-on-calendar.body": "An inspection visit for your calendar.\n\nSign in to read it: {link}\n",
  "visit-off-calendar.subject": "An inspection visit is off",
  "visit-off-calendar.body": "An inspection visit is off.\n\nSign in to read it: {link}\n",
});

type LetterId = keyof typeof letters.templates;

/** A letter by its code. */
export type LetterCode = LetterId extends infer Id ? (Id extends `${infer Code}.body` ? Code : never) : never;

/** One sentence a piece of news. Which car and what was found stand behind the sign-in, never in the mail. */
export const news = defineMessages("news", {
  "order-received": "A buyer asks you to inspect a car.",
  "order-accepted": "An inspection you ordered was accepted.",
  "order-declined": "An inspection you ordered was declined.",
  "order-cancelled": "An inspection order was cancelled.",
  "inspection-sealed": "An inspection report is sealed, and the comparison is ready.",
  "items-released": "A buyer lays items of an inspection before you for an answer.",
  "release-answered": "The dealer has answered items you released.",
  "settlement-moved": "Something you are settling has moved on.",
  "settlement-asked": "A buyer asks you about a finding that the dealer contests.",
  "decision-made": "A buyer has decided about one of your cars.",
  "counter-answered": "The dealer has answered your counter-offer.",
  "offer-answered": "The buyer has answered your counter-offer.",
  "offer-withdrawn": "A buyer has withdrawn a counter-offer.",
  "offer-lapsed": "An offer has lapsed: its time ended without an answer.",
  "appointment-requested": "A buyer asks for a visit at an hour of yours.",
  "appointment-accepted": "A visit was accepted by the inspector.",
  "appointment-declined": "A visit was declined.",
  "appointment-confirmed": "A visit is confirmed.",
  "appointment-rescheduled": "A visit was moved to another hour.",
  "appointment-cancelled": "A visit was cancelled.",
  "appointment-missed": "A visit was missed.",
  "appointment-expired": "A visit was not answered in time.",
  "brief-proposed": "A buyer proposes a change to a brief.",
  "brief-answered": "A change to a brief was answered.",
  "question-asked": "A buyer asks about one of your cars.",
  "question-answered": "A question of yours was answered.",
  "car-collected": "A car was collected by its carrier.",
  "car-delivered": "A car was delivered by its carrier.",
  "deadline-near": "Something of yours is due soon.",
});

export const newsLetters = defineMessages("news-letter", {
  body: "{sentence}\n\nSign in to read it: {link}\n",
});
