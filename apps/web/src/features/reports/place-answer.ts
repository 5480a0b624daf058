import type { IntlShape } from "react-intl";
import type { KeptFinding } from "../../offline/store";
import type { MessageId } from "../../strings/en";
import { answerWords, type AnswerContext } from "../../entities/sheet/answer-text";

/** What stands at a place in words, what cannot be read beside it; `undefined` where nothing does. */
export const placeAnswer = (
  intl: IntlShape,
  context: AnswerContext,
  kept: KeptFinding | undefined,
): string | undefined => {
  const say = (id: MessageId, values: Record<string, string>): string => intl.formatMessage({ id }, values);
  const said = kept?.finding ? answerWords(context, kept.finding.answer).text : undefined;
  if (kept?.unread === undefined) return said;
  const unread = intl.formatList(Object.values(kept.unread.texts));
  return said === undefined ? say("place.unread", { unread }) : say("place.unread.beside", { said, unread });
};
