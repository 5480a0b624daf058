import { IntlMessageFormat } from "intl-messageformat";
import { terms } from "../terms/index.ts";
import type { TermId } from "../terms/index.ts";

const LANGUAGE = "en-US";
const made = new Map<string, IntlMessageFormat>();

const messageOf = (template: string): IntlMessageFormat => {
  const known = made.get(template);
  if (known !== undefined) return known;
  const message = new IntlMessageFormat(template, LANGUAGE);
  made.set(template, message);
  return message;
};

/**
 * A term in words.
 *
 * @param values what fills the places of its message
 * @throws {Error} when a place of the message is not filled
 * @example say("not-seen.covered") // "covered"
 * @example say("answer.not-seen", { reason: "covered" }) // "not seen: covered"
 */
export const say = (id: TermId, values?: Readonly<Record<string, string | number>>): string =>
  values === undefined ? terms[id] : String(messageOf(terms[id]).format({ ...values }));
