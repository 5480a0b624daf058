import { firmnessOf } from "../firmness/index.ts";
import type { Breath } from "./breath.ts";
import type { Draft } from "./draft.ts";

/** A hedge without a claim of its own is meant for what was just said, or for what follows. */
export const firmnessLater = (draft: Draft, breath: Breath, made: readonly string[]): void => {
  const { state } = draft;
  const { firmness } = firmnessOf(draft.tokens, breath.piece.from, breath.piece.to);
  state.hedgeNext = false;
  if (firmness === "asserted") return;
  if (firmness === "second-hand" && draft.spoken.punctuated) state.toldForSentence = true;
  if (made.length > 0) return;
  // "The spare is here, it looks unused": a clause that says something hedges itself alone.
  const isOwn = breath.words.length > 0 || /^(?:look|appear|seem) (?:to|like)\b/u.test(breath.text);
  if (isOwn && breath.piece.join !== "start") return;
  if (state.sentenceClaims > 0 && draft.spoken.punctuated) {
    for (const key of state.last) {
      const remark = draft.remarks.get(key);
      if (remark !== undefined) draft.remarks.set(key, { ...remark, firmness });
    }
  } else state.hedgeNext = firmness === "hedged" && isHedgedAhead(draft, breath);
};

/** "I think the hood | was …": in talk without marks a hedge behind the part is of what was said before. */
const isHedgedAhead = (draft: Draft, { entries: [first], piece }: Breath): boolean => {
  if (draft.spoken.punctuated || first === undefined) return true;
  return firmnessOf(draft.tokens, piece.from, Math.max(piece.from, first.from)).firmness === "hedged";
};
