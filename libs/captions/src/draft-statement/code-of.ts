import type { Subject } from "@evenhand/lexicon/lexicon-version-1";
import type { Answer } from "@evenhand/shared/answer";
import type { Item } from "@evenhand/shared/sheet";
import type { Breath } from "./breath.ts";
import { codeIn } from "./codes.ts";
import { wordsOf } from "./draft.ts";
import type { Draft } from "./draft.ts";
import type { Entry } from "./entries.ts";
import { codeAnswer, gearboxKind } from "./phrases.ts";
import { tireDateIn, tireSizeIn } from "./tire-codes.ts";

export const codeOf = (
  draft: Draft,
  item: Item,
  subject: Subject,
  entry: Entry,
  breath: Breath,
): Answer | undefined => {
  const inPiece = entry.from >= breath.piece.from && entry.to <= breath.piece.to;
  if (subject.id === "gearbox-kind")
    return inPiece ? codeAnswer(gearboxKind(wordsOf(draft, entry))) : undefined;
  const from = inPiece ? entry.to : breath.piece.from;
  if (item.id === "wheels.tire-size")
    return codeAnswer(
      tireSizeIn(draft.tokens, from, breath.piece.to) ??
        (subject.items[0] === item.id
          ? codeIn(draft.spoken.text, draft.tokens, from, breath.piece.to)
          : undefined),
    );
  if (item.id === "wheels.tire-identification")
    return codeAnswer(tireDateIn(draft.tokens, from, breath.piece.to, draft.context.year));
  if (item.id === "engine.timing-belt-date") {
    const year = breath.numbers.findLast(({ value }) => value >= 1950 && value <= draft.context.year);
    return year === undefined ? undefined : codeAnswer(String(year.value));
  }
  return codeAnswer(
    codeIn(draft.spoken.text, draft.tokens, inPiece ? entry.to : breath.piece.from, breath.piece.to),
  );
};

/** A breath with the numbers that are left for an item: of a tire's age those of its date code. */
export const numbersFor = (
  draft: Draft,
  item: Item,
  subject: Subject,
  entry: Entry,
  breath: Breath,
  areTaken: boolean,
): Breath => {
  if (item.id !== "wheels.tire-age") return areTaken ? { ...breath, numbers: [] } : breath;
  if (subject.id !== "tire-code") return breath;
  const from = entry.from >= breath.piece.from ? entry.to : breath.piece.from;
  const code = tireDateIn(draft.tokens, from, breath.piece.to, draft.context.year);
  return code === undefined
    ? breath
    : {
        ...breath,
        numbers: [
          {
            is: "number",
            value: 2000 + Number(code.slice(2)),
            from,
            to: from,
            start: 0,
            end: 0,
            confidence: 1,
          },
        ],
      };
};
