import { formatMessage } from "@evenhand/message/format-message";
import type { NoticeKind } from "@evenhand/shared/http/notices";
import { type LetterCode, letters, news, newsLetters } from "./letters.ts";

/** What a mail says, without who it goes to. */
export type Letter = { readonly subject: string; readonly body: string };

type Values = Readonly<Record<string, string | number>>;

/**
 * A letter in words. What people wrote (a firm's name) stands as it was written and is never read as a message.
 *
 * @param values what fills the places of its body: links, addresses, names, counts
 * @throws {Error} when a place is not filled
 * @example letter("complaint-answered").subject // "Your complaint was answered."
 */
export function letter(code: LetterCode, values: Values = {}): Letter {
  return {
    subject: letters.say(`${code}.subject`),
    body: formatMessage<string>(letters.templates[`${code}.body`], values),
  };
}

/**
 * The letter that goes with a piece of news: one sentence, and where to read the rest.
 *
 * @param address of the site
 * @example newsLetter("question-asked", "https://evenhand.example").subject // "A buyer asks about one of your cars."
 */
export const newsLetter = (kind: NoticeKind, address: string): Letter => ({
  subject: news.say(kind),
  body: newsLetters.say("body", { sentence: news.say(kind), address }),
});
