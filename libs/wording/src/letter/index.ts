import { formatMessage } from "@evenhand/message/format-message";
import type { DeadlineStep, Silence } from "@evenhand/shared/http/cases";
import type { NewsKind, NoticeKind } from "@evenhand/shared/http/notices";
import { deadlineMessages, dueMessages, silenceMessages } from "./deadlines.ts";
import { digestMessages } from "./digest.ts";
import { dueTime } from "./due-time.ts";
import { type LetterCode, letters, news, newsLetters } from "./letters.ts";

/** What a mail says, without who it goes to. */
export type Letter = { readonly subject: string; readonly body: string };

type Values = Readonly<Record<string, string | number>>;

/**
 * A letter in words. What people wrote (a firm's name) stands as it was written and is never read as a message.
 *
 * @param values what fills the places of its body: links, addresses, names, counts
 * @throws {Error} when a place is not filled
 * @example letter("complaint-answered", { link: "https://evenhand.example/complaints/1" }).subject // "Your complaint was answered."
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
 * @param link the page that the news is about
 * @example newsLetter("question-asked", "https://evenhand.example/questions/1").subject // "A buyer asks about one of your cars."
 */
export const newsLetter = (kind: NewsKind, link: string): Letter => ({
  subject: news.say(kind),
  body: newsLetters.say("body", { sentence: news.say(kind), link }),
});

/** What is due, and until when. `due` in epoch milliseconds. */
export type Due = {
  readonly step: DeadlineStep;
  readonly silence: Silence;
  /** How many lines wait for it; 1 where it is no line. */
  readonly count: number;
  readonly due: number;
  /** Of the place where the car stands, as IANA names it. */
  readonly zone: string;
  /** The page where it is done. */
  readonly link: string;
};

/**
 * The letter that reminds somebody of a deadline: what is due and until when, what silence comes to, and where it is done.
 *
 * @example
 * deadlineLetter({ step: "answer-items", silence: "finding-stands", count: 1, due: Date.UTC(2027, 4, 5, 18),
 *   zone: "America/Chicago", link }).subject // "Your answer to a buyer is due by Wed, May 5, 1:00 PM CDT."
 */
export function deadlineLetter({ step, silence, count, due, zone, link }: Due): Letter {
  const sentence = dueMessages.say(step, { due: dueTime(due, zone, "whole") });
  return {
    subject: dueMessages.say(step, { due: dueTime(due, zone, "brief") }),
    body: deadlineMessages.say("body", { sentence, count, silence: silenceMessages.say(silence), link }),
  };
}

/**
 * The letter that gathers a day's news: what happened, in the order it first did, and how often.
 *
 * @param kinds of everything that happened, the oldest first
 * @param address of the site
 * @example digestLetter(["question-asked"], "https://evenhand.example").subject // "Your news since the last letter"
 */
export function digestLetter(kinds: readonly NoticeKind[], address: string): Letter {
  const counts = new Map<NoticeKind, number>();
  for (const kind of kinds) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  const said = [...counts].map(([kind, count]) =>
    digestMessages.say("line", { sentence: news.say(kind), count }),
  );
  const [first = "", ...others] = said;
  const lines = others.reduce((list, next) => digestMessages.say("lines", { list, next }), first);
  return { subject: digestMessages.say("subject"), body: digestMessages.say("body", { lines, address }) };
}
