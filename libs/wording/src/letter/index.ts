import { IntlMessageFormat } from "intl-messageformat";
import type { NoticeKind } from "@evenhand/shared/http/notices";
import { type LetterCode, letters, news, newsBody } from "./letters.ts";

/** What a mail says, without who it goes to. */
export type Letter = { readonly subject: string; readonly body: string };

type Values = Readonly<Record<string, string | number>>;

const fill = (message: string, values: Values): string =>
  String(new IntlMessageFormat(message, "en-US", undefined, { ignoreTag: true }).format({ ...values }));

/**
 * A letter in words. What people wrote (a firm's name) stands as it was written and is never read as a message.
 *
 * @param values what fills the places of its body: links, addresses, names, counts
 * @throws {Error} when a place is not filled
 * @example letter("complaint-answered").subject // "Your complaint was answered."
 */
export function letter(code: LetterCode, values: Values = {}): Letter {
  const { subject, body } = letters[code];
  return { subject, body: fill(body, values) };
}

/**
 * The letter that goes with a piece of news: one sentence, and where to read the rest.
 *
 * @param address of the site
 * @example newsLetter("question-asked", "https://evenhand.example").subject // "A buyer asks about one of your cars."
 */
export const newsLetter = (kind: NoticeKind, address: string): Letter => ({
  subject: news[kind],
  body: fill(newsBody, { sentence: news[kind], address }),
});
