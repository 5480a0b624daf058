import type { Breath } from "./breath.ts";
import type { Draft } from "./draft.ts";

/** "On this side": the side spoken of last. */
export const onThisSide = (draft: Draft, breath: Breath): Breath => {
  const { side } = draft.state;
  const isThis = breath.piece.mentions.some(
    (one) => one.is === "side" && one.side === "this" && draft.tokens[one.to - 1]?.stem === "side",
  );
  if (side === undefined || !isThis) return breath;
  const on = <Sided extends { readonly sides: Breath["sides"] }>(one: Sided): Sided => ({
    ...one,
    sides: { ...one.sides, adds: [...one.sides.adds, side], all: false },
  });
  return { ...on(breath), entries: breath.entries.map(on) };
};

export const noteSide = (draft: Draft, { piece }: Breath): void => {
  const { leftHandDrive } = draft.context.form;
  // "Round the back, …", "starting at the front, …"
  const isScene = piece.mentions.length > 0 && piece.mentions.every(({ is }) => is === "side");
  for (const mention of piece.mentions) {
    if (
      mention.is === "subject" &&
      mention.subjects.some(({ id }) => /^trunk(?:-lid|-floor|-lining)?$/u.test(id))
    )
      draft.state.trunkAt = mention.from;
    if (mention.is !== "side") continue;
    for (const add of mention.adds) {
      if (isScene && (add === "front" || add === "rear")) draft.state.end = add;
      if (add === "left" || add === "right") draft.state.side = add;
      if (add === "driver") draft.state.side = leftHandDrive ? "left" : "right";
      if (add === "passenger") draft.state.side = leftHandDrive ? "right" : "left";
    }
  }
};
