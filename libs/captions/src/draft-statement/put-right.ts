import type { Piece } from "../pieces/index.ts";
import { wordsOf } from "./draft.ts";
import type { Draft } from "./draft.ts";
import { NEGATORS } from "./negation.ts";

/** "No, that's mud", "no it isn't", "nope": against what was said, and not "no rust". */
const CONTRADICTS =
  /^(?:(?:oh|well|ah|er|um|actually|ha|sorry) ?,? ?)*(?:no|nope|nah|not (?:really|quite|exactly))(?: no| ,)*(?:$| [.!,]| (?:it|that|they|this|those|these|he|she|you|i|we|actually|not)\b)/u;
/** "Could be", "I wouldn't know", "you tell me": nobody stands behind what the other said. */
const UNSURE =
  /^(?:(?:oh|well|ah|er|um|hmm|yes|no|i mean|honestly) ?,? ?)*(?:(?:it|they|that|this|he|she) )?(?:(?:could|might|may|can) (?:well )?be|could have been|might have been|(?:i )?(?:would|do|could) not (?:know|tell you|say|swear to it)(?: that)?|(?:i am |i m )?not sure|i doubt it|who know|hard to (?:say|tell)|(?:i have )?no idea|you tell me|i (?:did not|never) say that|can not (?:say|tell)|if you say so|you think so|you think|is it|are they|does it|do they|maybe|perhaps|possibly|your guess is as good as mine)(?: [.!?]|$)/u;
/** "That's a seam", "it's just the light": it was taken for something else. */
const MISTAKEN =
  /^(?:(?:oh|well|ah|er|um|ha|actually|no) ?,? ?)*(?:it|that|this|they|those|these) (?:is|s|are) (?:(?:just|only|really|probably|a|an|the|some|my|your|bit of|little) )*(?:[a-z]+ )?(?:seam|shadow|reflection|light|hair|dirt|dust|mud|primer|undercoat|undercoating|piping|bug|leaf|wax|polish|sticker|pencil|thread|fly|smudge|fingerprint|tape|string|glare|camera|lens|drain plug|plug|rainwater|condensation|water drop|bird|crumb|sap|pollen|cobweb|spider)\b/u;
/** Tokens of a turn by which it is known for a contradiction. */
const OPENING = 6;
const LONGEST = 12;

/** Whether somebody else begins to speak at a token. */
const isTurn = ({ spoken, tokens }: Draft, at: number): boolean =>
  spoken.text.slice(tokens[at - 1]?.end ?? 0, tokens[at]?.start ?? 0).includes("\n");

/** "That's filler there." "No, that's mud": what one says and the other puts right is not claimed. A no to "it doesn't leak" agrees. */
export const putRight = (draft: Draft, { from }: Piece, sentenceEnd: number): void => {
  const { state, remarks, tokens } = draft;
  const { from: begun, keys } = state.sentence;
  state.sentence = { from, keys: [] };
  if (keys.length === 0 || !isTurn(draft, from)) return;
  const opens = wordsOf(draft, { from, to: Math.min(from + OPENING, sentenceEnd) });
  const whole = wordsOf(draft, { from, to: Math.min(from + LONGEST, sentenceEnd) });
  const denies = tokens.slice(begun, from).some(({ stem }) => NEGATORS.has(stem));
  if (UNSURE.test(whole) || MISTAKEN.test(whole) || (!denies && CONTRADICTS.test(opens)))
    for (const key of keys) remarks.delete(key);
};
