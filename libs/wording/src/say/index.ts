import { formatMessage } from "@evenhand/message/format-message";
import { terms } from "../terms/index.ts";
import type { TermId } from "../terms/index.ts";

/**
 * A term in words.
 *
 * @param values what fills the places of its message
 * @throws {Error} when a place of the message is not filled
 * @example say("not-seen.covered") // "covered"
 * @example say("answer.not-seen", { reason: "covered" }) // "not seen: covered"
 */
export const say = (id: TermId, values: Readonly<Record<string, string | number>> = {}): string =>
  formatMessage<string>(terms[id], values);
