import { extentOf } from "../answer-of/index.ts";
import { firmnessOf } from "../firmness/index.ts";
import type { Breath } from "./breath.ts";
import type { Draft } from "./draft.ts";

export const lastIsFault = (draft: Draft): boolean => {
  return draft.state.last.some((key) => {
    const answer = draft.remarks.get(key)?.answer;
    return answer?.kind === "faults" && answer.found.length === 1 && answer.found[0]?.extent === undefined;
  });
};

/** "Chip, three millimeters": a length by itself is that of the fault just named. */
export const sizeOfFault = (draft: Draft, breath: Breath, made: readonly string[]): readonly string[] => {
  const [number] = breath.numbers;
  if (made.length > 0 || number === undefined || breath.piece.join === "start") return made;
  const extent = extentOf(breath.numbers, 1);
  if (extent === undefined) return made;
  const { firmness, about } = firmnessOf(draft.tokens, breath.piece.from, breath.piece.to);
  const sized: string[] = [];
  for (const key of draft.state.last) {
    const remark = draft.remarks.get(key);
    if (remark?.answer.kind !== "faults" || remark.answer.found.length !== 1) continue;
    const found = remark.answer.found.map((fault) => ({ ...fault, extent }));
    const isRough = remark.firmness === "asserted" && (about || firmness === "hedged");
    draft.remarks.set(key, {
      ...remark,
      answer: { ...remark.answer, found },
      ...(isRough ? { firmness: "hedged" } : {}),
    });
    sized.push(key);
  }
  return sized;
};
