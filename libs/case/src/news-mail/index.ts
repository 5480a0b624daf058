import type { NewsMail, NoticeKind } from "@evenhand/shared/http/notices";

/** When a piece of news goes out by mail: now, with the letter of the next morning, or not at all. */
export type MailTime = "now" | "morning" | "never";

const times: Readonly<Record<NewsMail, MailTime>> = {
  "at-once": "now",
  daily: "morning",
  deadlines: "never",
};

/**
 * When a piece of news is mailed to somebody. A deadline that nears is always told now: gathered, the letter could come after it.
 * What is no news (a new password, an invitation) is not asked about here, and always goes.
 *
 * @example mailTime("question-asked", "daily") // "morning"
 * @example mailTime("deadline-near", "deadlines") // "now"
 */
export const mailTime = (kind: NoticeKind, choice: NewsMail): MailTime =>
  kind === "deadline-near" ? "now" : times[choice];
