import type { SaidWord } from "../answer-of/index.ts";
import { noClaim, noClaimAt } from "../no-claim/index.ts";
import type { Piece } from "../pieces/index.ts";
import { ellipsisOf } from "./breath.ts";
import type { Breath } from "./breath.ts";
import { wordsOf } from "./draft.ts";
import type { Draft } from "./draft.ts";
import { CAR_ASKED, HAD_IT_DONE, OF_CAR, THIS_ONE } from "./phrases.ts";

export const isAside = (draft: Draft, { from }: Piece): boolean => {
  const start = draft.tokens[from]?.start ?? 0;
  const { asides } = draft.spoken;
  while (draft.state.nextAside < asides.length && (asides[draft.state.nextAside]?.end ?? 0) <= start)
    draft.state.nextAside += 1;
  return (asides[draft.state.nextAside]?.start ?? Infinity) <= start;
};

/** Words that say something of one part alone count only where that part is named or in view. */
export const relevantTo = (draft: Draft, breath: Breath): Breath => {
  const {
    refinements,
    answering: { sameWords },
  } = draft.context.compiled.lexicon;
  const named = [...breath.entries, ...draft.state.entries].flatMap((entry) =>
    [entry, ...(entry.instead === undefined ? [] : [entry.instead])].flatMap(({ subjects }) => subjects),
  );
  const refined = refinements
    .filter(({ from }) => named.some(({ id }) => id === from))
    .flatMap(({ to }) => draft.context.compiled.subjects.get(to) ?? []);
  const items = new Set(
    [...named, ...refined].flatMap((one) => one.items.flatMap((id) => [id, sameWords[id] ?? id])),
  );
  const counts = (meaning: SaidWord["meanings"][number]): boolean =>
    meaning.is === "condition" ||
    meaning.alone ||
    items.has(meaning.item) ||
    // What leaks may be named behind it.
    (breath.entries.length === 0 &&
      /^(?:weep|drip)$/u.test(meaning.option) &&
      /^there (?:is|s)\b/u.test(breath.text)) ||
    (meaning.item === "body.paint-history" &&
      [OF_CAR, HAD_IT_DONE, CAR_ASKED].some((one) => one.test(breath.text)));
  const words = breath.words.filter(({ meanings }) => meanings.some(counts));
  const isBare = words.length === 0 && breath.numbers.length === 0;
  return { ...breath, words, ellipsis: breath.ellipsis ?? ellipsisOf(breath.text, isBare) };
};

/** Money, plans and other cars: of talk with marks to the end of the sentence, of talk without to the end of the piece. */
export const claimedPart = (draft: Draft, breath: Breath): Breath | undefined => {
  const { piece, words } = breath;
  if (draft.spoken.punctuated) {
    const none = noClaim(draft.tokens, piece.from, piece.to);
    if (none === undefined) return breath;
    draft.state.skip = { why: none, from: piece.from };
    // "They stop straight if you leave some room": what stands before the "if" is claimed.
    const supposed = none === "supposed" ? noClaimAt(draft.tokens, piece.from, piece.to) : undefined;
    const before = words.filter(({ to }) => to <= (supposed ?? 0));
    const isAfter =
      supposed !== undefined &&
      !/\bif you (?:hold|press|push|pump|keep|do not)\b/u.test(wordsOf(draft, piece)) &&
      before.length > 0 &&
      noClaim(draft.tokens, piece.from, supposed) === undefined;
    return isAfter ? { ...breath, words: before } : undefined;
  }
  const at = noClaimAt(draft.tokens, piece.from, piece.to);
  const first = piece.mentions.find(({ is }) => is === "subject")?.from ?? words[0]?.from ?? piece.to;
  const last = words.at(-1)?.to ?? piece.from;
  return at !== undefined && at >= first && at < last ? undefined : breath;
};

export const beginSentence = (draft: Draft, piece: Piece, sentenceEnd: number): void => {
  const { state } = draft;
  const isElsewhere =
    draft.spoken.punctuated && noClaim(draft.tokens, piece.from, sentenceEnd) === "elsewhere";
  state.skip = isElsewhere ? { why: "elsewhere", from: piece.from } : undefined;
  state.toldForSentence = false;
  state.hedgeNext = false;
  state.sentenceClaims = 0;
  state.carried = false;
  state.paint = false;
  state.gauges = state.entries.some(({ subjects }) =>
    subjects.some(({ id }) => /^(?:gauges|.+-gauge)$/u.test(id)),
  );
};

/** "I'd change them, they're from 2011": a clause of its own behind what somebody would do, with no "if" before it. */
const OWN_CLAUSE =
  /^(?:(?:and|but|because|since) )?(?:it|they|that|those|these|he|she|the(?: [a-z]+){1,3}) (?:is|are|s|was|were|has|have|had|still|do|does)\b/u;
const HERE = /\b(?:here|this one|this particular|this car|mine|ours|not this|this example)\b/u;

/** Whether, in a sentence that claims nothing of this car, somebody comes back to it. */
export const comesBack = (draft: Draft, piece: Piece): boolean => {
  const { skip } = draft.state;
  const opens = wordsOf(draft, { from: piece.from, to: Math.min(piece.to, piece.from + 3) });
  if (skip === undefined || THIS_ONE.test(opens)) return true;
  if (skip.why === "lore") return HERE.test(wordsOf(draft, piece)) || piece.join === "but";
  if (skip.why !== "supposed" || piece.join === "start") return false;
  const supposed = wordsOf(draft, { from: skip.from, to: piece.from });
  return piece.join === "but" || (!/\bif\b/u.test(supposed) && OWN_CLAUSE.test(wordsOf(draft, piece)));
};
