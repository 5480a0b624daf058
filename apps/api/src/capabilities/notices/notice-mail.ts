import type { NoticeKind } from "@evenhand/shared/http/notices";

/** One sentence each. Which car and what was found stand behind the sign-in, never in the mail. */
const sentences: Readonly<Record<NoticeKind, string>> = {
  "order-received": "A buyer asks you to inspect a car.",
  "order-accepted": "An inspection you ordered was accepted.",
  "order-declined": "An inspection you ordered was declined.",
  "order-cancelled": "An inspection order was cancelled.",
  "inspection-sealed": "An inspection report is sealed, and the comparison is ready.",
  "items-released": "A buyer lays items of an inspection before you for an answer.",
  "release-answered": "The dealer has answered items you released.",
  "decision-made": "A buyer has decided about one of your cars.",
  "counter-answered": "The dealer has answered your counter-offer.",
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
};

export const noticeMail = (kind: NoticeKind, address: string): { subject: string; body: string } => ({
  subject: sentences[kind],
  body: `${sentences[kind]}\n\nSign in to read it: ${address}\n`,
});
