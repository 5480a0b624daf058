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
};

export const noticeMail = (kind: NoticeKind, address: string | null): { subject: string; body: string } => ({
  subject: sentences[kind],
  body: `${sentences[kind]}\n\nSign in to read it${address === null ? "" : `: ${address}`}\n`,
});
