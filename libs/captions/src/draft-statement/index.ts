import { mentionsIn } from "@evenhand/lexicon/find-mentions";
import { repair } from "@evenhand/lexicon/repair";
import { tokenize } from "@evenhand/lexicon/tokenize";
import { piecesOf } from "../pieces/index.ts";
import { pruneMentions } from "../prune-mentions/index.ts";
import type { SpokenText } from "../spoken-text/index.ts";
import type { DraftContext } from "./context.ts";
import { begunDraft } from "./draft.ts";
import { turnsOf } from "./phrases.ts";
import type { Remark } from "./remark.ts";
import { takePiece } from "./take-piece.ts";

export type { DraftContext, Remark };

/**
 * What a spoken walkaround claims, remark by remark: item, place, answer, how firmly, at which second, from which words. Greetings,
 * questions, prices, plans and other cars are no claims and are not in it. It is a draft: nothing of it is stated before somebody
 * confirms it.
 */
export const draftStatement = (spoken: SpokenText, context: DraftContext): Remark[] => {
  const tokens = repair(tokenize(spoken.text), context.compiled);
  const pieces = piecesOf(
    tokens,
    pruneMentions(tokens, mentionsIn(tokens, context.compiled)),
    turnsOf(spoken, tokens),
    spoken.punctuated,
  );
  const draft = begunDraft(spoken, tokens, context);
  const ends: number[] = pieces.map(() => 0);
  let end = tokens.length;
  for (let index = pieces.length - 1; index >= 0; index -= 1) {
    ends[index] = end;
    if (pieces[index]?.join === "start") end = pieces[index]?.from ?? end;
  }
  for (const [index, piece] of pieces.entries()) takePiece(draft, piece, ends[index] ?? tokens.length);
  return [...draft.remarks.values()].toSorted((a, b) => a.start - b.start);
};
