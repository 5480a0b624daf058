import { isLore } from "../no-claim/index.ts";
import type { Piece } from "../pieces/index.ts";
import { breathOf } from "./breath.ts";
import type { Breath } from "./breath.ts";
import { claimsOf } from "./claims-of.ts";
import type { Draft } from "./draft.ts";
import { firmnessLater } from "./firmness-later.ts";
import { claimsOfMagnet } from "./magnet.ts";
import { beginSentence, claimedPart, comesBack, isAside, relevantTo } from "./no-claim-here.ts";
import { claimsOfPending, keepPending } from "./pending.ts";
import { inTrunk } from "./part-meant.ts";
import { putRight } from "./put-right.ts";
import { noteLore, noteQuestion } from "./question.ts";
import { noteSide, onThisSide } from "./sides-in-view.ts";

export const takePiece = (draft: Draft, piece: Piece, sentenceEnd: number): void => {
  const { state } = draft;
  if (piece.join === "start") {
    putRight(draft, piece, sentenceEnd);
    beginSentence(draft, piece, sentenceEnd);
  }
  if (piece.join === "colon")
    state.gauges = state.entries.some(({ subjects }) => subjects.some(({ id }) => id === "gauges"));
  if (comesBack(draft, piece)) state.skip = undefined;
  if (state.skip !== undefined) {
    leaveView(draft, piece);
    return;
  }
  // "No rust, no dents, scratches", "free from chips and scratches".
  const most = piece.join === "comma" ? 3 : piece.join === "and" ? 2 : 0;
  const isListed = piece.to - piece.from <= most;
  const breath = relevantTo(draft, inTrunk(draft, breathOf(draft.tokens, piece, state.carried && isListed)));
  noteSide(draft, breath);
  const said = onThisSide(draft, breath);
  if (
    !piece.question &&
    (isLore(draft.spoken.text, draft.tokens, piece.from, piece.to) || areOthers(draft, said))
  ) {
    noteLore(draft, said);
    if (piece.join === "start" && draft.spoken.punctuated) state.skip = { why: "lore", from: piece.from };
    return;
  }
  // What somebody says who has not the car to tell of is as good as asked.
  if (piece.question || (said.entries.length > 0 && isAside(draft, piece))) {
    noteQuestion(draft, said);
    return;
  }
  if (isAside(draft, piece)) return;
  const claimed = claimedPart(draft, said);
  if (claimed === undefined) {
    leaveView(draft, piece);
    return;
  }
  if (breath.corrects) state.correcting = true;
  const made = claimsOfMagnet(draft, claimed) ?? claimsOfPending(draft, claimed) ?? claimsOf(draft, claimed);
  keepPending(draft, claimed, made);
  state.sentenceClaims += made.length;
  state.sentence = { ...state.sentence, keys: [...state.sentence.keys, ...made] };
  firmnessLater(draft, breath, made);
  state.carried = breath.words.some(({ negated }) => negated);
  if (breath.words.length > 0 || breath.entries.length > 0) state.correcting = false;
  state.paint =
    /\b(?:paint|finish|painted|paintwork)\b/u.test(breath.text) || (state.paint && piece.join !== "start");
};

/** "The wheel covers are worth more than some cars. All are there": nothing is claimed of what is named, but it is in view. */
const leaveView = (draft: Draft, piece: Piece): void => {
  const { entries } = breathOf(draft.tokens, piece, false);
  if (entries.length === 0) return;
  draft.state.entries = entries.map((entry) => ({ ...entry, none: false }));
  draft.state.applied = false;
  draft.state.open = false;
  draft.state.words = [];
  draft.state.row = undefined;
};

/** "The clock is electric and they never worked": of one thing that is in view, "they" are those of the other cars. */
const areOthers = ({ state }: Draft, { text, entries }: Breath): boolean =>
  entries.length === 0 &&
  state.entries.length > 0 &&
  state.entries.every(
    ({ plural, sides, subjects }) => !plural && !sides.all && subjects.every(({ id }) => id !== "glass"),
  ) &&
  /^(?:and |but )?they (?:never (?!had|came|did)|always |usually |mostly |often )/u.test(text);
